import { readClassSheet } from '../../workbook/readClassSheet.ts';
import { absentKeys } from '../absentKeys.ts';
import { valuesOf } from '../applyWorkbook.ts';
import { planInUse } from '../build.ts';
import type { Outcome, TeamsView } from '../calls.ts';
import { dayOf } from '../dayOf.ts';
import { membersView } from '../membersView.ts';
import { done, problem } from '../outcome.ts';
import { ownSheets } from '../ownSheets.ts';
import { openSpreadsheet } from '../spreadsheet.ts';
import { hostWords } from '../words.ts';

/** Classes and teams as the Plan has them, with who is marked absent today and who is in each team. */
export function readTeams(): Outcome<TeamsView> {
  const spreadsheet = openSpreadsheet();
  const plan = planInUse(spreadsheet);
  if (plan === undefined) return problem(hostWords.teams.noLesson);
  const day = dayOf(spreadsheet, Date.now());
  const absent = absentKeys(plan, day);
  const cells = new Map<string, string>();
  for (const { sheet, tag } of ownSheets(spreadsheet)) {
    if (tag.kind !== 'class' || tag.state !== 'built') continue;
    for (const { key, who } of readClassSheet(valuesOf(sheet))?.blocks ?? []) cells.set(key, who);
  }
  return done({
    classes: plan.setup.classes.map(({ name }) => ({
      name,
      teams: plan.teams
        .filter(({ className }) => className === name)
        .map(({ team, key }) => {
          const who = cells.get(key);
          return {
            team,
            key,
            absent: absent.includes(key),
            ...(who === undefined ? {} : { members: membersView(who, day) }),
          };
        }),
    })),
    day,
  });
}
