import type { Area, SheetPlan } from '../workbook/workbook.ts';
import { filledWith } from './filledWith.ts';
import type { Sheet } from './spreadsheet.ts';

/** What the plan says of how values are shown in an area; everything that it does not name is text. */
export function writeFormats(sheet: Sheet, { formats }: SheetPlan, { row, column, rows, columns }: Area): void {
  if (rows < 1) return;
  const filled = filledWith({
    rows: row + rows - 1,
    columns: column + columns - 1,
    plain: '@' as string,
    areas: formats,
    of: ({ format }) => format,
  });
  const within = filled.slice(row - 1).map((line) => line.slice(column - 1));
  sheet.getRange(row, column, rows, columns).setNumberFormats(within);
}
