/** A place in a sheet, counted from 1. */
export interface Place {
  readonly row: number;
  readonly column: number;
}
export interface Block {
  readonly top: number;
  readonly left: number;
  readonly bottom: number;
  readonly right: number;
}

/** 1 is A, 27 is AA. */
export function columnLetters(column: number): string {
  let letters = '';
  for (let rest = column; rest > 0; rest = Math.floor((rest - 1) / 26)) {
    letters = String.fromCharCode(65 + ((rest - 1) % 26)) + letters;
  }
  return letters;
}
export const columnNumber = (letters: string): number =>
  [...letters.toUpperCase()].reduce((number, letter) => number * 26 + letter.charCodeAt(0) - 64, 0);

export const cellName = ({ row, column }: Place): string => `${columnLetters(column)}${row}`;
export const cellKey = ({ row, column }: Place): string => `${row},${column}`;

/** Reads `B5`, `$B$5` or the first corner of `B5:C9`. */
export function readCellName(text: string): Place | undefined {
  const [, letters, digits] = /^\$?([A-Za-z]{1,3})\$?([1-9]\d{0,6})(?::.*)?$/.exec(text.trim()) ?? [];
  if (!letters || !digits) return undefined;
  return { row: Number(digits), column: columnNumber(letters) };
}

export const blockName = ({ top, left, bottom, right }: Block): string =>
  top === bottom && left === right
    ? cellName({ row: top, column: left })
    : `${cellName({ row: top, column: left })}:${cellName({ row: bottom, column: right })}`;

export const blockBetween = (one: Place, other: Place): Block => ({
  top: Math.min(one.row, other.row),
  left: Math.min(one.column, other.column),
  bottom: Math.max(one.row, other.row),
  right: Math.max(one.column, other.column),
});
