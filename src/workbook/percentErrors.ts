import { readEntry } from '../lab/judging/readEntry.ts';
import type { Step } from '../lab/lesson/activity.ts';
import type { ClassReading } from './readClassSheet.ts';

/** Checks under which a percent error is worked rightly and from readings that are sound. */
const soundChecks = ['on target', 'close'];

/**
 * The percent errors that a class has found, smallest first, without names: one for each team whose row stands. Undefined
 * in an activity that asks for none.
 */
export function percentErrors(
  { blocks }: ClassReading,
  { steps, decimalMark }: { readonly steps: readonly Step[]; readonly decimalMark: 'point' | 'comma' },
): readonly number[] | undefined {
  const asked = steps
    .filter((step) => step.kind === 'calculated' && step.quantity === 'percent error')
    .map(({ id }) => id);
  if (asked.length === 0) return undefined;
  return blocks
    .flatMap(({ steps: rows }) => rows.filter(({ step, check }) => asked.includes(step) && soundChecks.includes(check)))
    .flatMap(({ entry }) => {
      const read = readEntry(entry, 'percent', { decimalMark });
      return read.kind === 'number' ? [Math.abs(read.entry.value)] : [];
    })
    .sort((one, other) => one - other);
}
