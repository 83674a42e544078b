import { element } from '../page/element.ts';
import type { RowState } from './rowState.ts';

/** Sign and word on the state's own tint. The sign is hidden from screen readers: the word says it. */
export const stateBadge = ({ name, sign, word }: RowState): HTMLElement =>
  element(
    'span',
    { class: `state ${name.replace(/ /g, '-')}` },
    element('span', { class: 'sign', 'aria-hidden': 'true' }, sign),
    word,
  );
