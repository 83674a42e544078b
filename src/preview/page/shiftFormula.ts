import { columnLetters, columnNumber } from './cellName.ts';

/** Text, a quoted sheet name, a name followed by a bracket, or a reference to one cell. */
const pieces =
  /"(?:[^"]|"")*"|'(?:[^']|'')*'|[A-Za-z_][A-Za-z0-9_.]*\s*\(|(\$?)([A-Za-z]{1,3})(\$?)([1-9]\d{0,6})(?![A-Za-z0-9_.(!])/g;

/** A copied formula in its new place: references without a dollar sign move along. One that would leave the sheet becomes #REF!. */
export function shiftFormula(formula: string, by: { readonly rows: number; readonly columns: number }): string {
  if (!formula.startsWith('=')) return formula;
  return formula.replace(
    pieces,
    (piece: string, holdColumn?: string, letters?: string, holdRow?: string, digits?: string, at?: number) => {
      if (letters === undefined || digits === undefined) return piece;
      // Part of a longer name, such as the A1 of DATA1.
      if (at !== undefined && /[A-Za-z0-9_.]/.test(formula[at - 1] ?? '')) return piece;
      const column = columnNumber(letters) + (holdColumn ? 0 : by.columns);
      const row = Number(digits) + (holdRow ? 0 : by.rows);
      if (column < 1 || row < 1) return '#REF!';
      return `${holdColumn ?? ''}${columnLetters(column)}${holdRow ?? ''}${row}`;
    },
  );
}
