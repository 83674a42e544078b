import { recordFields } from '../../lab/record/recordEntry.ts';
import { cellText } from '../../workbook/cellText.ts';
import { pollColumns } from '../../workbook/layout.ts';
import { classesOfLessons } from '../classes/classesInUse.ts';
import type { Work } from '../file/ask.ts';
import type { Book, BookSheet } from '../file/book.ts';
import { cellWish } from '../file/cellWish.ts';
import { type File, look } from '../file/look.ts';
import { cellsOf, sheetInUse } from '../file/sheets.ts';
import { writeCells } from '../file/writing.ts';
import { readAwayNote } from '../lesson/awayNote.ts';
import { pollRowsOf, recordRowsOf } from '../lesson/sampleLeft.ts';
import { done, type Outcome } from '../outcome.ts';
import { recordInFile } from '../record/recordInFile.ts';

/**
 * Empties what a class of the sample has in the Poll and in the Record. It may be done twice: day and class of a row go
 * last, so that where the host stops before that the row is still known as one of the class.
 */
export function* clearRowsOf(file: File, known: Book, sheetId: number): Work<Outcome<Book>> {
  const name = nameOf(known, sheetId);
  const read = yield* look(file, ['poll', 'record']);
  if (!read.ok) return read;
  const book = read.value;
  const poll = sheetInUse(book, { kind: 'poll' });
  const record = recordInFile(book);
  const columns = record?.reading?.columns;
  const cells = [
    ...(poll === undefined ? [] : pollRowsOf(book, name).flatMap((row) => emptied(poll, row, inPoll))),
    ...(record === undefined || columns === undefined
      ? []
      : recordRowsOf(book, name).flatMap((row) =>
          emptied(record.sheet, row, {
            knownBy: [columns.day, columns.className],
            columns: recordFields.map((field) => columns[field]),
          }),
        )),
  ];
  return cells.length === 0 ? done(book) : yield* writeCells(file, { cells, seen: [], kinds: ['poll', 'record'] });
}

interface RowColumns {
  readonly columns: readonly number[];
  /** Those of them by which it is seen whose row it is. */
  readonly knownBy: readonly number[];
}
const inPoll: RowColumns = {
  knownBy: [pollColumns.day, pollColumns.className],
  columns: Array.from({ length: pollColumns.openLine - pollColumns.day + 1 }, (_, place) => pollColumns.day + place),
};

/** From left to right, so that neighbours are one piece. */
const emptied = (sheet: BookSheet, row: number, { columns, knownBy }: RowColumns) =>
  [...columns]
    .sort((one, other) => Number(knownBy.includes(one)) - Number(knownBy.includes(other)) || one - other)
    .filter((column) => cellText(cellsOf(sheet)[row - 1]?.[column - 1]) !== '')
    .map((column) => cellWish(sheet, { row, column }, ''));

function nameOf(book: Book, sheetId: number): string {
  const found = classesOfLessons(book).find(({ sheet }) => sheet?.id === sheetId)?.name;
  const tag = book.sheets.find(({ id }) => id === sheetId)?.tag;
  return found ?? (tag ? readAwayNote(tag).className : '');
}
