import type { ActivityView, DraftView } from '../../desk/views.ts';
import { activityById } from '../../lab/lesson/activities.ts';
import { decimalMarkOf } from '../../lab/lesson/lessonSettings.ts';
import type { Setup } from '../../lab/lesson/setup.ts';
import { materialBalance } from '../../lab/preparation/materialBalance.ts';
import { element } from '../page/element.ts';
import { texts } from '../texts.ts';
import { materialWords } from './materialWords.ts';

/**
 * The teams' numbers before anything is written: what they cost, what all share once, then a short list for each team.
 */
export function numbersPreview(
  draft: DraftView,
  { activity, setup }: { readonly activity: ActivityView; readonly setup: Setup },
): readonly HTMLElement[] {
  const unitOf = (name: string) => activity.givens.find((given) => given.name === name)?.unit ?? '';
  const filled = draft.givenNames.filter((name) => draft.teams.some(({ givens }) => (givens[name] ?? '') !== ''));
  const first = draft.teams[0]?.givens ?? {};
  const shared = filled.filter((name) =>
    draft.teams.every(({ givens }) => (givens[name] ?? '') === (first[name] ?? '')),
  );
  const own = filled.filter((name) => !shared.includes(name));
  const pairs = (names: readonly string[], givens: Readonly<Record<string, string>>) =>
    element(
      'dl',
      { class: 'givens' },
      ...names.map((name) =>
        element('div', {}, element('dt', {}, name), element('dd', {}, `${givens[name] ?? ''} ${unitOf(name)}`.trim())),
      ),
    );
  const classNames = [...new Set(draft.teams.map(({ className }) => className))];
  return [
    ...(draft.remarks.length > 0
      ? [
          element('h3', {}, texts.plan.remarks),
          element('ul', { class: 'remarks' }, ...draft.remarks.map((remark) => element('li', {}, remark))),
        ]
      : []),
    ...materialsPreview(draft.teams, setup),
    ...(shared.length > 0 ? [element('h3', {}, texts.plan.previewSame), pairs(shared, first)] : []),
    ...(own.length > 0
      ? classNames.map((className) =>
          teamTable(
            className,
            own.map((name) => ({ name, unit: unitOf(name) })),
            draft.teams.filter((team) => team.className === className),
          ),
        )
      : []),
  ];
}

/** The numbers of a class's teams, a row for each. */
const teamTable = (
  className: string,
  columns: readonly { readonly name: string; readonly unit: string }[],
  teams: DraftView['teams'],
): HTMLElement =>
  element(
    'div',
    // Wider than a narrow sidebar where an activity has many numbers: then it moves in itself.
    { class: 'wide', role: 'region', tabindex: 0, 'aria-label': className },
    element(
      'table',
      { class: 'numbers-table' },
      element('caption', {}, className),
      element(
        'thead',
        {},
        element(
          'tr',
          {},
          element('th', { scope: 'col' }, texts.plan.previewTeam),
          ...columns.map(({ name, unit }) =>
            element('th', { scope: 'col', class: 'number' }, unit === '' ? name : `${name}, ${unit}`),
          ),
        ),
      ),
      element(
        'tbody',
        {},
        ...teams.map(({ team, givens }) =>
          element(
            'tr',
            {},
            element('th', { scope: 'row' }, team),
            ...columns.map(({ name }) => element('td', { class: 'number' }, givens[name] ?? '')),
          ),
        ),
      ),
    ),
  );

/** What the plan takes, makes and throws away; nothing where its activity is not known here. */
function materialsPreview(teams: DraftView['teams'], setup: Setup): readonly HTMLElement[] {
  const { settings, shelf } = setup;
  const activity = activityById(setup.activity);
  if (activity === undefined) return [];
  const balance = materialBalance({ activity, teams, shelf, settings });
  const { lines, remarks } = materialWords(balance, decimalMarkOf(settings));
  if (lines.length === 0) return [];
  return [
    element('h3', {}, texts.plan.materials.heading),
    element(
      'dl',
      { class: 'givens materials' },
      ...lines.map(({ what, amount }) => element('div', {}, element('dt', {}, what), element('dd', {}, amount))),
    ),
    ...(remarks.length > 0
      ? [element('ul', { class: 'remarks' }, ...remarks.map((remark) => element('li', {}, remark)))]
      : []),
  ];
}
