import type { CellSent } from '../../host/calls.ts';
import type { BookSheet } from './book.ts';
import { cellsOf } from './sheets.ts';

/** What a cell held when it was read, as it is sent back to be compared. */
export function cellWas(
  sheet: BookSheet,
  { row, column }: { readonly row: number; readonly column: number },
): CellSent {
  const cell = cellsOf(sheet)[row - 1]?.[column - 1] ?? '';
  return cell instanceof Date ? { date: cell.getTime() } : cell;
}
