import type { BookReading, SheetKind, SheetListed } from '../../host/calls.ts';
import { layoutVersion } from '../../workbook/layout.ts';
import type { EntriesSeen } from '../classes/countSeen.ts';
import { done, type Outcome, problem } from '../outcome.ts';
import { deskWords } from '../words.ts';
import { ask, type Work } from './ask.ts';
import { type Book, bookAfter } from './book.ts';

/** The file as this page knows it: what was read of it last, which every answer of the script brings up to date. */
export interface File {
  book: Book | undefined;
  /** The lesson that this page speaks of, once one was chosen or shown. */
  lesson?: string | undefined;
  /** Entries of the classes whose checks this page works out, by sheet, as it has seen and counted them. */
  entriesSeen?: Map<number, EntriesSeen>;
}

/** What all views together are made from. Progress is for people to look at: nothing is made from it. */
export const allKinds: readonly SheetKind[] = ['plan', 'class', 'help', 'prepare', 'poll', 'record'];

/** What a build is worked out from: Progress keeps its order. */
export const buildKinds: readonly SheetKind[] = [...allKinds, 'progress'];

/**
 * Reads these sheets now, and single ones besides. A file of a newer layout is refused, since where things stand in it is
 * not known here: nothing is shown of it, and nothing written.
 */
export function* look(file: File, kinds: readonly SheetKind[], ids: readonly number[] = []): Work<Outcome<Book>> {
  const answer = yield* ask('readBook', { kinds, ids });
  if (!answer.ok) return answer;
  return answer.value.sheets.some(isNewer) ? problem(deskWords.newerFile) : done(noted(file, answer.value, kinds));
}

const isNewer = ({ tag }: SheetListed): boolean => tag !== null && tag.layout > layoutVersion;

/** What was read of these sheets already, or else reads them. */
export function* known(file: File, kinds: readonly SheetKind[]): Work<Outcome<Book>> {
  const { book } = file;
  return book !== undefined && kinds.every((kind) => book.kinds.includes(kind)) ? done(book) : yield* look(file, kinds);
}

/** Takes in what a call has read. An answer that comes late, after a newer one, tells nothing more. */
export function noted(file: File, reading: BookReading, kinds: readonly SheetKind[]): Book {
  const { book } = file;
  const isLate = book !== undefined && reading.now < book.now && kinds.every((kind) => book.kinds.includes(kind));
  if (isLate) return book;
  file.book = bookAfter(book, reading, kinds);
  return file.book;
}
