import type { Outcome } from '../../desk/outcome.ts';
import { element } from '../page/element.ts';
import { viewHeading } from '../page/heading.ts';
import { problemNotice } from '../page/notice.ts';
import { waiting } from '../page/waiting.ts';
import { texts } from '../texts.ts';
import type { OpenedPage } from './openedPage.ts';

/** A page that asks the script once and draws what it says; a failure keeps a button to try again. */
export function readingPage<T>({
  title,
  className,
  read,
  draw,
}: {
  readonly title: string;
  readonly className: string;
  readonly read: () => Promise<Outcome<T>>;
  readonly draw: (value: T) => readonly HTMLElement[];
}): OpenedPage {
  const status = element('p', { class: 'waiting', role: 'status' });
  const content = element('div', {});
  async function show(): Promise<void> {
    content.replaceChildren();
    const outcome = await waiting(status, texts.pages.reading, read());
    content.replaceChildren(
      ...(outcome.ok
        ? draw(outcome.value)
        : [problemNotice(outcome.problem.message, { label: texts.tryAgain, run: () => void show() })]),
    );
  }
  return {
    root: element('div', { class: `view ${className}` }, viewHeading(title), status, content),
    enter: () => void show(),
  };
}
