import { failure, type Result, success } from '../errors/result.ts';
import { isBlank } from '../measurement/cellValue.ts';
import { commonShape } from './commonShape.ts';
import type { ArgumentEntry, CellArgument, FunctionEntry, Grid } from './entry.ts';
import { cellAt, gridOf, isAllBlank, isOneCell, type Shape, shapeOf } from './grid.ts';
import { readArgument } from './readArgument.ts';
import { isWhole, readWhole } from './readWhole.ts';

/** The arguments of one call, laid over each other. */
export interface Spread {
  readonly shape: Shape;
  /** No argument came as a range of several cells, so that bad input throws. */
  readonly alone: boolean;
  /** The values to compute from at one place, or what is wrong with the first that is not fit. */
  valuesAt(row: number, column: number): Result<readonly unknown[]>;
  /** Whether every argument that came as a range is blank at this place. */
  isBlankAt(row: number, column: number): boolean;
}

interface Laid {
  readonly argument: ArgumentEntry;
  readonly grid: Grid;
  readonly shape: Shape;
}

/**
 * Lays the arguments of a call over each other.
 *
 * @returns Fails with `ranges-unfit` or `arguments-too-many`, for the call as a whole.
 */
export function spreadOf(entry: FunctionEntry, cells: readonly CellArgument[]): Result<Spread> {
  if (cells.slice(entry.arguments.length).some((cell) => !isAllBlank(gridOf(cell)))) {
    return failure({
      code: 'arguments-too-many',
      argument: entry.name,
      expected: entry.arguments.length === 1 ? 'one' : `at most ${entry.arguments.length}`,
      received: String(cells.length),
      advice: `Give only ${entry.arguments.map(({ name }) => name).join(', ')}.`,
    });
  }
  const laid = entry.arguments.map((argument, place): Laid => {
    const grid = gridOf(cells[place]);
    return { argument, grid, shape: shapeOf(grid) };
  });
  const ranges = laid.filter(({ argument, shape }) => !isWhole(argument) && !isOneCell(shape));
  const shape = commonShape(ranges.map(({ argument, shape }) => ({ ...shape, name: argument.name })));
  if (!shape.ok) return shape;
  const readers = laid.map(readerOf);
  return success({
    shape: shape.value,
    alone: ranges.length === 0,
    valuesAt(row, column) {
      const values: unknown[] = [];
      for (const read of readers) {
        const value = read(row, column);
        if (!value.ok) return value;
        values.push(value.value);
      }
      return success(values);
    },
    isBlankAt: (row, column) => ranges.every(({ grid }) => isBlank(cellAt(grid, row, column))),
  });
}

/** Reads the cell at a place; what stretches over many places is read once. */
function readerOf({ argument, grid, shape }: Laid): (row: number, column: number) => Result<unknown> {
  if (isWhole(argument)) {
    const whole = readWhole(grid, argument);
    return () => whole;
  }
  const read = new Map<number, Result<unknown>>();
  return (row, column) => {
    const at = (shape.rows === 1 ? 0 : row) * shape.columns + (shape.columns === 1 ? 0 : column);
    const known = read.get(at);
    if (known !== undefined) return known;
    const value = readArgument(cellAt(grid, row, column), argument);
    read.set(at, value);
    return value;
  };
}
