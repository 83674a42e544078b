import { answersOf, pollLine as lineOf, pollSummary } from '../../lab/poll/pollSummary.ts';
import { readPollSheet } from '../../workbook/readPollSheet.ts';
import type { Book } from '../file/book.ts';
import { cellsOf, sheetInUse } from '../file/sheets.ts';

/** What the poll of a class says today, in one line; empty where nobody answered. */
export function pollLine(book: Book, className: string): string {
  const answers = readPollSheet(cellsOf(sheetInUse(book, { kind: 'poll' })));
  return lineOf(pollSummary(answersOf(answers, { className, day: book.today })));
}
