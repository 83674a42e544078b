import { expectedValue } from '../../src/lab/judging/expectedValue.ts';
import type { FilledQuantity } from '../../src/lab/judging/filledQuantity.ts';
import { fillQuantity } from '../../src/lab/judging/fillQuantity.ts';
import { spanOver } from '../../src/lab/judging/worked.ts';
import type { Activity, CalculatedStep, MeasuredStep } from '../../src/lab/lesson/activity.ts';
import { quantities } from '../../src/lab/quantities.ts';
import { placeOf, typedTo } from './typing.ts';

/** A team's givens and its entries so far, by name and by step. */
export interface TeamSoFar {
  readonly activity: Activity;
  readonly givens: Readonly<Record<string, string>>;
  readonly entries: Readonly<Record<string, string>>;
}

/** A calculated step with the numbers that a team has for it: its givens, and what it typed in rows above. */
export function stepOfTeam(step: CalculatedStep, { activity, givens, entries }: TeamSoFar): FilledQuantity {
  const cells: Record<string, string> = {};
  const numbers: Record<string, number> = {};
  for (const [name, source] of Object.entries(step.takes)) {
    if ('given' in source) cells[name] = givens[source.given] ?? '';
    else numbers[name] = Number(entries[source.entryOf]);
  }
  const ready = fillQuantity(quantities[step.quantity], cells, { numbers });
  if (!ready.ok) throw new Error(`${activity.id}, ${step.id}: ${ready.error.argument}, ${ready.error.received}`);
  return ready.value;
}

/** What a careful team types: the unrounded result, to the figures asked. */
export function rightEntry(ready: FilledQuantity): string {
  const { middle } = spanOver(ready, ready.quantity.relation);
  const own = 'decimals' in ready.asked ? -ready.asked.decimals : placeOf(middle, ready.asked.figures);
  const { neverFinerThan } = ready.quantity;
  if (middle === 0 || !neverFinerThan || 'decimals' in ready.asked) return middle === 0 ? '0' : typedTo(middle, own);
  return typedTo(middle, Math.max(own, placeOf(spanOver(ready, neverFinerThan).middle, ready.asked.figures)));
}

/** What an instrument shows that is off by a share of what is expected: a balance to 0.01 g, others to five figures. */
export function readingOff(
  { expects, unit }: MeasuredStep,
  share: number,
  { activity, givens, entries }: TeamSoFar,
): string {
  const expected = (): number => {
    if (typeof expects === 'string') return Number(entries[expects]);
    if ('given' in expects) return Number(givens[expects.given]);
    const found = expectedValue(expects, { givens, decimalMark: 'point' });
    if (!found.ok) throw new Error(`${activity.id}: ${found.error.argument}, ${found.error.received}`);
    return found.value;
  };
  const value = expected() * (1 + share);
  return typedTo(value, unit === 'g' ? -2 : placeOf(value, 5));
}
