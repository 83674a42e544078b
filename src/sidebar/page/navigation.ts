import { texts } from '../texts.ts';
import { element } from './element.ts';
import type { ViewName } from './view.ts';

/** The views by the moment of the day that they are for; a moment opens with its first one. */
export const moments = {
  before: ['plan', 'prepare', 'sheets'],
  inClass: ['classNow', 'teams', 'particles'],
  after: ['poll', 'record'],
  more: ['share', 'help'],
} as const satisfies Record<string, readonly ViewName[]>;
type Moment = keyof typeof moments;

const allMoments = Object.keys(moments) as Moment[];
export const viewNames: readonly ViewName[] = allMoments.flatMap((moment): readonly ViewName[] => moments[moment]);

/** The moments of the day in one row, and below it the views of the moment that is open. */
export function navigation(show: (name: ViewName) => void): { readonly root: HTMLElement; mark(name: ViewName): void } {
  const views = element('ul', { class: 'views', 'aria-label': texts.views.label });
  const buttons = allMoments.map((moment) => ({
    moment,
    button: element('button', { type: 'button', onclick: () => show(moments[moment][0]) }, texts.moments[moment]),
  }));
  const list = (items: readonly HTMLElement[]) => items.map((item) => element('li', {}, item));
  let offered: Moment | undefined;
  const offer = (moment: Moment): void => {
    if (offered === moment) return;
    offered = moment;
    views.replaceChildren(
      ...list(
        moments[moment].map((one) =>
          element('button', { type: 'button', 'data-view': one, onclick: () => show(one) }, texts.views[one]),
        ),
      ),
    );
  };
  // Until a view is shown none is marked, so that whoever chooses one meanwhile is not taken to be there already.
  offer('before');
  return {
    root: element(
      'nav',
      { 'aria-label': texts.moments.label },
      element('ul', { class: 'moments' }, ...list(buttons.map(({ button }) => button))),
      views,
    ),
    mark(name) {
      const now = allMoments.find((moment) => (moments[moment] as readonly ViewName[]).includes(name));
      if (now === undefined) return;
      for (const { moment, button } of buttons) {
        if (moment === now) button.setAttribute('aria-current', 'true');
        else button.removeAttribute('aria-current');
      }
      offer(now);
      for (const button of views.querySelectorAll('button')) {
        if (button.dataset.view === name) button.setAttribute('aria-current', 'page');
        else button.removeAttribute('aria-current');
      }
    },
  };
}
