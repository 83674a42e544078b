import { type Area, cellKey, columnOf, rowOf } from './address.ts';
import type { Book } from './book.ts';
import { rowOrder } from './rowOrder.ts';
import type { CellState, SheetState } from './sheetState.ts';
import type { Undoable } from './undoList.ts';

/** Inserts rows; taken away again only while they are empty, since nothing typed may be lost. */
export function insertRowsUndoably(book: Book, sheet: SheetState, before: number, count: number): Undoable {
  const insert = (): boolean => {
    book.insertRows(sheet, before, count);
    return true;
  };
  insert();
  return {
    undo: () => {
      const typed = [...sheet.cells].some(
        ([key, { content }]) => content && rowOf(key) >= before && rowOf(key) < before + count,
      );
      if (typed) return false;
      book.deleteRows(sheet, before, count);
      return true;
    },
    redo: insert,
  };
}

/** Deletes rows; brought back with all that stood in them, and with the references that were lost with them. */
export function deleteRowsUndoably(book: Book, sheet: SheetState, first: number, count: number): Undoable {
  let undo = (): void => {};
  const remove = (): boolean => {
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
    return true;
  };
  remove();
  return {
    undo: () => {
      undo();
      return true;
    },
    redo: remove,
  };
}

/** Sorts rows; the way back is the same rows in the order they had. */
export function sortRowsUndoably(
  book: Book,
  sheet: SheetState,
  area: Area,
  { byColumn, ascending }: { readonly byColumn: number; readonly ascending: boolean },
): Undoable {
  const valueIn = (row: number) => book.value(sheet, row, byColumn);
  const order = rowOrder(area, valueIn, { ascending, language: book.locale.tag });
  const back = order.map((_, index) => area.row + order.indexOf(area.row + index));
  const arrange = (rows: readonly number[]) => (): boolean => {
    book.arrangeRows(sheet, area, rows);
    return true;
  };
  arrange(order)();
  return { undo: arrange(back), redo: arrange(order) };
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
