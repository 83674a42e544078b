import type { CallOutcome } from './enginePlugins.ts';
import { isDateObject } from './scriptContext.ts';
import type { SpilledValue } from './sheetState.ts';

/**
 * What a script's function returned, as rows of cells. Only what the host is known to show is let through: a number,
 * text or logical value, or a rectangle of these as an array of rows.
 */
export function cellResult(returned: unknown): CallOutcome {
  if (!Array.isArray(returned)) {
    const value = cellValue(returned);
    return value === undefined ? refused(returned) : { kind: 'rows', rows: [[value]] };
  }
  const rows: SpilledValue[][] = [];
  for (const row of returned as unknown[]) {
    if (!Array.isArray(row)) return refused(returned, 'an array whose rows are not arrays');
    const cells: SpilledValue[] = [];
    for (const item of Array.from(row as ArrayLike<unknown>)) {
      const value = cellValue(item);
      if (value === undefined) return refused(item);
      cells.push(value);
    }
    rows.push(cells);
  }
  const width = rows[0]?.length ?? 0;
  if (width === 0 || rows.some((row) => row.length !== width)) return refused(returned, 'rows of unequal or no length');
  return { kind: 'rows', rows };
}

function cellValue(value: unknown): SpilledValue | undefined {
  if (typeof value === 'string' || typeof value === 'boolean') return value;
  return typeof value === 'number' && Number.isFinite(value) ? value : undefined;
}

function refused(value: unknown, what = kindOf(value)): CallOutcome {
  return {
    kind: 'error',
    message: `Stand-in: expected a number, text or logical value, or a rectangle of them, from the function; received ${what}.`,
  };
}

function kindOf(value: unknown): string {
  if (value === null || value === undefined || typeof value === 'number') return String(value);
  return isDateObject(value) ? 'a Date' : `a value of type ${typeof value}`;
}
