import { cellText } from '../workbook/cellText.ts';
import { pollColumns as at, pollMarker, pollRows } from '../workbook/layout.ts';
import { dayOf } from './dayOf.ts';

/**
 * Part of the simple trigger, for edits that begin among the answers: notes the day in each edited row of the Poll that has an answer and no day yet. A row
 * without a day still counts, so that a refused write loses nothing.
 */
export function notePollDay({ range }: GoogleAppsScript.Events.SheetsOnEdit): void {
  if (range.getLastColumn() > at.openLine) return;
  const sheet = range.getSheet();
  if (cellText(sheet.getRange(1, at.marker).getValue()) !== pollMarker) return;
  const firstRow = Math.max(range.getRow(), pollRows.firstAnswer);
  const rowCount = range.getLastRow() - firstRow + 1;
  if (rowCount < 1) return;
  const today = dayOf(sheet.getParent(), Date.now());
  const rows = sheet.getRange(firstRow, 1, rowCount, at.openLine).getValues();
  rows.forEach((cells, index) => {
    const answered = cells.slice(at.className).some((cell) => cellText(cell) !== '');
    if (answered && cellText(cells[at.day - 1]) === '') sheet.getRange(firstRow + index, at.day).setValue(today);
  });
}
