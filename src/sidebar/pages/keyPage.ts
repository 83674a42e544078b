import { askDesk } from '../askDesk.ts';
import { element } from '../page/element.ts';
import { keyOrders } from '../prepare/keyOrders.ts';
import { keyTable } from '../prepare/keyTable.ts';
import { texts } from '../texts.ts';
import type { OpenedPage } from './openedPage.ts';
import { readingPage } from './readingPage.ts';

/** The key of every team, on paper; it comes from the script and stands in no sheet. */
export const keyPage = (): OpenedPage =>
  readingPage({
    title: texts.pages.key.title,
    className: 'key-page',
    read: () => askDesk('readKey'),
    draw: ({ teams, activity, date, orders }) => [
      element('p', { class: 'notice' }, texts.pages.key.warning),
      element('p', { class: 'clock' }, `${activity} · ${date}`),
      keyOrders({ orders }),
      ...teams.map(keyTable),
    ],
  });
