import { judgeTeam } from '../../src/lab/judging/judgeTeam.ts';
import { activityById } from '../../src/lab/lesson/activities.ts';
import { firstTeamGivens } from './firstTeam.ts';

interface Around {
  readonly givens?: Readonly<Record<string, string>>;
  readonly settings?: readonly (readonly [string, string])[];
}

/** Rows of an activity by step, with the numbers that a plan gives a team by default or with those given. */
export function rowsOf(
  id: string,
  entries: Readonly<Record<string, string>>,
  { givens = {}, settings = [] }: Around = {},
): Readonly<Record<string, ReturnType<typeof judgeTeam>[number] | undefined>> {
  const activity = activityById(id, { fromRealStock: settings.some(([, value]) => value === 'real stock') });
  if (activity === undefined) throw new Error(`There is no ${id}.`);
  const all = { ...firstTeamGivens(activity), ...givens };
  const steps = activity.steps.map((step) => step.id);
  const rows = judgeTeam({
    givenNames: Object.keys(all),
    givenValues: Object.values(all),
    settings: [['activity', id], ...settings],
    steps,
    entries: steps.map((step) => entries[step] ?? ''),
  });
  return Object.fromEntries(steps.map((step, at) => [step, rows[at]]));
}
