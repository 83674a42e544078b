import { closePanel } from '../page/closePanel.ts';
import { element } from '../page/element.ts';
import { viewHeading } from '../page/heading.ts';
import type { OpenedPage } from '../pages/openedPage.ts';
import { texts } from '../texts.ts';

/** A page that is opened over the sidebar, to see whether that goes on underneath. */
export const trialPage = (): OpenedPage => {
  const say = texts.selfCheck.page;
  return {
    root: element('div', {}, viewHeading(say.title), ...say.words.map((words) => element('p', {}, words))),
    close: { label: say.close, run: closePanel },
  };
};
