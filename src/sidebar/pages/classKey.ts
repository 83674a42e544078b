import type { KeyView } from '../../desk/views.ts';
import { element } from '../page/element.ts';
import { answerWords } from '../prepare/keyTable.ts';
import { texts } from '../texts.ts';

type Team = KeyView['teams'][number];
type Line = Team['lines'][number];

/** Teams side by side in one table; more of them begin another below. */
const teamsAcross = 8;

/**
 * The key of one class on one page: what all teams share once, their own numbers in a table of steps by teams, orders once
 * in words, and letters by team where they differ.
 */
export function classKey(
  className: string,
  { teams, orders }: { readonly teams: readonly Team[]; readonly orders: KeyView['orders'] },
): HTMLElement {
  const words = texts.pages.key;
  const lines = teams[0]?.lines ?? [];
  const answersAt = (place: number) => teams.map((team) => team.lines[place]);
  const isShared = (place: number) => new Set(answersAt(place).map((line) => line && answerWords(line))).size <= 1;
  const places = lines
    .map((_, place) => place)
    .filter((place) => (lines[place]?.answer ?? '') !== '' || !isShared(place));
  const isLetters = (place: number) => ['ordered', 'chosen'].includes(lines[place]?.kind ?? '');
  const shared = places.filter(isShared);
  const own = places.filter((place) => !isShared(place) && !isLetters(place));
  const letters = places.filter((place) => !isShared(place) && isLetters(place));
  const groups = Array.from({ length: Math.ceil(teams.length / teamsAcross) }, (_, at) =>
    teams.slice(at * teamsAcross, (at + 1) * teamsAcross),
  );
  return element(
    'section',
    { class: 'class-key' },
    element('h2', {}, className),
    shared.length > 0 &&
      table(
        words.sameForAll,
        [],
        shared.map((place) => ({ heading: lines[place]?.title ?? '', cells: [answerOf(lines[place])] })),
      ),
    ...(own.length === 0
      ? []
      : groups.map((group) =>
          table(
            '',
            ['', ...group.map(({ team }) => team)],
            own.map((place) => ({
              heading: headingOf(lines[place]),
              cells: group.map((team) => team.lines[place]?.answer ?? '–'),
            })),
          ),
        )),
    letters.length > 0 &&
      table(
        words.letters,
        [words.team, ...letters.map((place) => lines[place]?.title ?? '')],
        teams.map((team) => ({
          heading: team.team,
          cells: letters.map((place) => answerOf(team.lines[place])),
        })),
      ),
    orders.length > 0 &&
      element(
        'div',
        { class: 'key-notes' },
        element('h3', {}, words.orderInWords),
        ...orders.map(({ title, inWords }) => element('p', {}, element('b', {}, `${title}: `), inWords)),
      ),
    notesOf(lines),
  );
}

const answerOf = (line: Line | undefined): string => (line === undefined ? '–' : answerWords(line));
const headingOf = (line: Line | undefined): string =>
  line === undefined ? '' : line.unit === '' ? line.title : `${line.title}, ${line.unit}`;

interface TableRow {
  readonly heading: string;
  readonly cells: readonly string[];
}
const table = (caption: string, headings: readonly string[], rows: readonly TableRow[]): HTMLElement =>
  element(
    'table',
    { class: 'key-table' },
    caption !== '' && element('caption', {}, caption),
    headings.length > 0 &&
      element(
        'thead',
        {},
        element(
          'tr',
          {},
          ...headings.map((words) => (words === '' ? element('td', {}) : element('th', { scope: 'col' }, words))),
        ),
      ),
    element(
      'tbody',
      {},
      ...rows.map(({ heading, cells }) =>
        element(
          'tr',
          {},
          element('th', { scope: 'row' }, heading),
          ...cells.map((answer) => element('td', { class: 'answer' }, answer)),
        ),
      ),
    ),
  );

/** What to know of the answers, each remark once with the steps that it is about. */
function notesOf(lines: readonly Line[]): HTMLElement | false {
  const byNote = new Map<string, string[]>();
  for (const { note, title } of lines) if (note !== '') byNote.set(note, [...(byNote.get(note) ?? []), title]);
  if (byNote.size === 0) return false;
  return element(
    'div',
    { class: 'key-notes' },
    element('h3', {}, texts.pages.key.notes),
    ...[...byNote].map(([note, titles]) => element('p', {}, element('b', {}, `${titles.join(', ')}: `), note)),
  );
}
