import type { Book } from '../file/book.ts';
import { classesInFile } from './classesInFile.ts';

/** The class whose sheet the teacher has in front; undefined where that is another sheet. */
export const classInFront = (book: Book): string | undefined =>
  classesInFile(book).find(({ sheet }) => sheet?.id === book.activeSheet && sheet.tag?.state === 'built')?.name;
