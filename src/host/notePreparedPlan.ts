import { prepareCells } from '../workbook/layout.ts';
import type { PlanReading } from '../workbook/readLesson.ts';
import { ownSheets, sheetInUse } from './ownSheets.ts';
import { type Spreadsheet, settle } from './spreadsheet.ts';
import { writeTexts } from './writeTexts.ts';

/**
 * Notes in the Prepare sheet which Plan its list was written from, as the sheet itself joins it, so that both texts are
 * made by the same hand. Where the Plan changed while the list was being written the note is left out: the list then says
 * that it is out of date.
 */
export function notePreparedPlan({
  spreadsheet,
  writtenFrom,
  readPlan,
}: {
  spreadsheet: Spreadsheet;
  writtenFrom: PlanReading;
  /** Reads the Plan again, after its text was taken. */
  readPlan: () => PlanReading | undefined;
}): void {
  const sheet = sheetInUse(ownSheets(spreadsheet), { kind: 'prepare' })?.sheet;
  if (sheet === undefined) return;
  settle();
  const { planNow, planThen } = prepareCells;
  const joined = String(sheet.getRange(planNow.row, planNow.column).getValue());
  const same = JSON.stringify(readPlan()) === JSON.stringify(writtenFrom);
  const note = same ? joined : '';
  const cell = sheet.getRange(planThen.row, planThen.column);
  if (cell.getValue() !== note) writeTexts(cell, [[note]]);
}
