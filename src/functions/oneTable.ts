import { failure, type Result } from '../errors/result.ts';
import { asCell } from './asCell.ts';
import { computed } from './computed.ts';
import type { CellArgument, CellResult, Filled, FunctionEntry } from './entry.ts';
import { gridOf, isOneCell, shapeOf, shapeText } from './grid.ts';
import { isWhole } from './readWhole.ts';
import { type Spread, spreadOf } from './spread.ts';

/** For functions that fill a table from single cells: its columns' headings stand above the rows. */
export function oneTable(this: FunctionEntry, cells: readonly CellArgument[]): CellResult {
  const spread = asCell(singleCells(this, cells), 'alone');
  const rows = asCell(computed<readonly Filled[][]>(this, spread.valuesAt(0, 0)), 'alone');
  // Columns that only an optional argument adds stand last.
  return [(this.columns ?? []).slice(0, rows[0]?.length), ...rows];
}

/** Lays the arguments over each other where each is a single cell. Fails with `one-cell-only`. */
function singleCells(entry: FunctionEntry, cells: readonly CellArgument[]): Result<Spread> {
  for (const [place, argument] of entry.arguments.entries()) {
    const shape = shapeOf(gridOf(cells[place]));
    if (isWhole(argument) || isOneCell(shape)) continue;
    return failure({
      code: 'one-cell-only',
      argument: argument.name,
      expected: 'one cell',
      received: shapeText(shape),
      advice: `${entry.name} fills a whole table, so call it once for each value.`,
    });
  }
  return spreadOf(entry, cells);
}
