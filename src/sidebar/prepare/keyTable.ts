import type { KeyView } from '../../desk/views.ts';
import { element } from '../page/element.ts';
import { texts } from '../texts.ts';

type Line = KeyView['teams'][number]['lines'][number];

/** An answer with its unit; nothing in it may break over a line. */
export const answerWords = ({ answer, unit }: Pick<Line, 'answer' | 'unit'>): string =>
  answer === '' ? '–' : `${answer} ${unit}`.trim();

/** One team's answers as a table that can be read row by row. */
export const keyTable = (team: KeyView['teams'][number]): HTMLElement =>
  element(
    'table',
    { class: 'key-table' },
    element('caption', {}, `${team.className} · ${team.team}`),
    element(
      'thead',
      {},
      element(
        'tr',
        {},
        ...texts.prepare.keyHeadings.slice(0, 2).map((words) => element('th', { scope: 'col' }, words)),
      ),
    ),
    element(
      'tbody',
      {},
      ...team.lines.map((line) =>
        element(
          'tr',
          {},
          element('th', { scope: 'row' }, line.title, line.note !== '' && element('p', { class: 'hint' }, line.note)),
          element('td', { class: 'answer' }, answerWords(line)),
        ),
      ),
    ),
  );
