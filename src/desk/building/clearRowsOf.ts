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

/** Empties what a class of the sample has in the Poll and in the Record. It may be done twice. */
export function* clearRowsOf(file: File, known: Book, sheetId: number): Work<Outcome<Book>> {
  const name = nameOf(known, sheetId);
  const read = yield* look(file, ['poll', 'record']);
  if (!read.ok) return read;
  const book = read.value;
  const poll = sheetInUse(book, { kind: 'poll' });
  const record = recordInFile(book);
  const columns = record?.reading?.columns;
  const cells = [
    ...(poll === undefined
      ? []
      : pollRowsOf(book, name).flatMap((row) =>
          emptied(poll, row, columnsBetween(pollColumns.day, pollColumns.openLine)),
        )),
    ...(record === undefined || columns === undefined
      ? []
      : recordRowsOf(book, name).flatMap((row) =>
          emptied(
            record.sheet,
            row,
            recordFields.map((field) => columns[field]),
          ),
        )),
  ];
  return cells.length === 0 ? done(book) : yield* writeCells(file, { cells, seen: [], kinds: ['poll', 'record'] });
}

const columnsBetween = (first: number, last: number): readonly number[] =>
  Array.from({ length: last - first + 1 }, (_, place) => first + place);

const emptied = (sheet: BookSheet, row: number, columns: readonly number[]) =>
  [...columns]
    .sort((one, other) => one - other)
    .filter((column) => cellText(cellsOf(sheet)[row - 1]?.[column - 1]) !== '')
    .map((column) => cellWish(sheet, { row, column }, ''));

function nameOf(book: Book, sheetId: number): string {
  const found = classesOfLessons(book).find(({ sheet }) => sheet?.id === sheetId)?.name;
  const tag = book.sheets.find(({ id }) => id === sheetId)?.tag;
  return found ?? (tag ? readAwayNote(tag).className : '');
}
