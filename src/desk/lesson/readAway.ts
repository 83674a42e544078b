import { ask, type Work } from '../file/ask.ts';
import type { Book } from '../file/book.ts';
import { type File, noted } from '../file/look.ts';
import { done, type Outcome } from '../outcome.ts';
import { sheetsOfLesson } from './lessonsInFile.ts';

/**
 * The sheets of a lesson that is put away are read only when they are needed. `afresh` reads them all the same: a page
 * that put them away itself knows them as they were before.
 */
export function* readAway(file: File, book: Book, id: string, { afresh = false } = {}): Work<Outcome<Book>> {
  const unread = sheetsOfLesson(book, id).filter(
    ({ tag, cells }) => tag?.state === 'away' && (afresh || cells === undefined),
  );
  if (unread.length === 0) return done(book);
  const answer = yield* ask('readBook', { kinds: [], ids: unread.map((sheet) => sheet.id) });
  return answer.ok ? done(noted(file, answer.value, [])) : answer;
}
