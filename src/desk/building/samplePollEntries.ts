import type { FirstEntriesSent } from '../../host/calls.ts';
import { samplePoll } from '../../lab/poll/samplePoll.ts';
import { pollColumns as at, pollRows } from '../../workbook/layout.ts';
import type { Book } from '../file/book.ts';
import { dayIn } from '../file/dayIn.ts';

const dayMs = 86_400_000;

/** The invented answers of the sample's poll, column by column: of today and of the day before. */
export function samplePollEntries(book: Book): readonly FirstEntriesSent[] {
  const answers = samplePoll({ today: book.today, dayBefore: dayIn(book, book.now - dayMs) });
  const rows = answers.map(({ day, className, from, marks, openLine }) => [day, className, from, ...marks, openLine]);
  return Array.from({ length: at.openLine - at.day + 1 }, (_, place) => ({
    row: pollRows.firstAnswer,
    column: at.day + place,
    texts: rows.map((row) => row[place] ?? ''),
  }));
}
