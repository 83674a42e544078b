import type { SheetRole } from '../../workbook/workbook.ts';
import { classesInFile } from '../classes/classesInFile.ts';
import { entriesIn } from '../classes/entriesIn.ts';
import type { Book } from '../file/book.ts';
import type { AwayNote } from './awayNote.ts';
import { lessonAbout } from './lessonAbout.ts';
import { lessonBook } from './lessonsInFile.ts';

/** What is noted about a class sheet that is about to be put away, cleared of its people or not; empty for any other sheet. */
export function aboutAway(book: Book, { kind, className, lesson = '' }: SheetRole, cleared = false): string {
  if (kind !== 'class') return '';
  const limited = lessonBook(book, lesson);
  const found = classesInFile(limited).find(({ id }) => id === className);
  return JSON.stringify({
    className: found?.name ?? className ?? '',
    keys: found?.keys ?? [],
    entries: entriesIn(found?.reading),
    day: book.today,
    cleared,
    ...lessonAbout(limited),
  } satisfies AwayNote);
}
