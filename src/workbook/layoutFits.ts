import type { CellValue } from '../measurement/cellValue.ts';
import { cellText } from './cellText.ts';
import type { SheetPlan } from './workbook.ts';

export type Fit = 'same' | 'longer' | 'other';

/**
 * Whether a sheet that exists may be written in place: `same` where its identity is the planned one, `longer` where the
 * plan goes on below it and the rows there are empty, `other` where a new sheet is due. A blank where the plan has words
 * is a sheet whose writing was interrupted.
 */
export function layoutFits(
  { identity, rowCount, writable }: Pick<SheetPlan, 'identity' | 'rowCount' | 'writable'>,
  cells: readonly (readonly CellValue[])[],
): Fit {
  const { firstRow, columns, rows } = identity;
  const found = (row: number) => columns.map((column) => cellText(cells[row - 1]?.[column - 1]));
  let last = 0;
  let lastPlanned = 0;
  rows.forEach((texts, index) => {
    if (found(firstRow + index).some((text) => text !== '')) last = index;
    if (texts.some((text) => text !== '')) lastPlanned = index;
  });
  // Lines that people add by hand where there is room for them are theirs and change no layout.
  const isTheirs = (row: number) =>
    writable.some(
      ({ row: first, rows: high, column, columns: wide }) =>
        column <= (columns[0] ?? 1) && column + wide > (columns[0] ?? 1) && row >= first && row < first + high,
    );
  for (let row = firstRow; row <= cells.length; row += 1) {
    if (isTheirs(row)) continue;
    const planned = rows[row - firstRow];
    if (found(row).some((text, index) => text !== '' && text !== planned?.[index])) return 'other';
  }
  const firstNew = firstRow + last + 1;
  if (last === lastPlanned) return 'same';
  for (let row = firstNew; row <= Math.min(rowCount, cells.length); row += 1) {
    if (cells[row - 1]?.some((cell) => cellText(cell) !== '')) return last === 0 ? 'same' : 'other';
  }
  return 'longer';
}
