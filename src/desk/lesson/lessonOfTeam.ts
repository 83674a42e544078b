import { classesInUse } from '../classes/classesInUse.ts';
import type { Book } from '../file/book.ts';
import { bookShown } from './lessonsInFile.ts';

/** The book of the lesson that the team with this key is at; where none is, that of the lesson begun last. */
export const lessonOfTeam = (book: Book, key: unknown): Book =>
  classesInUse(book).find(({ keys }) => keys.some((one) => one === key))?.lesson.book ?? bookShown(book, undefined);
