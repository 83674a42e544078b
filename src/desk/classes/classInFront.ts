import type { Book } from '../file/book.ts';
import { classesInUse } from './classesInUse.ts';

/** The class whose sheet the teacher has in front; undefined where that is another sheet. */
export const classInFront = (book: Book): string | undefined =>
  classesInUse(book).find(({ sheet }) => sheet?.id === book.activeSheet && sheet.tag?.state === 'built')?.name;
