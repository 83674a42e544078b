import type { PageName } from '../../host/pages.ts';
import { askDesk } from '../askDesk.ts';
import { openedWith } from '../openedWith.ts';
import { closePanel } from '../page/closePanel.ts';
import { element } from '../page/element.ts';
import type { ViewName } from '../page/view.ts';
import { particlesPage } from '../particles/particlesPage.ts';
import { trialPage } from '../selfCheck/trialPage.ts';
import { texts } from '../texts.ts';
import { coverPage } from './coverPage.ts';
import { donePage } from './donePage.ts';
import { guidePage } from './guidePage.ts';
import { keyPage } from './keyPage.ts';
import { labelsPage } from './labelsPage.ts';
import { linksPage } from './linksPage.ts';
import type { OpenedPage } from './openedPage.ts';
import { paperPage } from './paperPage.ts';
import { periodPage } from './periodPage.ts';
import { preparationPage } from './preparationPage.ts';

/** What each page shows; `about` is what the sidebar handed over, such as the name of a class. */
const pages: Readonly<Partial<Record<PageName, (about: string) => OpenedPage>>> = {
  preparation: preparationPage,
  labels: labelsPage,
  key: keyPage,
  paper: paperPage,
  period: periodPage,
  done: donePage,
  particles: particlesPage,
  links: linksPage,
  cover: coverPage,
  guide: guidePage,
  trial: trialPage,
};

/** The view that a page was opened from; most pages to print are opened in Prepare. */
const openedIn: Readonly<Record<string, ViewName>> = { particles: 'particles', guide: 'help', links: 'sheets' };
const openedFrom = (name: string): ViewName => openedIn[name] ?? 'prepare';

/** Shows the page that the document was opened for; false where it was opened as the sidebar. */
export function startPage(): boolean {
  const { page: name = '' } = document.body.dataset;
  const { about } = openedWith();
  const make = (pages as Readonly<Record<string, ((about: string) => OpenedPage) | undefined>>)[name];
  if (make === undefined) return false;
  const page = make(about);
  const trouble = element('p', { class: 'field-problem', role: 'status' });
  const back = async () => {
    const outcome = await askDesk('openPage', 'sidebar', openedFrom(name));
    trouble.textContent = outcome.ok ? '' : outcome.problem.message;
    // The host leaves this page open over the sidebar that it has just shown.
    if (outcome.ok) closePanel();
  };
  document.body.classList.add('opened-page', page.isProjected ? 'projected' : 'on-paper');
  document.body.append(
    element(
      'div',
      { class: 'page-bar', role: 'region', 'aria-label': texts.pages.bar },
      !page.isProjected &&
        element('button', { type: 'button', class: 'act', onclick: () => window.print() }, texts.pages.print),
      element(
        'button',
        { type: 'button', class: 'act two', onclick: page.close?.run ?? (() => void back()) },
        page.close?.label ?? texts.pages.back,
      ),
      trouble,
    ),
    element('main', {}, page.root),
  );
  page.enter?.();
  return true;
}
