import { type Area, cellKey, columnOf, rowOf } from './address.ts';
import type { Book } from './book.ts';
import { movedLines } from './movedLines.ts';
import { rowOrder } from './rowOrder.ts';
import type { CellState, SheetState } from './sheetState.ts';
import { type CellsMoved, type StepDone, stepped, type Undoable } from './undoList.ts';

/** A change of rows that was made: how it went, and the way back. */
export interface RowChange {
  readonly moved: CellsMoved;
  readonly step: Undoable;
}

const movedRows = (sheet: SheetState, at: number, by: number): CellsMoved => ({
  sheet,
  key: movedLines({ along: 'row', at, by }).movedKey,
});
const atRow = (sheet: SheetState, row: number) => ({ sheet: sheet.id, row: Math.min(row, sheet.rows), column: 1 });
/** Rows that moved once more under a change of rows are hard to follow: it ends there. */
const follow = (): undefined => undefined;

/** Inserts rows; taken away again only while they are empty, since nothing typed may be lost. */
export function insertRowsUndoably(book: Book, sheet: SheetState, before: number, count: number): RowChange {
  const inserted = movedRows(sheet, before, count);
  const insert = (): StepDone => {
    book.insertRows(sheet, before, count);
    return { ...stepped([atRow(sheet, before)]), moved: inserted };
  };
  insert();
  const undo = (): StepDone => {
    const typed = [...sheet.cells].flatMap(([key, { content }]) =>
      content && rowOf(key) >= before && rowOf(key) < before + count
        ? [{ sheet: sheet.id, row: rowOf(key), column: columnOf(key) }]
        : [],
    );
    if (typed.length > 0) return stepped([], typed);
    book.deleteRows(sheet, before, count);
    return { ...stepped([atRow(sheet, before)]), moved: movedRows(sheet, before, -count) };
  };
  return { moved: inserted, step: { undo, redo: insert, follow } };
}

/** Deletes rows; brought back with all that stood in them, and with the references that were lost with them. */
export function deleteRowsUndoably(book: Book, sheet: SheetState, first: number, count: number): RowChange {
  const deleted = movedRows(sheet, first, -count);
  let undo = (): void => {};
  const remove = (): StepDone => {
    const lost = [...sheet.cells].filter(([key]) => rowOf(key) >= first && rowOf(key) < first + count);
    const formulasBefore = formulasOf(book);
    const areas = { merges: sheet.merges, rules: sheet.rules, protections: sheet.protections };
    book.deleteRows(sheet, first, count);
    const areasAfter = { merges: sheet.merges, rules: sheet.rules, protections: sheet.protections };
    const unchanged = JSON.stringify(areasAfter);
    const formulasAfter = formulasOf(book);
    undo = () => {
      const untouched = JSON.stringify({ merges: sheet.merges, rules: sheet.rules, protections: sheet.protections });
      const standing = rewritten(book, { sheet, first, count }, formulasBefore, formulasAfter);
      book.insertRows(sheet, first, count);
      for (const [key, { content, ...looks }] of lost) {
        book.decorate(sheet, rowOf(key), columnOf(key), () => looks);
        if (content) book.setContent(sheet, rowOf(key), columnOf(key), content);
      }
      for (const { on, key, formula } of standing) {
        book.setContent(on, rowOf(key), columnOf(key), { kind: 'formula', formula });
      }
      if (untouched === unchanged) Object.assign(sheet, areas);
      book.settle();
    };
    return { ...stepped([atRow(sheet, first)]), moved: deleted };
  };
  remove();
  const bringBack = (): StepDone => {
    undo();
    return { ...stepped([atRow(sheet, first)]), moved: movedRows(sheet, first, count) };
  };
  return { moved: deleted, step: { undo: bringBack, redo: remove, follow } };
}

/** Sorts rows; the way back is the same rows in the order they had. */
export function sortRowsUndoably(
  book: Book,
  sheet: SheetState,
  area: Area,
  { byColumn, ascending }: { readonly byColumn: number; readonly ascending: boolean },
): RowChange {
  const valueIn = (row: number) => book.value(sheet, row, byColumn);
  const order = rowOrder(area, valueIn, { ascending, language: book.locale.tag });
  const back = order.map((_, index) => area.row + order.indexOf(area.row + index));
  const moved = (rows: readonly number[]): CellsMoved => {
    const to = new Map(rows.map((from, index) => [from, area.row + index]));
    const key = (at: number): number => {
      const within = columnOf(at) >= area.column && columnOf(at) < area.column + area.columns;
      return within ? cellKey(to.get(rowOf(at)) ?? rowOf(at), columnOf(at)) : at;
    };
    return { sheet, key };
  };
  const arrange = (rows: readonly number[]) => (): StepDone => {
    book.arrangeRows(sheet, area, rows);
    return { ...stepped([{ sheet: sheet.id, row: area.row, column: area.column }]), moved: moved(rows) };
  };
  arrange(order)();
  return { moved: moved(order), step: { undo: arrange(back), redo: arrange(order), follow } };
}

type Formulas = ReadonlyMap<SheetState, ReadonlyMap<number, string>>;
const formulaOf = (cell: CellState | undefined): string | undefined =>
  cell?.content?.kind === 'formula' ? cell.content.formula : undefined;
const formulasOf = (book: Book): Formulas =>
  new Map(
    book.sheets.map((sheet) => [
      sheet,
      new Map(
        [...sheet.cells].flatMap(([key, cell]) => {
          const formula = formulaOf(cell);
          return formula === undefined ? [] : [[key, formula] as const];
        }),
      ),
    ]),
  );

/** Formulas that the deletion rewrote and that nobody changed since, with their place and text from before it. */
function rewritten(
  book: Book,
  { sheet, first, count }: { readonly sheet: SheetState; readonly first: number; readonly count: number },
  before: Formulas,
  after: Formulas,
): { readonly on: SheetState; readonly key: number; readonly formula: string }[] {
  return [...before].flatMap(([on, formulas]) => {
    if (!book.sheets.includes(on)) return [];
    return [...formulas].flatMap(([key, formula]) => {
      const row = rowOf(key);
      if (on === sheet && row >= first && row < first + count) return [];
      const moved = on === sheet && row >= first ? cellKey(row - count, columnOf(key)) : key;
      const left = after.get(on)?.get(moved);
      const stands = left !== undefined && formulaOf(on.cells.get(moved)) === left;
      return stands && left !== formula ? [{ on, key, formula }] : [];
    });
  });
}
