import { errorText, shortErrorText } from '../errors/errorText.ts';
import type { Result } from '../errors/result.ts';

/** Where a result goes: alone into the cell that asked, or into one place of a range. */
export type Place = 'alone' | 'in a range';

/**
 * The value of a result. A person's mistake is thrown in full where one cell was asked, and comes back as its short
 * text in its own place in a range. Nothing else in this room throws.
 */
export function asCell<T>(result: Result<T>, place: 'alone'): T;
export function asCell<T>(result: Result<T>, place: Place): T | string;
export function asCell<T>(result: Result<T>, place: Place): T | string {
  if (result.ok) return result.value;
  if (place === 'alone') throw new Error(errorText(result.error));
  return shortErrorText(result.error);
}
