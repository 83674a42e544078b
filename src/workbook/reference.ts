import type { Area } from './workbook.ts';

/** Column letters as the grid shows them: 1 is A, 27 is AA. */
export function columnLetters(column: number): string {
  let letters = '';
  for (let rest = column; rest > 0; rest = Math.floor((rest - 1) / 26)) {
    letters = String.fromCharCode(65 + ((rest - 1) % 26)) + letters;
  }
  return letters;
}

export interface Place {
  readonly row: number;
  readonly column: number;
}

/** `$B$4`: stays on its cell when the formula is sorted or copied, moves with inserted rows. */
export const fixed = ({ row, column }: Place): string => `$${columnLetters(column)}$${row}`;

/** `$B$4:$D$9`. */
export const fixedArea = ({ row, column, rows, columns }: Area): string =>
  `${fixed({ row, column })}:${fixed({ row: row + rows - 1, column: column + columns - 1 })}`;

/** `B4:D9`, for lists of ranges. */
export const areaName = ({ row, column, rows, columns }: Area): string =>
  `${columnLetters(column)}${row}:${columnLetters(column + columns - 1)}${row + rows - 1}`;

/** `$E$14:$E`, from a cell down to the end of its column, rows that people add below included. */
export const fixedBelow = (place: Place): string => `${fixed(place)}:$${columnLetters(place.column)}`;

/** `$K:$K`, the whole column. */
export const wholeColumn = (column: number): string => `$${columnLetters(column)}:$${columnLetters(column)}`;

/** A reference into another sheet. Quoted always, since a sheet's name is what people typed. */
export const onSheet = (sheetName: string, reference: string): string =>
  `'${sheetName.split("'").join("''")}'!${reference}`;

/** Our own words inside a formula. What people typed is never put there: refer to its cell instead. */
export const literal = (words: string): string => `"${words.split('"').join('""')}"`;

/** The same for words with line breaks, which stand outside the quotes so that every engine reads them. */
export const literalLines = (words: string): string => words.split('\n').map(literal).join('&CHAR(10)&');
