import type { BuildAnswers } from '../../desk/building/buildNote.ts';
import type { TeamsView } from '../../desk/views.ts';
import { askDesk } from '../askDesk.ts';
import { choice } from '../page/choice.ts';
import { element } from '../page/element.ts';
import { field } from '../page/field.ts';
import type { buildHere } from '../plan/buildHere.ts';
import { texts } from '../texts.ts';
import { addForm } from './addForm.ts';

/** A team that came late: its class and its name. */
export function lateTeam({ classes }: TeamsView, build: ReturnType<typeof buildHere>): HTMLElement {
  const pick = field({
    id: 'late-class',
    label: texts.teams.forClass,
    control: choice(
      classes.map(({ name }) => ({ value: name, label: name })),
      classes[0]?.name ?? '',
    ),
  });
  const name = field({
    id: 'late-team',
    label: texts.teams.teamName,
    control: element('input', { type: 'text', autocomplete: 'off' }),
  });
  return addForm({
    title: texts.teams.late,
    about: texts.teams.lateAbout,
    fields: [pick, name],
    button: texts.teams.addTeam,
    send: async () => {
      const join = (answers: BuildAnswers) => askDesk('addTeam', pick.control.value, name.control.value, answers);
      const problem = build.start(await join({}), join);
      name.setProblem(problem?.message ?? '');
      return problem === undefined;
    },
  });
}
