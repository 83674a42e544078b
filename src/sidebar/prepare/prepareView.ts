import type { KeyView } from '../../desk/views.ts';
import type { PageName } from '../../host/pages.ts';
import { askAfresh, askDesk, isStale } from '../askDesk.ts';
import { afterPress } from '../page/afterPress.ts';
import { choice } from '../page/choice.ts';
import { element } from '../page/element.ts';
import { field } from '../page/field.ts';
import { focusHeading, viewHeading } from '../page/heading.ts';
import { makeLookAgain } from '../page/makeLookAgain.ts';
import { problemNotice } from '../page/notice.ts';
import type { View } from '../page/view.ts';
import { waiting } from '../page/waiting.ts';
import { texts } from '../texts.ts';
import { keyOrders } from './keyOrders.ts';
import { keyTable } from './keyTable.ts';
import { preparationList } from './preparationList.ts';

const printed: readonly (keyof typeof texts.prepare.print & PageName)[] = [
  'preparation',
  'labels',
  'paper',
  'period',
  'done',
  'cover',
  'key',
];

/** What to weigh out, pour, lay out and print for the whole day, and the key: for the teacher's eyes. */
export function prepareView(): View {
  const { prepare } = texts;
  const status = element('p', { class: 'waiting', role: 'status' });
  const content = element('div', {});
  const keyPlace = element('div', {});
  const said = element('p', { class: 'said', role: 'status' });

  const openPage = async (name: PageName) => {
    said.textContent = '';
    const outcome = await askDesk('openPage', name);
    said.textContent = outcome.ok ? '' : outcome.problem.message;
  };
  const writeSheet = async () => {
    const outcome = await waiting(status, prepare.writing, askDesk('writePrepareSheet'));
    said.textContent = outcome.ok ? prepare.written : outcome.problem.message;
  };

  let shown = '';
  /**
   * Looks at the Plan once, in the sheet or in what was read of it. A quiet look that fails leaves what is shown: the next
   * one follows by itself.
   */
  async function read(quiet: boolean, ask: typeof askAfresh = askAfresh): Promise<void> {
    const answer = ask('readPreparation');
    const outcome = await (quiet ? answer : waiting(status, prepare.reading, answer));
    if (!outcome.ok) {
      if (quiet && shown !== '') return;
      shown = '';
      content.replaceChildren(
        problemNotice(outcome.problem.message, { label: texts.tryAgain, run: () => void read(false) }),
      );
      return;
    }
    const { sheet, ...day } = outcome.value;
    const text = JSON.stringify(day);
    if (text !== shown) afterPress(() => content.replaceChildren(...preparationList(outcome.value)));
    shown = text;
    if (sheet === 'out of date') await bringUp();
  }
  /** Nothing but the sheet’s own list is written, and what is in view stays. */
  async function bringUp(): Promise<void> {
    const outcome = await askDesk('writePrepareSheet', true);
    said.textContent = outcome.ok ? prepare.broughtUp : prepare.notBroughtUp(outcome.problem.message);
  }
  const again = makeLookAgain(() => read(true));
  async function come(): Promise<void> {
    await read(false, askDesk);
    if (root.isConnected && isStale('readPreparation')) await read(true);
  }

  function keyClosed(): void {
    keyPlace.replaceChildren(
      element('p', { class: 'hint' }, prepare.keyAbout),
      element('button', { type: 'button', class: 'act two', onclick: () => void showKey() }, prepare.keyShow),
    );
  }
  async function showKey(): Promise<void> {
    const outcome = await waiting(status, prepare.keyReading, askDesk('readKey'));
    if (!outcome.ok) {
      keyPlace.replaceChildren(
        problemNotice(outcome.problem.message, { label: texts.tryAgain, run: () => void showKey() }),
      );
      return;
    }
    keyPlace.replaceChildren(...keyOpen(outcome.value));
    keyPlace.querySelector('select')?.focus();
  }
  function keyOpen({ teams, orders }: KeyView): readonly HTMLElement[] {
    const table = element('div', {});
    const select = choice(
      teams.map(({ className, team, key }) => ({ value: key, label: `${className} · ${team}` })),
      teams[0]?.key ?? '',
    );
    const draw = () => {
      const team = teams.find(({ key }) => key === select.value);
      table.replaceChildren(...(team ? [keyTable(team)] : []));
    };
    select.addEventListener('change', draw);
    draw();
    const ask = element('div', {});
    const offer = () =>
      ask.replaceChildren(
        element('button', { type: 'button', class: 'act quiet', onclick: () => warn() }, prepare.keyToSheet),
      );
    const warn = () => {
      ask.replaceChildren(
        element(
          'div',
          { class: 'notice problem', role: 'alert' },
          element('p', {}, prepare.keyWarning),
          element('button', { type: 'button', class: 'act two', onclick: () => void write() }, prepare.keyYes),
          element('button', { type: 'button', class: 'act two', onclick: () => offer() }, prepare.keyNo),
        ),
      );
      ask.querySelectorAll('button')[1]?.focus();
    };
    const write = async () => {
      const outcome = await waiting(status, prepare.keyWriting, askDesk('writeKeySheet', true));
      said.textContent = outcome.ok ? prepare.keyWritten(outcome.value.name) : outcome.problem.message;
      offer();
      ask.querySelector('button')?.focus();
    };
    offer();
    return [
      field({ id: 'key-team', label: prepare.keyTeam, control: select }).root,
      table,
      keyOrders({ orders }),
      ask,
      element('button', { type: 'button', class: 'act quiet', onclick: () => keyClosed() }, prepare.keyHide),
    ];
  }

  const root = element(
    'div',
    { class: 'view prepare' },
    viewHeading(prepare.title),
    element('p', { class: 'hint' }, `${prepare.about} ${prepare.every}`),
    status,
    said,
    element(
      'section',
      {},
      element('h2', {}, prepare.printTitle),
      element(
        'ul',
        { class: 'press-list' },
        ...printed.map((name) =>
          element(
            'li',
            {},
            element(
              'button',
              { type: 'button', class: 'act quiet', onclick: () => void openPage(name) },
              prepare.print[name],
            ),
          ),
        ),
      ),
    ),
    content,
    element('section', {}, element('h2', {}, prepare.keyTitle), keyPlace),
    element(
      'section',
      {},
      element('h2', {}, prepare.sheetTitle),
      element('p', { class: 'hint', id: 'prepare-sheet-about' }, prepare.sheetAbout),
      element(
        'button',
        {
          type: 'button',
          class: 'act two',
          'aria-describedby': 'prepare-sheet-about',
          onclick: () => void writeSheet(),
        },
        prepare.sheetWrite,
      ),
    ),
  );
  return {
    root,
    enter() {
      said.textContent = '';
      keyClosed();
      focusHeading(root);
      void come();
      again.start();
    },
    leave() {
      again.stop();
      // The key does not stay on the screen of somebody who has gone elsewhere.
      keyClosed();
    },
  };
}
