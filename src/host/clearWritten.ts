import { checkHeadings } from '../lab/texts/feedback.ts';
import type { CellValue } from '../measurement/cellValue.ts';
import { areaName } from '../workbook/reference.ts';
import type { SheetPlan } from '../workbook/workbook.ts';
import type { Sheet } from './spreadsheet.ts';

/**
 * Takes the words that the sidebar wrote as checks out of the way of the formulas that are to show there. A block with such
 * words is known by its headings: they stand there as text, where a formula would have shown them.
 */
export function clearWritten(
  sheet: Sheet,
  { checks, spill }: SheetPlan,
  present: {
    readonly values: readonly (readonly CellValue[])[];
    readonly formulas: readonly (readonly string[])[];
  },
): void {
  const written = checks.flatMap(({ row, column, cells }) => {
    const isWritten =
      cells[0]?.[0]?.kind === 'formula' &&
      present.formulas[row - 1]?.[column - 1] === '' &&
      present.values[row - 1]?.[column - 1] === checkHeadings.check;
    return isWritten ? spill.filter((area) => area.row === row && area.column === column) : [];
  });
  if (written.length > 0) sheet.getRangeList(written.map(areaName)).setValue('');
}
