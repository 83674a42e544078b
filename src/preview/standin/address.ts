/** Rows and columns count from 1, as the host counts. */
export interface Area {
  readonly row: number;
  readonly column: number;
  readonly rows: number;
  readonly columns: number;
}

const columnSpan = 16384;

/** One number for a cell, so that cells of a sheet can be kept in a Map. */
export const cellKey = (row: number, column: number): number => row * columnSpan + column;
export const rowOf = (key: number): number => Math.floor(key / columnSpan);
export const columnOf = (key: number): number => key % columnSpan;

export function columnLetters(column: number): string {
  let letters = '';
  for (let rest = column; rest > 0; rest = Math.floor((rest - 1) / 26)) {
    letters = String.fromCharCode(65 + ((rest - 1) % 26)) + letters;
  }
  return letters;
}

export function columnNumber(letters: string): number {
  let column = 0;
  for (const letter of letters.toUpperCase()) column = column * 26 + letter.charCodeAt(0) - 64;
  return column;
}

export const cellName = (row: number, column: number): string => `${columnLetters(column)}${row}`;

export function areaName({ row, column, rows, columns }: Area): string {
  const first = cellName(row, column);
  return rows === 1 && columns === 1 ? first : `${first}:${cellName(row + rows - 1, column + columns - 1)}`;
}

export const covers = (area: Area, row: number, column: number): boolean =>
  row >= area.row && row < area.row + area.rows && column >= area.column && column < area.column + area.columns;

export const overlaps = (one: Area, other: Area): boolean =>
  one.row < other.row + other.rows &&
  other.row < one.row + one.rows &&
  one.column < other.column + other.columns &&
  other.column < one.column + one.columns;

/** A1 notation without its sheet: `B2`, `B2:C9`, `B:C`, `2:9`, `B2:C`. Open ends reach the edge of the sheet. */
export function readArea(text: string, sheet: { readonly rows: number; readonly columns: number }): Area | undefined {
  const parts = text.replaceAll('$', '').split(':');
  if (parts.length > 2) return undefined;
  const ends = parts.map((part) => /^([A-Za-z]{0,3})([0-9]*)$/.exec(part.trim()));
  const [first, last = first] = ends;
  if (!first || !last) return undefined;
  const [, fromLetters = '', fromRow = ''] = first;
  const [, toLetters = '', toRow = ''] = last;
  if (parts.length === 1 && (!fromLetters || !fromRow)) return undefined;
  if (!fromLetters && !fromRow) return undefined;
  const row = fromRow ? Number(fromRow) : 1;
  const column = fromLetters ? columnNumber(fromLetters) : 1;
  const lastRow = toRow ? Number(toRow) : sheet.rows;
  const lastColumn = toLetters ? columnNumber(toLetters) : sheet.columns;
  const top = Math.min(row, lastRow);
  const left = Math.min(column, lastColumn);
  return { row: top, column: left, rows: Math.abs(lastRow - row) + 1, columns: Math.abs(lastColumn - column) + 1 };
}

/** Splits `'Class 1'!B2` into its sheet and the rest. */
export function splitSheetName(text: string): { readonly sheet?: string; readonly rest: string } {
  const quoted = /^'((?:[^']|'')+)'!(.+)$/.exec(text);
  if (quoted) return { sheet: (quoted[1] ?? '').replaceAll("''", "'"), rest: quoted[2] ?? '' };
  const plain = /^([^!]+)!(.+)$/.exec(text);
  return plain ? { sheet: plain[1] ?? '', rest: plain[2] ?? '' } : { rest: text };
}
