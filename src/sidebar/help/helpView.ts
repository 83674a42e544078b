import { askDesk } from '../askDesk.ts';
import type { RowStateName } from '../classNow/rowState.ts';
import { stateBadge } from '../classNow/stateBadge.ts';
import { guideContent } from '../guides/guideContent.ts';
import { guideNames, guides } from '../guides/guides.ts';
import { element } from '../page/element.ts';
import { focusHeading, viewHeading } from '../page/heading.ts';
import { problemNotice } from '../page/notice.ts';
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
  const trouble = element('div', { role: 'status' });
  const toPrint = async (name: (typeof guideNames)[number]): Promise<void> => {
    trouble.replaceChildren();
    const outcome = await askDesk('openPage', 'guide', name);
    if (!outcome.ok) trouble.replaceChildren(problemNotice(outcome.problem.message));
  };
  const readings = guideNames.map((name) =>
    element(
      'details',
      { class: 'fold' },
      element('summary', {}, element('h2', {}, guides[name].title)),
      ...guideContent(guides[name], 'h3'),
      element(
        'button',
        { type: 'button', class: 'act two', onclick: () => void toPrint(name) },
        help.printGuide(guides[name].title),
      ),
    ),
  );
  const root = element(
    'div',
    { class: 'view help' },
    viewHeading(help.title),
    ...readings,
    trouble,
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
