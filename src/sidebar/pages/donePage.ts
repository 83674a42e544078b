import type { Outcome } from '../../desk/outcome.ts';
import type { ClassView } from '../../desk/views.ts';
import { askDesk } from '../askDesk.ts';
import { element } from '../page/element.ts';
import { tube } from '../page/tube.ts';
import { texts } from '../texts.ts';
import type { OpenedPage } from './openedPage.ts';
import { readingPage } from './readingPage.ts';

/** Steps done by team, class by class: a count, never a mark. */
export const donePage = (): OpenedPage =>
  readingPage({
    title: texts.pages.done.title,
    className: 'done-page',
    read: everyClass,
    draw: (classes) => [
      element('p', { class: 'hint' }, texts.pages.done.about),
      ...(classes.length === 0 ? [element('p', {}, texts.sheets.none)] : classes.map(classTable)),
    ],
  });

async function everyClass(): Promise<Outcome<readonly ClassView[]>> {
  const lesson = await askDesk('readLesson');
  if (!lesson.ok) return lesson;
  const classes: ClassView[] = [];
  for (const name of lesson.value.classes) {
    const one = await askDesk('readClass', name);
    if (!one.ok) return one;
    classes.push(one.value);
  }
  return { ok: true, value: classes };
}

const classTable = ({ className, teams, stepCount, clock }: ClassView): HTMLElement =>
  element(
    'table',
    { class: 'paper-table' },
    element('caption', {}, texts.pages.done.caption(className, clock)),
    element(
      'thead',
      {},
      element('tr', {}, ...texts.pages.done.headings.map((heading) => element('th', { scope: 'col' }, heading))),
    ),
    element(
      'tbody',
      {},
      ...teams
        .filter(({ practice }) => practice !== true)
        .map(({ team, done }) =>
          element(
            'tr',
            {},
            element('th', { scope: 'row' }, team),
            element('td', {}, tube({ done, steps: stepCount }), texts.classNow.ofSteps(done, stepCount)),
          ),
        ),
    ),
  );
