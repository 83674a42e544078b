import type { ClassSetup } from '../../lab/setup.ts';
import { planInUse, startBuild } from '../build.ts';
import type { BuildState, Outcome } from '../calls.ts';
import { problem } from '../outcome.ts';
import { readSetup } from '../readSetup.ts';
import { openSpreadsheet } from '../spreadsheet.ts';
import { hostWords } from '../words.ts';

/** A team that joins in mid-lesson gets a line of the Plan, a block below the others, and numbers of its own. */
export function addTeam(className: unknown, team: unknown): Outcome<BuildState> {
  return withClasses((classes) => {
    if (!classes.some(({ name }) => name === className))
      return problem({ ...hostWords.classUnknown, received: `“${String(className)}”` }, 'class');
    return {
      ok: true,
      value: classes.map(({ name, teams }) =>
        name === className ? { name, teams: [...teams, String(team ?? '')] } : { name, teams },
      ),
    };
  });
}

/** One class more: its lines of the Plan and a sheet of its own. */
export function addClass(className: unknown, teams: unknown): Outcome<BuildState> {
  return withClasses((classes) => ({
    ok: true,
    value: [
      ...classes,
      { name: String(className ?? ''), teams: Array.isArray(teams) ? teams.map((team) => String(team ?? '')) : [] },
    ],
  }));
}

/** The lesson that is there with other classes, begun to be built as from the sidebar: nobody's rows are touched. */
function withClasses(change: (classes: readonly ClassSetup[]) => Outcome<readonly ClassSetup[]>): Outcome<BuildState> {
  const plan = planInUse(openSpreadsheet());
  if (plan === undefined) return problem(hostWords.teams.noLesson);
  const classes = change(plan.setup.classes);
  if (!classes.ok) return classes;
  const setup = readSetup({ ...plan.setup, classes: classes.value });
  return setup.ok ? startBuild(setup.value, { sample: plan.invented }) : setup;
}
