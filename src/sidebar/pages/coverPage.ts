import type { CoverClassView, CoverView } from '../../desk/views.ts';
import { decimalText } from '../../lab/judging/decimalText.ts';
import { writtenFormula } from '../../lab/particles/writtenFormula.ts';
import { preparationTexts } from '../../lab/texts/preparation.ts';
import { askDesk } from '../askDesk.ts';
import { element } from '../page/element.ts';
import { listed, texts } from '../texts.ts';
import type { OpenedPage } from './openedPage.ts';
import { readingPage } from './readingPage.ts';

/** One sheet of paper for a colleague who takes the lesson: what, where it stands, what to watch, what to write down. */
export const coverPage = (): OpenedPage =>
  readingPage({
    title: texts.pages.cover.title,
    className: 'cover-page',
    read: () => askDesk('readCover'),
    draw: drawn,
  });

/** Names of things begin in lower case elsewhere, where they stand in a list. */
const capital = (words: string): string => `${words.slice(0, 1).toUpperCase()}${words.slice(1)}`;

function drawn(view: CoverView): readonly HTMLElement[] {
  const { cover: say } = texts.pages;
  const { activity, aim, classes, cautions, safety, ready, waste, decimalMark, date, clock } = view;
  const asked = ready.map(({ what, amount, unit }) => {
    const name = writtenFormula(what);
    if (amount === null) return name;
    const number = decimalText(amount, decimalMark);
    return say.amount(name, unit === preparationTexts.piece(amount) ? number : `${number}\u00a0${unit}`);
  });
  return [
    part(
      say.what,
      element('p', {}, element('b', {}, activity), `. ${aim}`),
      element('p', {}, say.forWhom(classes.map(({ className, teams }) => say.classTeams(className, teams)))),
    ),
    part(say.run, element('ul', {}, ...say.runText.map((words) => element('li', {}, words)))),
    part(say.where, element('p', {}, `${say.at(date, clock)}. ${say.openNote}`), standing(classes)),
    part(
      say.cautions,
      ...cautions.map(({ head, advice }) =>
        element('p', {}, element('b', {}, capital(writtenFormula(head))), ` ${advice.join(' ')}`),
      ),
      element('p', {}, safety === '' ? say.safety : safety),
    ),
    part(
      say.waste,
      ...waste.map(({ what, note }) =>
        element('p', {}, element('b', {}, capital(writtenFormula(what))), `. ${writtenFormula(note)}`),
      ),
    ),
    part(say.ready, element('p', {}, `${say.withSpare} ${listed(asked)}`)),
    part(
      say.write,
      table(
        say.writeHeadings,
        classes.map(({ className }) => [[className], [], [], []]),
        'room-rows',
      ),
    ),
  ];
}

const part = (title: string, ...content: readonly HTMLElement[]): HTMLElement =>
  element('section', {}, element('h2', {}, title), ...content);

type Cell = readonly (string | Node)[];

function standing(classes: readonly CoverClassView[]): HTMLElement {
  const { cover: say } = texts.pages;
  const talk = ({ talkFirst, talkMore }: CoverClassView): Cell =>
    talkFirst.length === 0
      ? [say.nobody]
      : [
          ...talkFirst.flatMap(({ team, reason }) => [element('b', {}, team), ` ${reason} `]),
          talkMore === 0 ? '' : say.more(talkMore),
        ];
  return table(
    say.headings,
    classes.map((one): readonly Cell[] => [
      [one.className],
      [say.rows(one.rowsDone, one.rows)],
      [one.open.length === 0 ? say.noneOpen : one.open.map(({ title, teams }) => say.open(title, teams)).join(', ')],
      talk(one),
    ]),
  );
}

const table = (headings: readonly string[], rows: readonly (readonly Cell[])[], className = ''): HTMLElement =>
  element(
    'table',
    { class: `paper-table ${className}` },
    element('thead', {}, element('tr', {}, ...headings.map((heading) => element('th', { scope: 'col' }, heading)))),
    element(
      'tbody',
      {},
      ...rows.map(([first = [], ...others]) =>
        element(
          'tr',
          {},
          element('th', { scope: 'row' }, ...first),
          ...others.map((cell) => element('td', {}, ...cell)),
        ),
      ),
    ),
  );
