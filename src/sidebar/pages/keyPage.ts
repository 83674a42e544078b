import { askDesk } from '../askDesk.ts';
import { element } from '../page/element.ts';
import { texts } from '../texts.ts';
import { classKey } from './classKey.ts';
import type { OpenedPage } from './openedPage.ts';
import { readingPage } from './readingPage.ts';

/** The key on paper, one page for each class; it comes from the script and is in no sheet. */
export const keyPage = (): OpenedPage =>
  readingPage({
    title: texts.pages.key.title,
    className: 'key-page',
    read: () => askDesk('readKey'),
    draw: ({ teams, orders, activity, date }) => [
      element('p', { class: 'notice' }, texts.pages.key.warning),
      element('p', { class: 'clock' }, `${activity} · ${date}`),
      ...[...new Set(teams.map(({ className }) => className))].map((className) =>
        classKey(className, { teams: teams.filter((team) => team.className === className), orders }),
      ),
    ],
  });
