import type { ActivityView, DraftView } from '../../desk/views.ts';
import { element } from '../page/element.ts';
import { texts } from '../texts.ts';

/** The teams' numbers before anything is written: what all share once, then a short list for each team. */
export function numbersPreview(draft: DraftView, activity: ActivityView): readonly HTMLElement[] {
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
    ...(shared.length > 0 ? [element('h3', {}, texts.plan.previewSame), pairs(shared, first)] : []),
    ...(own.length > 0
      ? classNames.flatMap((className) => [
          element('h3', {}, className),
          element(
            'ul',
            { class: 'team-numbers' },
            ...draft.teams
              .filter((team) => team.className === className)
              .map(({ team, givens }) => element('li', {}, element('b', {}, team), pairs(own, givens))),
          ),
        ])
      : []),
  ];
}
