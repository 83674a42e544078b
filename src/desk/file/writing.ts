import type { CellsWish, CellWish, Seen, SheetKind } from '../../host/calls.ts';
import { done, type Outcome, type Problem } from '../outcome.ts';
import { ask, type Work } from './ask.ts';
import type { Book, BookSheet } from './book.ts';
import { type File, known, look, noted } from './look.ts';

/** The sheets that something was worked out from, as the page saw them. */
export const seenOf = (...sheets: readonly (BookSheet | undefined)[]): readonly Seen[] =>
  sheets.flatMap((sheet) => (sheet?.mark === undefined ? [] : [{ id: sheet.id, mark: sheet.mark }]));

const isChanged = ({ reason }: Problem): boolean => reason === 'changed';

/**
 * Works something out from what was read and writes it. Where somebody changed the file meanwhile the script has written
 * nothing: then it is read again and worked out anew, once.
 */
export function* attempt<T>(
  file: File,
  kinds: readonly SheetKind[],
  work: (book: Book) => Work<Outcome<T>>,
): Work<Outcome<T>> {
  const book = yield* known(file, kinds);
  if (!book.ok) return book;
  const first = yield* work(book.value);
  if (first.ok || !isChanged(first.problem)) return first;
  const again = yield* look(file, kinds);
  return again.ok ? yield* work(again.value) : again;
}

/** Writes cells, and takes in what stands in the sheets of these kinds afterwards. */
export function* writeCells(
  file: File,
  {
    kinds,
    ids = [],
    ...wish
  }: Pick<CellsWish, 'cells' | 'heights' | 'seen'> & {
    readonly kinds: readonly SheetKind[];
    /** Single sheets besides. */
    readonly ids?: readonly number[];
  },
): Work<Outcome<Book>> {
  const answer = yield* ask('writeCells', { ...wish, read: { kinds, ...(ids.length > 0 ? { ids } : {}) } });
  return answer.ok ? done(noted(file, answer.value, kinds)) : answer;
}

/** The script takes no more cells in one call. */
const mostCells = 1500;

/** The same for any number of cells, in as many calls as that takes: what an earlier one wrote stays where a later one fails. */
export const writeAllCells = (
  file: File,
  cells: readonly CellWish[],
  about: { readonly seen: readonly Seen[]; readonly kinds: readonly SheetKind[] },
): Work<Outcome<null>> =>
  writeRows(
    file,
    cells.map((cell) => [cell]),
    about,
  );

/** The same for cells of rows: a row goes whole into one call. */
export function* writeRows(
  file: File,
  rows: readonly (readonly CellWish[])[],
  { seen, kinds }: { readonly seen: readonly Seen[]; readonly kinds: readonly SheetKind[] },
): Work<Outcome<null>> {
  let cells: CellWish[] = [];
  for (const [place, row] of rows.entries()) {
    cells.push(...row);
    const isFull = cells.length + (rows[place + 1]?.length ?? mostCells) > mostCells;
    if (!isFull || cells.length === 0) continue;
    const written = yield* writeCells(file, { cells, seen, kinds });
    if (!written.ok) return written;
    cells = [];
  }
  return done(null);
}
