import { absentKeys } from '../absentKeys.ts';
import { planInUse } from '../build.ts';
import { readMemo } from '../buildMemo.ts';
import type { Outcome, TeamsView } from '../calls.ts';
import { dayOf } from '../dayOf.ts';
import { done, problem } from '../outcome.ts';
import { openSpreadsheet } from '../spreadsheet.ts';
import { hostWords } from '../words.ts';

/** Classes and teams as the Plan has them, with who is marked absent today. */
export function readTeams(): Outcome<TeamsView> {
  const spreadsheet = openSpreadsheet();
  const plan = planInUse(spreadsheet, readMemo());
  if (plan === undefined) return problem(hostWords.teams.noLesson);
  const absent = absentKeys(plan, dayOf(spreadsheet, Date.now()));
  return done({
    classes: plan.setup.classes.map(({ name }) => ({
      name,
      teams: plan.teams
        .filter(({ className }) => className === name)
        .map(({ team, key }) => ({ team, key, absent: absent.includes(key) })),
    })),
  });
}
