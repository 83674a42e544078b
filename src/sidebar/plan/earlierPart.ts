import type { LessonLine, LessonsView } from '../../desk/views.ts';
import { deskWords } from '../../desk/words.ts';
import { element } from '../page/element.ts';
import { texts } from '../texts.ts';
import { classTicks } from './classTicks.ts';
import { lessonWords } from './lessonWords.ts';

type Open = (id: string, classes: readonly string[], wish: { readonly takesPeople: boolean }) => void;

/** Lessons that were put away, each with one press that opens it again for all its classes or for those that are ticked. */
export const earlierPart = (
  { away, classes }: LessonsView,
  { open }: { readonly open: Open },
): readonly HTMLElement[] => [
  element('p', { class: 'hint' }, away.length === 0 ? texts.next.none : texts.next.earlierAbout),
  ...away.map((line, index) => earlierLesson(line, { id: `earlier-${index}`, classes, open })),
];

function earlierLesson(
  line: LessonLine,
  { id, classes, open }: { readonly id: string; readonly classes: LessonsView['classes']; readonly open: Open },
): HTMLElement {
  const { next } = texts;
  const { cleared = [] } = line;
  const wanted = new Set(line.classes);
  const names = () => line.classes.filter((name) => wanted.has(name));
  const button = element('button', { type: 'button', class: 'act two' });
  const tell = () => {
    const some = names();
    button.textContent = some.length === 0 ? next.noClass : next.open(some);
    button.disabled = some.length === 0;
  };
  const { ticks, people, takesPeople } = classTicks(id, {
    classes: line.classes.map((name) => ({ name, people: classes.find((one) => one.name === name)?.people ?? 0 })),
    wanted,
    changed: tell,
  });
  button.onclick = () => open(line.id, names(), { takesPeople: takesPeople() });
  tell();
  return element(
    'section',
    { class: 'notice' },
    element('p', {}, `${lessonWords(line)}: ${next.count(line.entries)}`),
    cleared.length > 0 && element('p', { class: 'hint' }, deskWords.cleared(cleared)),
    // One class needs no tick.
    line.classes.length > 1 && ticks,
    people,
    button,
  );
}
