import type { ClassView, TeamView } from '../../desk/views.ts';
import { askAfresh, askDesk, isStale } from '../askDesk.ts';
import { afterPress } from '../page/afterPress.ts';
import { choice } from '../page/choice.ts';
import { element } from '../page/element.ts';
import { field } from '../page/field.ts';
import { focusHeading, viewHeading } from '../page/heading.ts';
import { makeLookAgain } from '../page/makeLookAgain.ts';
import { problemNotice } from '../page/notice.ts';
import type { Page } from '../page/page.ts';
import type { View } from '../page/view.ts';
import { waiting } from '../page/waiting.ts';
import { texts } from '../texts.ts';
import { classSections } from './classSections.ts';
import { teamItem } from './teamItem.ts';

/** How the teams get on, for the teacher's eyes: whom to talk to, progress, one sentence for the class. */
export function classNowView(page: Page): View {
  const root = element('div', { class: 'view class-now' });
  const pick = element('div', {});
  const clock = element('p', { class: 'clock' });
  const trouble = element('div', {});
  const status = element('p', { class: 'waiting', role: 'status' });
  const content = element('div', {});
  const said = element('p', { class: 'said', role: 'status' });
  const bell = element(
    'button',
    { type: 'button', class: 'act two', onclick: () => void ring() },
    texts.classNow.close,
  );
  const bellAbout = element('p', { class: 'hint', id: 'close-about' }, texts.classNow.closeAbout);
  bell.setAttribute('aria-describedby', 'close-about');
  const open = new Set<string>();
  let className = '';
  /** The class whose sheet was in front when somebody last came here: only another one in front is a wish to see that. */
  let front: string | undefined;
  /** How often somebody has chosen a class by hand: that counts more than which sheet is in front. */
  let picks = 0;
  let shown: ClassView | undefined;
  let shownText = '';
  let looking = false;
  let here = false;

  /**
   * Looks at the class once, in the sheet or in what was read of it. A quiet look leaves what is shown alone when it
   * fails: the next one follows by itself.
   */
  async function look(quiet: boolean, ask: typeof askAfresh = askAfresh): Promise<void> {
    if (looking || className === '') return;
    looking = true;
    const asked = className;
    const answer = ask('readClass', asked);
    const outcome = await (quiet ? answer : waiting(status, texts.classNow.reading, answer));
    looking = false;
    if (asked !== className) return look(false, ask);
    if (outcome.ok) {
      trouble.replaceChildren();
      shown = outcome.value;
      afterPress(draw);
    } else if (quiet && shown) clock.textContent = texts.classNow.quietFailure(shown.clock);
    else
      trouble.replaceChildren(
        problemNotice(outcome.problem.message, { label: texts.tryAgain, run: () => void look(false) }),
      );
  }
  const again = makeLookAgain(() => look(true));
  /** What was read is shown at once, and looked at again behind it where it is old: then another sheet may be in front. */
  async function come(isPick = false): Promise<void> {
    const before = picks;
    await look(shown !== undefined, askDesk);
    if (!here || !isStale('readClass')) return;
    await look(true);
    if (!here) return;
    if (isPick || picks > before) front = shown?.inFront ?? front;
    else if (takeFront(shown?.inFront)) await come();
  }
  /** Turns to the class that came to the front since somebody was here last; true where that is another class. */
  function takeFront(inFront: string | undefined): boolean {
    if (inFront === undefined || inFront === front) return false;
    front = inFront;
    if (inFront === className || !page.lesson.classes.includes(inFront)) return false;
    turnTo(inFront);
    frame();
    return true;
  }
  function turnTo(name: string): void {
    className = name;
    shown = undefined;
    shownText = '';
    open.clear();
    clock.textContent = '';
    content.replaceChildren();
    // What it does hangs on whether this class is closed, which is not yet known.
    bell.disabled = true;
  }

  function draw(): void {
    if (!shown) return;
    clock.textContent = texts.classNow.clock(shown.clock);
    bell.disabled = false;
    bell.textContent = shown.closed ? texts.classNow.open : texts.classNow.close;
    bellAbout.hidden = shown.closed === true;
    const text = JSON.stringify({ ...shown, clock: '', inFront: '' });
    if (text === shownText) return;
    shownText = text;
    const focused =
      document.activeElement instanceof HTMLElement && content.contains(document.activeElement)
        ? document.activeElement.id
        : '';
    const now = shown;
    content.replaceChildren(
      ...classSections(
        now,
        (team, index) =>
          teamItem(team, {
            stepCount: now.stepCount,
            index,
            isOpen: open.has(team.key),
            toggled: (isOpen) => (isOpen ? open.add(team.key) : open.delete(team.key)),
            goToRows: () => void goTo(now.className, team),
          }),
        (isShown) => void showExit(now.className, isShown),
      ),
    );
    if (focused) document.getElementById(focused)?.focus();
  }

  async function goTo(inClass: string, team: TeamView): Promise<void> {
    const outcome = await askDesk('goToTeam', inClass, team.key);
    said.textContent = outcome.ok ? texts.classNow.went(team.team) : outcome.problem.message;
  }
  async function showExit(inClass: string, isShown: boolean): Promise<void> {
    const outcome = await waiting(status, texts.classNow.reading, askDesk('showExitChecks', inClass, isShown));
    said.textContent = outcome.ok ? texts.classNow.exit.changed(isShown) : outcome.problem.message;
    if (outcome.ok) await look(true);
  }
  const enteredWords = ({
    renewed,
    waiting = 0,
    moved = [],
  }: {
    renewed: number;
    waiting?: number;
    moved?: readonly string[];
  }): string => {
    const { renewed: restarted, waiting: waits } = texts.classNow;
    const said = [...moved, ...(renewed > 0 ? [restarted(renewed)] : []), ...(waiting > 0 ? [waits(waiting)] : [])];
    return said.length > 0 ? said.join(' ') : restarted(0);
  };
  async function checkAgain(): Promise<void> {
    said.textContent = '';
    const outcome = await waiting(status, texts.classNow.reading, askDesk('checkAgain'));
    said.textContent = outcome.ok ? enteredWords(outcome.value) : outcome.problem.message;
    if (outcome.ok) await look(true);
  }

  /** Closes the class that is shown, or opens it again: whatever the sheet says at that moment. */
  async function ring(): Promise<void> {
    said.textContent = '';
    const { closed, opened, closing } = texts.classNow;
    const close = shown?.closed !== true;
    const outcome = await waiting(status, closing, askDesk('closeClass', className, close));
    if (outcome.ok) await look(true);
    said.textContent = outcome.ok ? (close ? closed(outcome.value.noted) : opened) : outcome.problem.message;
  }

  /** Everything but the class itself, or the way to the plan where there is no class. */
  function frame(): void {
    const { classes } = page.lesson;
    if (classes.length === 0) {
      className = '';
      root.replaceChildren(
        viewHeading(texts.classNow.title),
        element('p', {}, texts.classNow.none),
        element('button', { type: 'button', class: 'act', onclick: () => page.show('plan') }, texts.classNow.toPlan),
      );
      return;
    }
    if (!classes.includes(className)) turnTo(classes[0] ?? '');
    const select = choice(
      classes.map((name) => ({ value: name, label: name })),
      className,
    );
    select.addEventListener('change', () => {
      picks += 1;
      turnTo(select.value);
      void come(true);
    });
    pick.replaceChildren(field({ id: 'class-now', label: texts.classNow.pick, control: select }).root);
    if (root.contains(content)) return;
    root.replaceChildren(viewHeading(texts.classNow.title), pick, clock, trouble, status, content, said, ...actions());
  }
  const actions = (): readonly HTMLElement[] => [
    element(
      'div',
      { class: 'actions' },
      element('button', { type: 'button', class: 'act', onclick: () => void look(false) }, texts.classNow.lookAgain),
      element(
        'button',
        { type: 'button', class: 'act two', 'aria-describedby': 'check-again-about', onclick: () => void checkAgain() },
        texts.classNow.checkAgain,
      ),
    ),
    element('p', { class: 'hint', id: 'check-again-about' }, texts.classNow.checkAgainAbout),
    element('p', { class: 'hint' }, texts.classNow.every),
    element('div', { class: 'actions' }, bell),
    bellAbout,
  ];

  document.addEventListener('visibilitychange', () => {
    if (here && document.visibilityState === 'visible') void look(true);
  });
  return {
    root,
    enter() {
      here = true;
      said.textContent = '';
      takeFront(page.lesson.inFront);
      frame();
      focusHeading(root);
      void come();
      again.start();
    },
    leave() {
      here = false;
      again.stop();
    },
  };
}
