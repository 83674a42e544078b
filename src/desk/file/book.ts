import type { BookReading, CellSent, FileRead, SheetKind, SheetListed, SheetRead } from '../../host/calls.ts';
import type { CellValue } from '../../measurement/cellValue.ts';

export type Cells = readonly (readonly CellValue[])[];

/** A sheet of the file, with its cells where they were read. */
export interface BookSheet extends SheetListed {
  readonly cells?: Cells;
  readonly formulaEntries?: readonly number[];
  readonly mark?: string;
}

/** What was read of a file, as a value: the list of its sheets, and the cells of those that were asked for so far. */
export interface Book extends FileRead, Omit<BookReading, keyof FileRead | 'sheets' | 'read'> {
  readonly sheets: readonly BookSheet[];
  /** Kinds whose sheets were read. */
  readonly kinds: readonly SheetKind[];
  /** Of a book that is limited to a lesson: the day on which that was begun, where it is known. */
  readonly begun?: string;
  /** And keys of the teams whose class has been put away from it. */
  readonly away?: readonly string[];
}

const cellOf = (sent: CellSent): CellValue => (typeof sent === 'object' ? new Date(sent.date) : sent);

/**
 * A new reading over what was read before: sheets that it does not hold keep the cells they had, and a brief one leaves what
 * is known of the file. Whoever asks for a brief one has read the file.
 */
export function bookAfter(before: Book | undefined, reading: BookReading, kinds: readonly SheetKind[]): Book {
  const { sheets, read, ...rest } = reading;
  const withCells = (said: SheetListed): BookSheet => {
    const earlier = before?.sheets.find(({ id }) => id === said.id);
    const listed = said.name === '' ? { ...said, name: earlier?.name ?? '' } : said;
    const found: SheetRead | undefined = read.find(({ id }) => id === listed.id);
    if (found !== undefined) {
      const { mark, formulaEntries } = found;
      return { ...listed, mark, formulaEntries, cells: found.cells.map((line) => line.map(cellOf)) };
    }
    if (earlier?.cells === undefined || earlier.mark === undefined) return listed;
    return { ...listed, cells: earlier.cells, mark: earlier.mark, formulaEntries: earlier.formulaEntries ?? [] };
  };
  const book = { ...before, ...rest, sheets: sheets.map(withCells) } as Book;
  return { ...book, kinds: [...new Set([...(before?.kinds ?? []), ...kinds])] };
}
