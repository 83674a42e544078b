import { samplePoll } from '../lab/poll/samplePoll.ts';
import { pollColumns as at, pollRows } from '../workbook/layout.ts';
import type { FirstEntries } from './applyWorkbook.ts';
import { dayOf } from './dayOf.ts';
import type { Spreadsheet } from './spreadsheet.ts';

const dayMs = 86_400_000;

/** The invented answers of the sample's poll, column by column: of today and of the day before. */
export function samplePollEntries(spreadsheet: Spreadsheet): readonly FirstEntries[] {
  const now = Date.now();
  const answers = samplePoll({ today: dayOf(spreadsheet, now), dayBefore: dayOf(spreadsheet, now - dayMs) });
  const rows = answers.map(({ day, className, from, marks, openLine }) => [day, className, from, ...marks, openLine]);
  return Array.from({ length: at.openLine - at.day + 1 }, (_, place) => ({
    row: pollRows.firstAnswer,
    column: at.day + place,
    texts: rows.map((row) => row[place] ?? ''),
  }));
}
