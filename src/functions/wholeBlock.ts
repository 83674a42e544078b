import { asCell } from './asCell.ts';
import { computed } from './computed.ts';
import type { CellArgument, CellResult, Filled, FunctionEntry } from './entry.ts';
import { spreadOf } from './spread.ts';

/** For functions that take ranges as they stand and fill a block in one go, headings and blank rows included. */
export function wholeBlock(this: FunctionEntry, cells: readonly CellArgument[]): CellResult {
  const spread = asCell(spreadOf(this, cells), 'alone');
  return asCell(computed<Filled[][]>(this, spread.valuesAt(0, 0)), 'alone');
}
