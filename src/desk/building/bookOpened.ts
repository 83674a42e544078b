import type { Book } from '../file/book.ts';
import { awakened } from '../lesson/lessonsInFile.ts';
import type { BuildWish } from './buildNote.ts';

/** The book that a build is planned from: where it opens an earlier lesson, as if that were in use already. */
export const bookOpened = (book: Book, { opens, lesson = '', wakes }: BuildWish): Book =>
  opens === true ? awakened(book, lesson, wakes) : book;
