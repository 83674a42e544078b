import type { ChangeView, Seat } from '../view.ts';
import { cellKey, columnOf, rowOf } from './address.ts';
import type { Book } from './book.ts';
import type { SheetState } from './sheetState.ts';
import { cellViewOf, sheetViewOf } from './viewOf.ts';

/** What looks different to a seat since a version: whole sheets where rows or columns changed, else cells. */
export function changeViewOf(book: Book, seat: Seat, version: number): Omit<ChangeView, 'activate' | 'toast'> {
  book.settle();
  const whole = book.sheets.filter((sheet) => (book.log.restructured.get(sheet.id) ?? 0) > version);
  return {
    version: book.version,
    sheets: whole.map((sheet) => sheetViewOf(book, sheet, seat)),
    removedSheets: [...book.log.removed].filter(([, at]) => at > version).map(([id]) => id),
    order: book.sheets.map(({ id }) => id),
    cells: book.sheets
      .filter((sheet) => !whole.includes(sheet))
      .map((sheet) => ({
        sheet: sheet.id,
        cells: Object.fromEntries(
          changedKeys(book, sheet, version).map((key) => [
            `${rowOf(key)},${columnOf(key)}`,
            cellViewOf(book, sheet, key, seat) ?? null,
          ]),
        ),
      }))
      .filter(({ cells }) => Object.keys(cells).length > 0),
  };
}

/** Cells that may look different since a version: those that changed, and those whose colour hangs on others. */
function changedKeys(book: Book, sheet: SheetState, version: number): number[] {
  const keys = new Set<number>();
  for (const [key, at] of book.log.changed.get(sheet.id) ?? []) if (at > version) keys.add(key);
  for (const { condition, areas } of sheet.rules) {
    if (condition.kind !== 'formula') continue;
    for (const { row, column, rows, columns } of areas) {
      for (let down = 0; down < rows; down += 1) {
        for (let across = 0; across < columns; across += 1) {
          const key = cellKey(row + down, column + across);
          if (sheet.cells.has(key) || sheet.spilled.has(key)) keys.add(key);
        }
      }
    }
  }
  return [...keys];
}
