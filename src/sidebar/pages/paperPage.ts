import type { PaperView } from '../../desk/views.ts';
import { askDesk } from '../askDesk.ts';
import { choice } from '../page/choice.ts';
import { element } from '../page/element.ts';
import { field } from '../page/field.ts';
import { texts } from '../texts.ts';
import { checkRule } from './checkRule.ts';
import type { OpenedPage } from './openedPage.ts';
import { readingPage } from './readingPage.ts';

type Team = PaperView['teams'][number];

/** Below so many rows with a check figure its rule is longer than what it is good for. */
const fewestFigures = 3;

/** A table for a team without a device: its own numbers, room to write, and a figure to check each result by. */
export const paperPage = (): OpenedPage =>
  readingPage({
    title: texts.pages.paper.title,
    className: 'paper-page',
    read: () => askDesk('readPaper'),
    draw: drawn,
  });

function drawn(view: PaperView): readonly HTMLElement[] {
  const words = texts.pages.paper;
  const which = choice(
    [
      { value: '', label: words.all },
      ...view.teams.map(({ className, team, key }) => ({ value: key, label: `${className} · ${team}` })),
    ],
    view.teams[0]?.key ?? '',
  );
  const sheets = element('div', {});
  const draw = () => {
    const chosen = view.teams.filter(({ key }) => which.value === '' || key === which.value);
    sheets.replaceChildren(...chosen.map((team) => teamSheet(team, view)));
  };
  which.addEventListener('change', draw);
  draw();
  return [
    element(
      'div',
      { class: 'not-on-paper' },
      element('p', { class: 'hint' }, words.about),
      field({ id: 'paper-team', label: words.which, control: which }).root,
    ),
    sheets,
  ];
}

function teamSheet({ className, team, steps }: Team, { activity, aim, date, decimalMark }: PaperView): HTMLElement {
  const words = texts.pages.paper;
  const withFigures = steps.filter(({ checkFigures }) => checkFigures.length > 0).length >= fewestFigures;
  const headings = withFigures ? words.headings : words.headings.slice(0, -1);
  return element(
    'section',
    { class: 'paper-sheet' },
    element('h2', {}, `${className} · ${team}`),
    element('p', {}, `${activity} · ${date}`),
    element('p', {}, aim),
    withFigures && checkRule(decimalMark),
    element(
      'table',
      { class: 'paper-table' },
      element('thead', {}, element('tr', {}, ...headings.map((heading) => element('th', { scope: 'col' }, heading)))),
      element(
        'tbody',
        {},
        ...steps.map((step) =>
          element(
            'tr',
            {},
            element(
              'th',
              { scope: 'row' },
              element('b', {}, step.title),
              element('p', {}, step.shown),
              !withFigures && element('p', { class: 'self-check' }, withoutFigure(step)),
            ),
            element('td', { class: 'room' }, element('span', { class: 'spoken' }, words.write)),
            element('td', {}, step.unit),
            withFigures && element('td', {}, selfCheck(step)),
          ),
        ),
      ),
    ),
    element('p', {}, words.doneCount(steps.filter(({ kind }) => kind !== 'told').length)),
  );
}

type PaperStep = Team['steps'][number];

const selfCheck = (step: PaperStep): string =>
  step.checkFigures.length > 0 ? texts.pages.paper.figures(step.checkFigures.map(String)) : withoutFigure(step);

function withoutFigure({ checkFigures, kind }: PaperStep): string {
  const { otherwise } = texts.pages.paper;
  return checkFigures.length > 0 ? otherwise.figure : (otherwise[kind] ?? otherwise.calculated);
}
