import type { BuildAnswers } from '../../desk/building/buildNote.ts';
import type { TeamsView } from '../../desk/views.ts';
import { askDesk } from '../askDesk.ts';
import { element } from '../page/element.ts';
import { field } from '../page/field.ts';
import type { buildHere } from '../plan/buildHere.ts';
import { namesForCount, teamNames, teamsToStart } from '../plan/teamNames.ts';
import { texts } from '../texts.ts';
import { addForm } from './addForm.ts';

/** One class more: its name and its teams, which begin with names that no other class has. */
export function newClass({ classes }: TeamsView, build: ReturnType<typeof buildHere>): HTMLElement {
  const name = field({
    id: 'new-class',
    label: texts.plan.className,
    control: element('input', { type: 'text', autocomplete: 'off' }),
  });
  const taken = classes.flatMap(({ teams }) => teams.map(({ team }) => team));
  const names = namesForCount(teamsToStart, { taken }).join('\n');
  const teams = field({
    id: 'new-class-teams',
    label: texts.plan.teamNames,
    control: element('textarea', { rows: teamsToStart }, names),
  });
  return addForm({
    title: texts.teams.newClass,
    about: texts.teams.newClassAbout,
    fields: [name, teams],
    button: texts.teams.addClass,
    send: async () => {
      const lines = teamNames(teams.control.value);
      const join = (answers: BuildAnswers) => askDesk('addClass', name.control.value, lines, answers);
      const problem = build.start(await join({}), join);
      name.setProblem(problem?.message ?? '');
      return problem === undefined;
    },
  });
}
