import type { ClassReading } from '../../workbook/readClassSheet.ts';
import type { Book, BookSheet } from '../file/book.ts';
import { done, type Outcome, problem } from '../outcome.ts';
import { deskWords } from '../words.ts';
import { type ClassInFile, classesInFile } from './classesInFile.ts';

export interface BuiltClass extends ClassInFile {
  readonly sheet: BookSheet;
  readonly reading: ClassReading;
}

/** The class of that name with its sheet, refused where it has none or its marks cannot be read. */
export function classCalled(book: Book, name: unknown): Outcome<BuiltClass> {
  const received = typeof name === 'string' ? `“${name}”` : typeof name;
  const found = classesInFile(book).find((one) => one.name === name);
  if (found?.sheet === undefined) return problem({ ...deskWords.classUnknown, received });
  const { sheet, reading } = found;
  if (reading === undefined)
    return problem({ ...deskWords.classUnreadable, where: String(name), received: 'one without' });
  return done({ ...found, sheet, reading });
}
