import { classColumns } from '../workbook/layout.ts';
import type { Sheet } from './spreadsheet.ts';
import { writeTexts } from './writeTexts.ts';

/** Writes who is in a team: in the heading row of its block, where nothing is worked out. */
export function writeMembers(sheet: Sheet, { headingRow, text }: { headingRow: number; text: string }): void {
  const cell = sheet.getRange(headingRow, classColumns.who);
  cell.setNumberFormat('@');
  writeTexts(cell, [[text]]);
}
