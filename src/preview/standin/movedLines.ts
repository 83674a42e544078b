import { type Area, cellKey, columnOf, rowOf } from './address.ts';

export interface LineChange {
  readonly along: 'row' | 'column';
  /** The first row or column that is new, or that goes. */
  readonly at: number;
  /** How many are inserted; negative where they are deleted. */
  readonly by: number;
}

/** Where lines, cells and areas of a sheet stand after rows or columns were inserted or deleted. */
export function movedLines({ along, at, by }: LineChange) {
  /** Undefined where the row or column was deleted. */
  const moved = (line: number): number | undefined => {
    if (line < at) return line;
    if (by > 0) return line + by;
    return line < at - by ? undefined : line + by;
  };
  const movedKey = (key: number): number | undefined => {
    const row = along === 'row' ? moved(rowOf(key)) : rowOf(key);
    const column = along === 'column' ? moved(columnOf(key)) : columnOf(key);
    return row === undefined || column === undefined ? undefined : cellKey(row, column);
  };
  /** An area grows with lines inserted inside it; undefined where all of it was deleted. */
  const movedArea = (area: Area): Area | undefined => {
    const [first, length] = along === 'row' ? [area.row, area.rows] : [area.column, area.columns];
    const kept = Array.from({ length }, (_, index) => moved(first + index)).filter((line) => line !== undefined);
    const [start] = kept;
    const end = kept.at(-1);
    if (start === undefined || end === undefined) return undefined;
    return along === 'row'
      ? { ...area, row: start, rows: end - start + 1 }
      : { ...area, column: start, columns: end - start + 1 };
  };
  return { moved, movedKey, movedArea };
}

/** The same entries under the places they moved to; those without a place are dropped. */
export function remapped<T>(map: ReadonlyMap<number, T>, to: (place: number) => number | undefined): Map<number, T> {
  const result = new Map<number, T>();
  for (const [place, value] of map) {
    const next = to(place);
    if (next !== undefined) result.set(next, value);
  }
  return result;
}
