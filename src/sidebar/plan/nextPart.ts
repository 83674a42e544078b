import type { LessonsView, LessonView } from '../../desk/views.ts';
import { checkbox } from '../page/checkbox.ts';
import { element } from '../page/element.ts';
import { texts } from '../texts.ts';
import { type ClassParts, classFields } from './classFields.ts';
import { classTicks } from './classTicks.ts';
import type { ClassDraft } from './planDraft.ts';
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
  {
    classes,
    seed,
    register,
    forget,
  }: {
    readonly classes: LessonsView['classes'];
    /** Of the last lesson. */
    readonly seed: string;
  } & Pick<ClassParts, 'register' | 'forget'>,
): { readonly root: HTMLElement; readonly takesPeople: () => boolean } {
  const { next } = texts;
  const there = classes.map(({ name, teams }): ClassDraft => ({ name, teams: teams.join('\n') }));
  const isThere = (name: string): boolean => there.some((one) => one.name.toLowerCase() === name.trim().toLowerCase());
  const begun = editor.draft.classes;
  let fresh: readonly ClassDraft[] = begun.filter(({ name }) => !isThere(name));
  const wanted = new Set(begun.map(({ name }) => name));
  const none = element('p', { class: 'field-problem', role: 'status' });
  // The new ones come first: they keep their place, by which their fields are known, whatever is ticked.
  const tell = () => {
    const list = [...fresh, ...there.filter(({ name }) => wanted.has(name))];
    editor.put({ classes: list });
    none.textContent = list.length === 0 ? next.noClass : '';
  };
  const { ticks, people, takesPeople } = classTicks('next', {
    classes: classes.map((one) => ({ ...one, hint: next.teams(one.teams.length) })),
    wanted,
    changed: tell,
  });
  const newOnes = classFields({
    classes: fresh,
    besides: there,
    changed: (list) => {
      fresh = list;
      tell();
    },
    forget,
    register: (name, made, check) =>
      register(
        name,
        made,
        // One that the file has is ticked, and not begun a second time.
        name.endsWith('.name')
          ? () => (isThere(made.control.value) ? texts.plan.classNameTwice(made.control.value) : '')
          : check,
      ),
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
      ticks,
      none,
      element('p', { class: 'hint' }, next.teamsGoAlong),
      newOnes,
      numbers.root,
      people,
    ),
    takesPeople,
  };
}
