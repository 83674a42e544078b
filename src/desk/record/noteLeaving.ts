import type { Lesson } from '../../workbook/lesson.ts';
import { rowFor } from '../../workbook/readRecordSheet.ts';
import type { Work } from '../file/ask.ts';
import type { Book } from '../file/book.ts';
import type { File } from '../file/look.ts';
import { seenOf, writeCells } from '../file/writing.ts';
import { done, type Outcome } from '../outcome.ts';
import { type ClassDayFound, classDays } from './classDays.ts';
import { recordInFile } from './recordInFile.ts';
import { noteDays } from './saveRecord.ts';

/**
 * Notes in the Record what classes did today whose sheets are about to be put aside: the reminder looks at sheets in use,
 * and would go with them. A day that has its row is left as it is.
 */
export function* noteLeaving(file: File, book: Book, lesson: Pick<Lesson, 'activity' | 'teams'>): Work<Outcome<Book>> {
  const reading = recordInFile(book)?.reading;
  const stays = ({ keys, builtFor }: ClassDayFound): boolean =>
    (builtFor === undefined || builtFor === lesson.activity.id) && lesson.teams.some(({ key }) => keys.includes(key));
  const days = classDays(book).filter(
    (day) => day.hasEntriesToday && !stays(day) && (reading === undefined || rowFor(reading, day) === undefined),
  );
  if (days.length === 0) return done(book);
  const noted = yield* noteDays(file, book, days);
  if (!noted.ok) return noted;
  const { cells, sheet } = noted.value;
  return yield* writeCells(file, { cells, seen: seenOf(sheet), kinds: ['record'] });
}
