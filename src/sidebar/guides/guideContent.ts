import { element } from '../page/element.ts';
import type { Guide } from './guide.ts';

/** A guide under a title that stands already: its parts, each with a heading of the level that fits the page. */
export const guideContent = ({ about, parts }: Guide, level: 'h2' | 'h3'): readonly HTMLElement[] => [
  element('p', { class: 'hint' }, about),
  ...parts.map(({ title, steps, lines = [] }) =>
    element(
      'section',
      {},
      element(level, {}, title),
      ...(steps === undefined ? [] : [element('ol', {}, ...steps.map((step) => element('li', {}, step)))]),
      ...(lines.length === 0 ? [] : [element('ul', {}, ...lines.map((line) => element('li', {}, line)))]),
    ),
  ),
];
