import { readPollSheet } from '../../workbook/readPollSheet.ts';
import type { Book } from '../file/book.ts';
import { cellsOf, sheetInUse } from '../file/sheets.ts';
import { done, type Outcome } from '../outcome.ts';
import type { PollView } from '../views.ts';

/** The answers to the poll as they stand in its sheet. */
export function pollView(book: Book): Outcome<PollView> {
  const sheet = sheetInUse(book, { kind: 'poll' });
  const { today } = book;
  if (sheet === undefined) return done({ sheet: '', today, answers: [] });
  return done({ sheet: sheet.name, today, answers: readPollSheet(cellsOf(sheet)) });
}
