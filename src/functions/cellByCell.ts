import { asCell } from './asCell.ts';
import { computed } from './computed.ts';
import type { CellArgument, CellResult, Filled, FunctionEntry } from './entry.ts';
import { spreadOf } from './spread.ts';

/** For functions that fill one cell: ranges are gone through cell by cell, and the result has their common shape. */
export function cellByCell(this: FunctionEntry, cells: readonly CellArgument[]): CellResult {
  const spread = asCell(spreadOf(this, cells), 'alone');
  if (spread.alone) return asCell(computed<Filled>(this, spread.valuesAt(0, 0)), 'alone');
  return Array.from({ length: spread.shape.rows }, (_, row) =>
    Array.from({ length: spread.shape.columns }, (_, column) =>
      spread.isBlankAt(row, column) ? '' : asCell(computed<Filled>(this, spread.valuesAt(row, column)), 'in a range'),
    ),
  );
}
