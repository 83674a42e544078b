import type { SheetView } from '../view.ts';
import type { Place } from './cellName.ts';
import { rowMark } from './workbookModel.ts';

/**
 * Where the row of a cell is after rows were added, removed or ordered, or undefined where that cannot be told.
 * Rows are known by what people see in them, the cell's own column left out; many rows of a lesson read alike, so the
 * row is first looked for where one run of added or removed rows would have put it.
 */
export function followedRow(before: SheetView, after: SheetView, place: Place): number | undefined {
  const { column } = place;
  const mark = rowMark(before, place);
  const fits = (row: number): boolean => row >= 1 && row <= after.rows && rowMark(after, { row, column }) === mark;
  let firstDifferent = 1;
  const last = Math.min(before.rows, after.rows);
  while (
    firstDifferent <= last &&
    rowMark(before, { row: firstDifferent, column }) === rowMark(after, { row: firstDifferent, column })
  ) {
    firstDifferent += 1;
  }
  if (place.row < firstDifferent) return place.row;
  const moved = place.row + after.rows - before.rows;
  // A removed row is gone even where the one that moved up into its place reads the same.
  const removed = before.rows - after.rows;
  if (removed > 0 && place.row < firstDifferent + removed) return undefined;
  if (after.rows !== before.rows && fits(moved)) return moved;
  if (mark === '') return undefined;
  const found = Array.from({ length: after.rows }, (_, index) => index + 1).filter(fits);
  return found.length === 1 ? found[0] : undefined;
}
