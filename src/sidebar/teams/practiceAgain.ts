import type { BuildAnswers } from '../../desk/building/buildNote.ts';
import type { TeamsView } from '../../desk/views.ts';
import { askDesk } from '../askDesk.ts';
import { choice } from '../page/choice.ts';
import { element } from '../page/element.ts';
import { field } from '../page/field.ts';
import type { buildHere } from '../plan/buildHere.ts';
import { texts } from '../texts.ts';
import { addForm } from './addForm.ts';

/** Another go at the lesson for somebody of a class: the class is all that there is to choose. */
export function practiceAgain({ classes }: TeamsView, build: ReturnType<typeof buildHere>): HTMLElement {
  const words = texts.teams.practice;
  const pick = field({
    id: 'practice-class',
    label: texts.teams.forClass,
    control: choice(
      classes.map(({ name }) => ({ value: name, label: name })),
      classes[0]?.name ?? '',
    ),
  });
  const there = element('p', { class: 'hint', role: 'status' });
  const tell = () => {
    const names = classes.find(({ name }) => name === pick.control.value)?.practice ?? [];
    there.textContent = names.length === 0 ? '' : words.there(names);
  };
  pick.control.addEventListener('change', tell);
  tell();
  pick.root.append(there);
  return addForm({
    title: words.title,
    about: words.about,
    fields: [pick],
    button: words.button,
    send: async () => {
      const add = (answers: BuildAnswers) => askDesk('addPractice', pick.control.value, answers);
      const problem = build.start(await add({}), add);
      pick.setProblem(problem?.message ?? '');
      return problem === undefined;
    },
  });
}
