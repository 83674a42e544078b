import type { Book } from '../file/book.ts';
import { awakened, lessonBook, lessonsInUse, sheetsAway } from '../lesson/lessonsInFile.ts';
import { classDays } from './classDays.ts';

/**
 * The day of every class: at the lesson that it is at, and at one that was put away today with entries of today. A class
 * without entries in its new lesson is told by the one before.
 */
export function lessonDays(book: Book): ReturnType<typeof classDays> {
  const read = sheetsAway(book).filter(({ sheet }) => sheet.cells !== undefined);
  const away = [...new Set(read.map(({ lesson }) => lesson))].flatMap((id) => {
    const names = read.filter(({ lesson }) => lesson === id).map(({ note }) => note.className);
    return classDays(lessonBook(awakened(book, id), id)).filter(
      ({ className, hasEntriesToday }) => hasEntriesToday && names.includes(className),
    );
  });
  const inUse = lessonsInUse(book).flatMap((lesson) => classDays(lesson.book));
  const isTold = (className: string): boolean => away.some((one) => one.className === className);
  return [...away, ...inUse.filter(({ className, hasEntriesToday }) => hasEntriesToday || !isTold(className))];
}
