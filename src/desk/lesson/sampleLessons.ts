import type { Book } from '../file/book.ts';
import { lessonsInUse, sheetsAway } from './lessonsInFile.ts';
import { planInFile } from './planInFile.ts';

/** Lessons of the invented school, in use or put away. */
export function sampleLessons(book: Book): readonly string[] {
  const inUse = lessonsInUse(book).filter(({ book: own }) => {
    const plan = planInFile(own);
    return plan.state === 'there' && plan.whole.invented;
  });
  const away = sheetsAway(book).filter(({ note }) => note.invented);
  return [...new Set([...inUse.map(({ id }) => id), ...away.map(({ lesson }) => lesson)])];
}
