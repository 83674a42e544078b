import { askDesk } from '../askDesk.ts';
import { element } from '../page/element.ts';
import { scanPicture } from '../sheets/scanPicture.ts';
import { texts } from '../texts.ts';
import type { OpenedPage } from './openedPage.ts';
import { readingPage } from './readingPage.ts';

/** Where students find their sheet: one class as large as the page is, to project, or all of them to print and cut. */
export function linksPage(className: string): OpenedPage {
  const { links: say } = texts.pages;
  const page = readingPage({
    title: say.title,
    className: className === '' ? 'links-page' : 'links-page one-class',
    read: () => askDesk('readSheets'),
    draw: ({ classes }) => {
      const shown = classes.filter(({ name }) => className === '' || name === className);
      return shown.length === 0
        ? [element('p', {}, texts.sheets.none)]
        : shown.map(({ name, address }) =>
            element(
              'section',
              { class: 'class-link' },
              element('h2', {}, name),
              scanPicture({ name, address }),
              element('p', {}, say.scan),
              element('p', { class: 'address' }, address),
            ),
          );
    },
  });
  return className === '' ? page : { ...page, isProjected: true };
}
