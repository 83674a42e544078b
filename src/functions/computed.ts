import { failure, type Result } from '../errors/result.ts';
import type { Filled, FunctionEntry } from './entry.ts';

/** What an entry's `compute` gives for values as read: one cell, a row, or a table, as the entry's `call` says. */
export function computed<T extends Filled | readonly Filled[] | readonly (readonly Filled[])[]>(
  entry: FunctionEntry,
  values: Result<readonly unknown[]>,
): Result<T> {
  if (!values.ok) return values;
  // The type test over the catalogue holds that `compute` takes what its arguments are read as.
  const result = (entry.compute as unknown as (...values: readonly unknown[]) => Result<T>)(...values.value);
  if (!result.ok || isAllFinite(result.value)) return result;
  return failure({
    code: 'result-not-finite',
    argument: entry.name,
    advice: 'Look for a number that is far too large or far too small.',
  });
}

const isAllFinite = (value: unknown): boolean =>
  Array.isArray(value) ? value.every(isAllFinite) : typeof value !== 'number' || Number.isFinite(value);
