import { prepareCells } from '../workbook/layout.ts';
import type { Sheet } from './spreadsheet.ts';

/** Does the list say that the Plan is another by now? */
export function isPrepareOutOfDate(sheet: Sheet): boolean {
  const { freshness } = prepareCells;
  return String(sheet.getRange(freshness.row, freshness.column).getValue()).startsWith('⚠');
}
