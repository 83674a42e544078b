import type { KeyView } from '../../desk/views.ts';
import { element } from '../page/element.ts';
import { texts } from '../texts.ts';

/** One team's answers as a table that can be read row by row. */
export const keyTable = (team: KeyView['teams'][number]): HTMLElement =>
  element(
    'table',
    { class: 'key-table' },
    element('caption', {}, `${team.className} · ${team.team}`),
    element(
      'thead',
      {},
      element('tr', {}, ...texts.prepare.keyHeadings.map((words) => element('th', { scope: 'col' }, words))),
    ),
    element(
      'tbody',
      {},
      ...team.lines.map(({ title, answer, unit, note }) =>
        element(
          'tr',
          {},
          element('th', { scope: 'row' }, title),
          element('td', {}, answer === '' ? '–' : `${answer} ${unit}`.trim()),
          element('td', {}, note),
        ),
      ),
    ),
  );
