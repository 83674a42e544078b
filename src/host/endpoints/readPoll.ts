import { readPollSheet } from '../../workbook/readPollSheet.ts';
import { valuesOf } from '../applyWorkbook.ts';
import type { Outcome, PollView } from '../calls.ts';
import { dayOf } from '../dayOf.ts';
import { done } from '../outcome.ts';
import { ownSheets, sheetInUse } from '../ownSheets.ts';
import { openSpreadsheet } from '../spreadsheet.ts';

/** The answers to the poll as they stand in its sheet. Nothing is written. */
export function readPoll(): Outcome<PollView> {
  const spreadsheet = openSpreadsheet();
  const today = dayOf(spreadsheet, Date.now());
  const sheet = sheetInUse(ownSheets(spreadsheet), { kind: 'poll' })?.sheet;
  if (sheet === undefined) return done({ sheet: '', today, answers: [] });
  return done({ sheet: sheet.getName(), today, answers: readPollSheet(valuesOf(sheet)) });
}
