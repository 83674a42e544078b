import type { Activity } from '../../src/lab/lesson/activity.ts';
import { numbersForTeams } from '../../src/lab/numbers/numbersForTeams.ts';
import { startOf } from './otherActivities.ts';

/** What a team is given where a new plan gives every team the same numbers. */
export function firstTeamGivens(activity: Activity): Readonly<Record<string, string>> {
  const numbers = numbersForTeams({ ...startOf(activity.id), ownNumbers: false });
  if (!numbers.ok) throw new Error(`${activity.id}: ${numbers.error.argument}, ${numbers.error.advice}`);
  const [team] = numbers.value.teams;
  if (team === undefined) throw new Error(`${activity.id} has no team`);
  return team.givens;
}
