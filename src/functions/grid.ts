import { type CellValue, isBlank } from '../measurement/cellValue.ts';
import type { CellArgument, Grid } from './entry.ts';

export interface Shape {
  readonly rows: number;
  readonly columns: number;
}

const isList = (value: unknown): value is readonly unknown[] => Array.isArray(value);

/** A date that the host made is an instance of another world's Date, so only its tag tells. */
const isDate = (value: unknown): value is Date => Object.prototype.toString.call(value) === '[object Date]';

/** Anything that no cell can hold is turned into text, so that readers refuse it in words. */
function cellOf(value: unknown): CellValue {
  if (value === undefined || value === null) return undefined;
  if (typeof value === 'string' || typeof value === 'number' || typeof value === 'boolean' || isDate(value)) {
    return value;
  }
  return Object.prototype.toString.call(value);
}

/** An argument as rows of cells of one length. A single cell is one row of one; a list without rows is one row. */
export function gridOf(argument: CellArgument): Grid {
  if (!isList(argument)) return [[cellOf(argument)]];
  const rows = argument.some(isList) ? argument.map((row) => (isList(row) ? row : [row])) : [argument];
  const columns = Math.max(1, ...rows.map((row) => row.length));
  return rows.map((row) => Array.from({ length: columns }, (_, column) => cellOf(row[column])));
}

export const shapeOf = (grid: Grid): Shape => ({ rows: grid.length, columns: grid[0]?.length ?? 1 });

export const isOneCell = ({ rows, columns }: Shape): boolean => rows === 1 && columns === 1;

/** The cell at a place; a single row or column stretches. */
export const cellAt = (grid: Grid, row: number, column: number): CellValue => {
  const line = grid.length === 1 ? grid[0] : grid[row];
  return line?.length === 1 ? line[0] : line?.[column];
};

export const isAllBlank = (grid: Grid): boolean => grid.every((row) => row.every(isBlank));

/** `8 rows`, `1 row and 3 columns`: only what tells the shape. */
export function shapeText({ rows, columns }: Shape): string {
  const rowsText = `${rows} ${rows === 1 ? 'row' : 'rows'}`;
  const columnsText = `${columns} ${columns === 1 ? 'column' : 'columns'}`;
  if (columns === 1) return rowsText;
  return rows === 1 ? columnsText : `${rowsText} and ${columnsText}`;
}
