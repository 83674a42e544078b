import { answersOf, pollLine as lineOf, pollSummary } from '../lab/poll/pollSummary.ts';
import { readPollSheet } from '../workbook/readPollSheet.ts';
import { valuesOf } from './applyWorkbook.ts';
import { dayOf } from './dayOf.ts';
import { ownSheets, sheetInUse } from './ownSheets.ts';
import type { Spreadsheet } from './spreadsheet.ts';

/** What the poll of a class says today, in one line; empty where nobody answered. */
export function pollLine(spreadsheet: Spreadsheet, className: string): string {
  const sheet = sheetInUse(ownSheets(spreadsheet), { kind: 'poll' })?.sheet;
  if (sheet === undefined) return '';
  const day = dayOf(spreadsheet, Date.now());
  return lineOf(pollSummary(answersOf(readPollSheet(valuesOf(sheet)), { className, day })));
}
