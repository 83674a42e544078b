import { otherEntry } from '../../scripts/simulate/otherEntry.ts';
import { readingOff, rightEntry, stepOfTeam } from '../../scripts/simulate/rightEntry.ts';
import type { Activity } from '../../src/lab/lesson/activity.ts';

/** Right entries of every step by id: numbers to the figures asked, readings above the plan by a small share of it. */
export function rightEntries(
  activity: Activity,
  givens: Readonly<Record<string, string>>,
  share = 0.004,
): Record<string, string> {
  const entries: Record<string, string> = {};
  for (const step of activity.steps) {
    const soFar = { activity, givens, entries };
    if (step.kind === 'calculated') entries[step.id] = rightEntry(stepOfTeam(step, soFar));
    else if (step.kind === 'measured') entries[step.id] = readingOff(step, share, soFar);
    else entries[step.id] = step.kind === 'told' ? 'The ions are spread out.' : otherEntry(step, givens);
  }
  return entries;
}
