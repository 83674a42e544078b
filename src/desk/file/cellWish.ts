import type { CellSent, CellWish } from '../../host/calls.ts';
import type { BookSheet } from './book.ts';
import { cellWas } from './cellWas.ts';

/** A value for a cell, beside what stood there when it was read: the script writes it only where that still stands. */
export const cellWish = (
  sheet: BookSheet,
  { row, column }: { readonly row: number; readonly column: number },
  now: CellSent,
): CellWish => ({ sheetId: sheet.id, row, column, was: cellWas(sheet, { row, column }), now });
