import type { Activity } from '../lab/lesson/activity.ts';
import type { TeamPlan } from '../lab/lesson/setup.ts';

/**
 * The activity as these teams do it. Where no team is given an ion, the rows that ask about one are left out: they could
 * never be filled in, and would stand open for ever.
 */
export function activityInUse(activity: Activity, teams: readonly Pick<TeamPlan, 'givens'>[]): Activity {
  const { ion } = activity.numbers;
  if (ion === undefined || teams.length === 0 || teams.some(({ givens }) => (givens[ion] ?? '').trim() !== '')) {
    return activity;
  }
  const asksIon = (step: Activity['steps'][number]): boolean =>
    step.kind === 'calculated' && Object.values(step.takes).some((from) => 'given' in from && from.given === ion);
  return { ...activity, steps: activity.steps.filter((step) => !asksIon(step)) };
}
