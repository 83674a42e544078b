import type { LessonsView, LessonView } from '../../desk/views.ts';
import { checkbox } from '../page/checkbox.ts';
import { element } from '../page/element.ts';
import { texts } from '../texts.ts';
import type { PlanEditor } from './planEditor.ts';

/** The view of a lesson that does not stand yet: it begins as the last one was, with other numbers. */
export const nextLessonView = (lesson: LessonView): LessonView => ({
  ...lesson,
  built: false,
  problems: [],
  setup: { ...lesson.setup, settings: { ...lesson.setup.settings, seed: seedAfter(lesson.setup.settings.seed) } },
});

const seedAfter = (seed: string): string => String((Number(seed) % 999_999_999) + 1);

/** Whom the next lesson is for, whether numbers change, and whether people are taken out of the one before. */
export function nextPart(
  editor: PlanEditor,
  { classes, seed }: { readonly classes: LessonsView['classes'] /** Of the last lesson. */; readonly seed: string },
): { readonly root: HTMLElement; readonly takesPeople: () => boolean } {
  const { next } = texts;
  const wanted = new Set(editor.draft.classes.map(({ name }) => name));
  const none = element('p', { class: 'field-problem', role: 'status' });
  const count = () => classes.filter(({ name }) => wanted.has(name)).reduce((sum, { people: cells }) => sum + cells, 0);
  const people = checkbox({ id: 'next-people', label: next.people(count()), hint: next.peopleHint, checked: false });
  const peopleLabel = people.root.querySelector('label');
  const tell = () => {
    editor.put({
      classes: classes
        .filter(({ name }) => wanted.has(name))
        .map(({ name, teams }) => ({ name, teams: teams.join('\n') })),
    });
    none.textContent = wanted.size === 0 ? next.noClass : '';
    if (peopleLabel) peopleLabel.textContent = next.people(count());
    people.root.hidden = count() === 0;
  };
  people.root.hidden = count() === 0;
  const ticks = classes.map(({ name, teams }, index) => {
    const tick = checkbox({
      id: `next-class-${index}`,
      label: name,
      hint: next.teams(teams.length),
      checked: wanted.has(name),
    });
    tick.control.addEventListener('change', () => {
      if (tick.control.checked) wanted.add(name);
      else wanted.delete(name);
      tell();
    });
    return tick.root;
  });
  const numbers = checkbox({
    id: 'next-numbers',
    label: next.numbers,
    hint: next.numbersHint,
    checked: editor.draft.settings.seed !== seed,
  });
  numbers.control.addEventListener('change', () => {
    editor.putSetting('seed', numbers.control.checked ? seedAfter(seed) : seed);
  });
  return {
    root: element(
      'section',
      {},
      element('fieldset', {}, element('legend', {}, next.forClasses), ...ticks, none),
      element('p', { class: 'hint' }, next.teamsGoAlong),
      numbers.root,
      people.root,
    ),
    takesPeople: () => people.control.checked,
  };
}
