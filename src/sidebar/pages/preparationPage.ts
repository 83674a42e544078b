import { askDesk } from '../askDesk.ts';
import { element } from '../page/element.ts';
import { preparationList } from '../prepare/preparationList.ts';
import { texts } from '../texts.ts';
import type { OpenedPage } from './openedPage.ts';
import { readingPage } from './readingPage.ts';

/** What to prepare, on paper. */
export const preparationPage = (): OpenedPage =>
  readingPage({
    title: texts.pages.preparation,
    className: 'preparation-page',
    read: () => askDesk('readPreparation'),
    draw: (view) => [element('p', { class: 'clock' }, `${view.activity} · ${view.date}`), ...preparationList(view)],
  });
