import type { ClassReading } from '../../workbook/readClassSheet.ts';
import type { Book, BookSheet } from '../file/book.ts';
import { done, type Outcome, problem } from '../outcome.ts';
import { deskWords } from '../words.ts';
import { type ClassInUse, classesInUse } from './classesInUse.ts';

export interface BuiltClass extends ClassInUse {
  readonly sheet: BookSheet;
  readonly reading: ClassReading;
}

/** The class of that name with its sheet, refused where it has none or its marks cannot be read. */
export function classCalled(book: Book, name: unknown): Outcome<BuiltClass> {
  const received = typeof name === 'string' ? `“${name}”` : typeof name;
  const found = classesInUse(book).find((one) => one.name === name);
  if (found?.sheet === undefined) return problem({ ...deskWords.classUnknown, received });
  const { sheet, reading } = found;
  if (reading === undefined) return problem({ ...deskWords.classUnreadable, where: String(name) });
  return done({ ...found, sheet, reading });
}
