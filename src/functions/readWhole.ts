import { failure, type Result, success } from '../errors/result.ts';
import type { CellValue } from '../measurement/cellValue.ts';
import type { ArgumentEntry, Grid } from './entry.ts';
import { isAllBlank, isOneCell, shapeOf, shapeText } from './grid.ts';

/** Arguments that are kept as they stand: a row, a column, or a table of its own. */
export const isWhole = ({ kind }: ArgumentEntry): boolean => kind === 'row' || kind === 'column' || kind === 'table';

/**
 * Reads a range that belongs together: cells for a row or a column, rows of cells for a table.
 *
 * @returns Fails with `range-shape`, or with `range-missing` where nothing stands in it; undefined if that is optional.
 */
export function readWhole(grid: Grid, argument: ArgumentEntry): Result<readonly CellValue[] | Grid | undefined> {
  const { name, kind, optional } = argument;
  const shape = shapeOf(grid);
  if (optional && isAllBlank(grid)) return success(undefined);
  if (isOneCell(shape) && grid[0]?.[0] === undefined) {
    return failure({
      code: 'range-missing',
      argument: name,
      expected: expectedText(argument),
    });
  }
  if ((kind === 'row' && shape.rows > 1) || (kind === 'column' && shape.columns > 1)) {
    return failure({
      code: 'range-shape',
      argument: name,
      expected: `one ${kind}`,
      received: shapeText(shape),
      advice: `Select one ${kind} only.`,
    });
  }
  if (kind === 'row') return success(grid[0] ?? []);
  return success(kind === 'column' ? grid.map(([cell]) => cell) : grid);
}

const expectedText = ({ kind, about = '' }: ArgumentEntry): string => `a ${kind} of cells for it: ${about}`;
