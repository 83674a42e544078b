import { askDesk } from '../askDesk.ts';
import { choice } from '../page/choice.ts';
import { element } from '../page/element.ts';
import { field } from '../page/field.ts';
import type { Page } from '../page/page.ts';
import { texts } from '../texts.ts';
import { lessonWords } from './lessonWords.ts';

/** Above the plan of a lesson: which one it is where classes are at several, and the ways to the next and to earlier ones. */
export function lessonBar(
  { lesson, refresh }: Page,
  { next, earlier, redraw }: { readonly next: () => void; readonly earlier: () => void; readonly redraw: () => void },
): HTMLElement {
  const { lessons, awayCount } = lesson;
  const button = (label: string, onclick: () => void) =>
    element('button', { type: 'button', class: 'act two', onclick }, label);
  const control = choice(
    lessons.map((line) => ({ value: line.id, label: lessonWords(line) })),
    lesson.lesson,
  );
  control.addEventListener('change', () => {
    void askDesk('chooseLesson', control.value).then(refresh).then(redraw);
  });
  return element(
    'div',
    { class: 'lesson-bar' },
    lessons.length > 1 && field({ id: 'lesson', label: texts.next.lesson, control }).root,
    element(
      'div',
      { class: 'actions' },
      button(texts.next.button, next),
      awayCount > 0 && button(texts.next.earlier, earlier),
    ),
  );
}
