import type { RowStateName } from '../classNow/rowState.ts';
import { stateBadge } from '../classNow/stateBadge.ts';
import { element } from '../page/element.ts';
import { focusHeading, viewHeading } from '../page/heading.ts';
import type { View } from '../page/view.ts';
import { texts } from '../texts.ts';

/** What the checks mean, what is hidden and what is not, and what to do when the host is in the way. */
export function helpView(): View {
  const { help } = texts;
  const section = (title: string, paragraphs: readonly string[]) =>
    element('section', {}, element('h2', {}, title), ...paragraphs.map((words) => element('p', {}, words)));
  const states = (Object.keys(texts.states) as RowStateName[]).flatMap((name) => [
    element('dt', {}, stateBadge({ name, ...texts.states[name] })),
    element('dd', {}, texts.states[name].about),
  ]);
  const root = element(
    'div',
    { class: 'view help' },
    viewHeading(help.title),
    element('section', {}, element('h2', {}, help.checks), element('dl', { class: 'legend' }, ...states)),
    section(help.hints, help.hintsText),
    section(help.otherwise, help.otherwiseText),
    section(help.particles, help.particlesText),
    section(help.poll, help.pollText),
    section(help.hidden, help.hiddenText),
    section(help.tries, help.triesText),
    section(help.accounts, help.accountsText),
    section(help.share, help.shareText),
    section(help.safety, help.safetyText),
  );
  return { root, enter: () => focusHeading(root), leave: () => {} };
}
