import { cellText } from '../../workbook/cellText.ts';
import { pollColumns, pollRows } from '../../workbook/layout.ts';
import { classesOfLessons } from '../classes/classesInUse.ts';
import type { Book } from '../file/book.ts';
import { cellsOf, sheetInUse } from '../file/sheets.ts';
import { recordInFile } from '../record/recordInFile.ts';
import { sheetsAway } from './lessonsInFile.ts';
import { sampleLessons } from './sampleLessons.ts';

/** Rows of the Poll that are of a class, by their number. */
export const pollRowsOf = (book: Book, className: string): readonly number[] =>
  cellsOf(sheetInUse(book, { kind: 'poll' })).flatMap((line, index) =>
    index + 1 >= pollRows.firstAnswer && cellText(line[pollColumns.className - 1]) === className ? [index + 1] : [],
  );

/** Rows of the Record that are of a class, by their number. */
export const recordRowsOf = (book: Book, className: string): readonly number[] =>
  (recordInFile(book)?.reading?.rows ?? []).flatMap(({ row, entry }) => (entry.className === className ? [row] : []));

/** What the sample has left in the file: its classes, and their rows in the Poll and in the Record. */
export function sampleLeft(book: Book): {
  readonly classes: readonly string[];
  readonly answers: number;
  readonly rows: number;
} {
  const ids = sampleLessons(book);
  const inUse = classesOfLessons(book).flatMap(({ lesson, name }) => (ids.includes(lesson.id) ? [name] : []));
  const away = sheetsAway(book).filter(({ lesson }) => ids.includes(lesson));
  const classes = [...new Set([...inUse, ...away.map(({ note }) => note.className)])];
  const sum = (of: typeof pollRowsOf): number => classes.reduce((total, name) => total + of(book, name).length, 0);
  return { classes, answers: sum(pollRowsOf), rows: sum(recordRowsOf) };
}
