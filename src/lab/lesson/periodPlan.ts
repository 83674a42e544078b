import { periodTexts } from '../texts/period.ts';
import type { Activity, Step } from './activity.ts';

/** Minutes for a step by its kind, and for the two ends of a period (common practice, no source). */
const usualMinutes: Readonly<Record<Step['kind'], number>> = {
  ticked: 3,
  calculated: 3,
  ordered: 6,
  measured: 12,
  chosen: 3,
  told: 3,
  safety: 2,
  weighing: 1,
};
const opening = 4;
const clearing = 5;
const bench = 10;

interface PeriodLine {
  readonly title: string;
  readonly minutes: number;
}
export interface PeriodPlan {
  readonly period: number;
  readonly lines: readonly PeriodLine[];
  readonly minutes: number;
}

const periodsOf = (steps: readonly Step[]): readonly number[] => [...new Set(steps.map(({ period }) => period))].sort();

/** How many periods the activity is made for. */
export const periodCount = ({ steps }: Activity): number => periodsOf(steps).length;

/** What happens in each period, with the usual minutes; one period where the Plan says so, whatever the activity's two. */
export function periodPlans({ steps }: Activity, periods: number): readonly PeriodPlan[] {
  const numbers = periods > 1 ? periodsOf(steps) : [1];
  return numbers.map((period) => {
    const lines = [
      { title: periodTexts.opening, minutes: opening },
      ...stepLines(steps.filter((step) => numbers.length === 1 || step.period === period)),
      { title: periodTexts.clearing, minutes: clearing },
    ];
    return { period, lines, minutes: total(lines) };
  });
}

/** A procedure is carried out right after it is put in order; where it ends in a reading, the reading has the time. */
const stepLines = (steps: readonly Step[]): readonly PeriodLine[] =>
  steps.flatMap(({ title, kind }, index) => [
    { title, minutes: usualMinutes[kind] },
    ...(kind === 'ordered' && !['measured', 'weighing'].includes(steps[index + 1]?.kind ?? '')
      ? [{ title: periodTexts.bench, minutes: bench }]
      : []),
  ]);

const total = (lines: readonly PeriodLine[]): number => lines.reduce((sum, { minutes }) => sum + minutes, 0);

/**
 * The same lines in another total: whole minutes in proportion, at least one each, the largest remainders rounded up. A
 * total with less than a minute for each line leaves one each, so that nothing is planned in no time.
 */
export function fitted(plan: PeriodPlan, minutes: number): PeriodPlan {
  const wanted = Math.max(Math.round(minutes), plan.lines.length);
  const spare = wanted - plan.lines.length;
  const weight = plan.minutes - plan.lines.length;
  const shares = plan.lines.map((line) =>
    weight > 0 ? ((line.minutes - 1) * spare) / weight : spare / plan.lines.length,
  );
  const given = shares.map(Math.floor);
  const order = shares
    .map((share, index) => ({ index, rest: share - Math.floor(share) }))
    .sort((one, other) => other.rest - one.rest || one.index - other.index);
  let left = spare - given.reduce((sum, share) => sum + share, 0);
  for (const { index } of order) {
    if (left <= 0) break;
    given[index] = (given[index] ?? 0) + 1;
    left -= 1;
  }
  return {
    ...plan,
    minutes: wanted,
    lines: plan.lines.map(({ title }, index) => ({ title, minutes: 1 + (given[index] ?? 0) })),
  };
}
