import { failure, type Result } from '../errors/result.ts';
import type { Status } from '../lab/judging/rowCheck.ts';
import { isBlank } from '../measurement/cellValue.ts';
import { asCell } from './asCell.ts';
import { computed } from './computed.ts';
import type { CellArgument, CellResult, Filled, FunctionEntry } from './entry.ts';
import { cellAt, gridOf, isOneCell, shapeOf, shapeText } from './grid.ts';
import { isWhole } from './readWhole.ts';
import { type Spread, spreadOf } from './spread.ts';

/** A row whose entry is blank: judged so, whatever else stands in the row. */
const blankStatus: Status = 'blank';

/**
 * For functions that judge entries and fill a row: single cells give one row, columns one row for each of theirs.
 * What is wrong with one row stands in its first cell.
 */
export function rowByRow(this: FunctionEntry, cells: readonly CellArgument[]): CellResult {
  const spread = asCell(columnsOnly(this, cells), 'alone');
  if (spread.alone) return [asCell(computed<Filled[]>(this, spread.valuesAt(0, 0)), 'alone')];
  const width = this.columns?.length ?? 1;
  const rowOf = (first: string): Filled[] => [first, ...Array.from({ length: width - 1 }, () => '')];
  const entries = gridOf(cells[this.arguments.findIndex(({ kind }) => kind === 'entry')]);
  const entryIsRange = !isOneCell(shapeOf(entries));
  return Array.from({ length: spread.shape.rows }, (_, row) => {
    if (entryIsRange && isBlank(cellAt(entries, row, 0))) return rowOf(blankStatus);
    if (spread.isBlankAt(row, 0)) return rowOf('');
    const filled = asCell(computed<Filled[]>(this, spread.valuesAt(row, 0)), 'in a range');
    return typeof filled === 'string' ? rowOf(filled) : filled;
  });
}

/** Lays the arguments over each other where each is a single cell or a column. Fails with `columns-only`. */
function columnsOnly(entry: FunctionEntry, cells: readonly CellArgument[]): Result<Spread> {
  for (const [place, argument] of entry.arguments.entries()) {
    const shape = shapeOf(gridOf(cells[place]));
    if (isWhole(argument) || shape.columns === 1) continue;
    return failure({
      code: 'columns-only',
      argument: argument.name,
      expected: 'one column or one cell',
      received: shapeText(shape),
      advice: `${entry.name} fills a row for each entry, so put the entries in one column.`,
    });
  }
  return spreadOf(entry, cells);
}
