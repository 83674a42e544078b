import type { KeyView } from '../../desk/views.ts';
import { element } from '../page/element.ts';

/** Orders of work in words, once for all teams, since each team has letters of its own. */
export const keyOrders = ({ orders }: Pick<KeyView, 'orders'>): HTMLElement =>
  element(
    'dl',
    { class: 'key-orders' },
    ...orders.flatMap(({ title, inWords }) => [element('dt', {}, title), element('dd', {}, inWords)]),
  );
