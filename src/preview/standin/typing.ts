import type { Edit, Seat } from '../view.ts';
import { type Area, cellKey } from './address.ts';
import { loading } from './book/engine.ts';
import type { Book } from './book.ts';
import { guardAt, lockedWords } from './guards.ts';
import { HostError } from './hostError.ts';
import type { CellState, SheetState } from './sheetState.ts';
import { readTyped } from './typed.ts';
import { validationRefusal } from './validate.ts';

/** Cells of some sheets as they were at one time. */
export type CellStates = ReadonlyMap<SheetState, ReadonlyMap<number, CellState | undefined>>;

export interface Typed {
  readonly refused: readonly { readonly edit: Edit; readonly reason: string }[];
  readonly accepted: readonly Edit[];
  /** The cells that took something, before and after. */
  readonly before: CellStates;
  readonly after: CellStates;
}

/** What people type, paste or clear, read as the host reads it; each cell that takes nothing says why. */
export function typeInto(book: Book, seat: Seat, edits: readonly Edit[]): Typed {
  const refused: { edit: Edit; reason: string }[] = [];
  const accepted: Edit[] = [];
  const before = new Map<SheetState, Map<number, CellState | undefined>>();
  for (const edit of edits) {
    const sheet = book.sheet(edit.sheet);
    const reason = refusal(book, seat, sheet, edit);
    if (reason !== undefined) {
      refused.push({ edit, reason });
      continue;
    }
    const cells = before.get(sheet) ?? new Map<number, CellState | undefined>();
    before.set(sheet, cells);
    const key = cellKey(edit.row, edit.column);
    if (!cells.has(key)) cells.set(key, sheet.cells.get(key));
    write(book, sheet, edit);
    accepted.push(edit);
  }
  book.settle();
  return { refused, accepted, before, after: statesNow(before) };
}

const readingOf = (book: Book, sheet: SheetState, { row, column, text }: Edit) =>
  readTyped(text, { numberFormat: book.cell(sheet, row, column).format?.numberFormat, locale: book.locale });

function refusal(book: Book, seat: Seat, sheet: SheetState, edit: Edit): string | undefined {
  const { row, column } = edit;
  if (row < 1 || column < 1 || row > sheet.rows || column > sheet.columns) return 'This cell is outside the sheet.';
  if (guardAt(sheet, row, column, seat) === 'locked') return lockedWords;
  return validationRefusal(book.cell(sheet, row, column).validation, readingOf(book, sheet, edit).content);
}

function write(book: Book, sheet: SheetState, edit: Edit): void {
  const { row, column } = edit;
  const { content, numberFormat } = readingOf(book, sheet, edit);
  if (numberFormat !== undefined) {
    book.decorate(sheet, row, column, (state) => ({ ...state, format: { ...state.format, numberFormat } }));
  }
  book.setContent(sheet, row, column, content);
}

const statesNow = (like: CellStates): CellStates =>
  new Map(
    [...like].map(([sheet, cells]) => [sheet, new Map([...cells.keys()].map((key) => [key, sheet.cells.get(key)]))]),
  );

/** A cell's value as an event of the host carries it; undefined where it is empty. */
export function eventText(book: Book, sheet: SheetState, row: number, column: number): string | undefined {
  const value = book.value(sheet, row, column);
  if (value === '') return undefined;
  if (value === loading) return 'Loading...';
  return value instanceof HostError ? value.code : String(value);
}

/** The one range of a sheet that an event names for what was typed or pasted there at once. */
export function areaOf(edits: readonly Edit[]): Area {
  const rows = edits.map(({ row }) => row);
  const columns = edits.map(({ column }) => column);
  const row = Math.min(...rows);
  const column = Math.min(...columns);
  return { row, column, rows: Math.max(...rows) - row + 1, columns: Math.max(...columns) - column + 1 };
}
