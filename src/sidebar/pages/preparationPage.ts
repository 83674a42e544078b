import { askDesk } from '../askDesk.ts';
import { element } from '../page/element.ts';
import { preparationList } from '../prepare/preparationList.ts';
import { texts } from '../texts.ts';
import type { OpenedPage } from './openedPage.ts';
import { readingPage } from './readingPage.ts';

/** What to prepare as one table with boxes to tick, for whoever sets it out; on screen as on paper. */
export const preparationPage = (): OpenedPage =>
  readingPage({
    title: texts.pages.preparation,
    className: 'preparation-page',
    read: () => askDesk('readPreparation'),
    draw: (view) => [element('p', { class: 'clock' }, view.date), ...preparationList(view, { forPaper: true })],
  });
