import type { Activity } from '../lab/lesson/activity.ts';
import { activityWanted } from '../lab/lesson/activityWanted.ts';
import type { Setup, TeamPlan } from '../lab/lesson/setup.ts';

/**
 * The activity as these teams do it. Where no team is given an ion, the rows that ask about one are left out: they could
 * never be filled in, and would stand open for ever. With the rows that the lesson asks for beside those of its activity.
 */
export function activityInUse(
  activity: Activity,
  {
    setup,
    teams,
  }: { readonly setup: Pick<Setup, 'settings' | 'givens'>; readonly teams: readonly Pick<TeamPlan, 'givens'>[] },
): Activity {
  return activityWanted(withoutIon(activity, teams), { setup, teams });
}

function withoutIon(activity: Activity, teams: readonly Pick<TeamPlan, 'givens'>[]): Activity {
  const { ion } = activity.numbers;
  if (ion === undefined || teams.length === 0 || teams.some(({ givens }) => (givens[ion] ?? '').trim() !== '')) {
    return activity;
  }
  const asksIon = (step: Activity['steps'][number]): boolean =>
    step.kind === 'calculated' && Object.values(step.takes).some((from) => 'given' in from && from.given === ion);
  return { ...activity, steps: activity.steps.filter((step) => !asksIon(step)) };
}
