import type { ClassView, TeamView } from '../../desk/views.ts';
import { askAfresh, askDesk, isStale } from '../askDesk.ts';
import { choice } from '../page/choice.ts';
import { element } from '../page/element.ts';
import { field } from '../page/field.ts';
import { focusHeading, viewHeading } from '../page/heading.ts';
import { makeLookAgain } from '../page/makeLookAgain.ts';
import { problemNotice } from '../page/notice.ts';
import type { Page } from '../page/page.ts';
import { tube } from '../page/tube.ts';
import type { View } from '../page/view.ts';
import { waiting } from '../page/waiting.ts';
import { peopleWords } from '../teams/peopleWords.ts';
import { texts } from '../texts.ts';
import { rowState } from './rowState.ts';
import { spreadPicture } from './spreadPicture.ts';
import { stateBadge } from './stateBadge.ts';
import { stepNotes } from './stepNotes.ts';
import { talkLines } from './talkLines.ts';

/** How the teams get on, for the teacher's eyes: whom to talk to, progress, one sentence for the class. */
export function classNowView(page: Page): View {
  const root = element('div', { class: 'view class-now' });
  const pick = element('div', {});
  const clock = element('p', { class: 'clock' });
  const trouble = element('div', {});
  const status = element('p', { class: 'waiting', role: 'status' });
  const content = element('div', {});
  const said = element('p', { class: 'said', role: 'status' });
  const open = new Set<string>();
  let className = '';
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
      draw();
    } else if (quiet && shown) clock.textContent = texts.classNow.quietFailure(shown.clock);
    else
      trouble.replaceChildren(
        problemNotice(outcome.problem.message, { label: texts.tryAgain, run: () => void look(false) }),
      );
  }
  const again = makeLookAgain(() => look(true));
  /** What was read is shown at once, and looked at again behind it where it is old. */
  async function come(): Promise<void> {
    await look(shown !== undefined, askDesk);
    if (here && isStale('readClass')) await look(true);
  }

  function draw(): void {
    if (!shown) return;
    clock.textContent = texts.classNow.clock(shown.clock);
    const text = JSON.stringify({ ...shown, clock: '' });
    if (text === shownText) return;
    shownText = text;
    const focused =
      document.activeElement instanceof HTMLElement && content.contains(document.activeElement)
        ? document.activeElement.id
        : '';
    content.replaceChildren(...sections(shown));
    if (focused) document.getElementById(focused)?.focus();
  }

  function sections(now: ClassView): readonly HTMLElement[] {
    const talk = talkLines(now.talkFirst).map(({ heading, reason }, index) =>
      element(
        'li',
        { class: index === 0 ? 'talk first' : 'talk' },
        element('b', {}, heading),
        element('span', {}, reason),
      ),
    );
    return [
      ...(now.inTheWay ?? []).map((sentence) => element('p', { class: 'say' }, sentence)),
      element(
        'section',
        {},
        element('h2', { class: 'spoken' }, texts.classNow.talkFirst),
        talk.length > 0
          ? element('ul', { class: 'cards' }, ...talk)
          : element('p', { class: 'hint' }, texts.classNow.nobody),
      ),
      element(
        'section',
        {},
        element('h2', {}, texts.classNow.teams),
        now.teams.length > 0
          ? element('ul', { class: 'teams' }, ...now.teams.map((team, index) => teamItem(now, team, index)))
          : element('p', { class: 'hint' }, texts.classNow.noTeams),
      ),
      ...(now.percentErrors === undefined ? [] : [spreadPicture(now.percentErrors)]),
      ...(now.sayToClass !== ''
        ? [element('p', { class: 'say' }, element('b', {}, texts.classNow.say), ` ${now.sayToClass}`)]
        : []),
      ...(now.notYetKnown > 0 ? [element('p', { class: 'hint' }, texts.classNow.notYetKnown(now.notYetKnown))] : []),
    ];
  }

  function teamItem(now: ClassView, team: TeamView, index: number): HTMLElement {
    const complete = team.done >= now.stepCount && now.stepCount > 0;
    const details = element(
      'details',
      { open: open.has(team.key) },
      element(
        'summary',
        { id: `team-${index}` },
        element('span', { class: 'team-name' }, team.team),
        element(
          'span',
          { class: 'gauge' },
          tube({ done: team.done, steps: now.stepCount }),
          element(
            'span',
            { class: 'of' },
            element('span', { 'aria-hidden': 'true' }, texts.classNow.ofSteps(team.done, now.stepCount)),
            element('span', { class: 'spoken' }, texts.classNow.ofStepsSpoken(team.done, now.stepCount)),
          ),
        ),
        team.absent === true && element('span', { class: 'away' }, texts.classNow.absent),
      ),
      team.members !== undefined &&
        team.members.length > 0 &&
        element('p', { class: 'hint' }, peopleWords(team.members)),
      complete && element('p', { class: 'hint' }, texts.classNow.ready),
      element('ol', { class: 'steps' }, ...team.steps.map(stepItem)),
      element(
        'button',
        { type: 'button', class: 'act quiet', id: `team-${index}-go`, onclick: () => void goTo(now.className, team) },
        texts.classNow.goToRows(team.team),
      ),
    );
    details.addEventListener('toggle', () => {
      if (details.open) open.add(team.key);
      else open.delete(team.key);
    });
    return element('li', {}, details);
  }

  const stepItem = (step: TeamView['steps'][number]): HTMLElement =>
    element(
      'li',
      {},
      element(
        'div',
        { class: 'step-line' },
        element('span', { class: 'step-title' }, step.title),
        stateBadge(rowState(step)),
      ),
      step.entry.trim() !== '' && element('p', { class: 'entered' }, texts.classNow.entered(step.entry)),
      step.lookAt.trim() !== '' && element('p', { class: 'look-at' }, step.lookAt),
      step.isFormula === true && element('p', {}, texts.classNow.isFormula),
      stepNotes(step) !== '' && element('p', { class: 'tries' }, stepNotes(step)),
    );

  async function goTo(inClass: string, team: TeamView): Promise<void> {
    const outcome = await askDesk('goToTeam', inClass, team.key);
    said.textContent = outcome.ok ? texts.classNow.went(team.team) : outcome.problem.message;
  }
  const enteredWords = ({ renewed, moved = [] }: { renewed: number; moved?: readonly string[] }): string =>
    moved.length > 0 && renewed === 0 ? moved.join(' ') : [...moved, texts.classNow.renewed(renewed)].join(' ');
  async function checkAgain(): Promise<void> {
    said.textContent = '';
    const outcome = await waiting(status, texts.classNow.reading, askDesk('checkAgain'));
    said.textContent = outcome.ok ? enteredWords(outcome.value) : outcome.problem.message;
    if (outcome.ok) await look(true);
  }

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
    if (!classes.includes(className)) {
      className = classes[0] ?? '';
      shown = undefined;
      shownText = '';
      content.replaceChildren();
    }
    const select = choice(
      classes.map((name) => ({ value: name, label: name })),
      className,
    );
    select.addEventListener('change', () => {
      className = select.value;
      shown = undefined;
      shownText = '';
      open.clear();
      clock.textContent = '';
      content.replaceChildren();
      void come();
    });
    pick.replaceChildren(field({ id: 'class-now', label: texts.classNow.pick, control: select }).root);
    root.replaceChildren(
      viewHeading(texts.classNow.title),
      pick,
      clock,
      trouble,
      status,
      content,
      said,
      element(
        'div',
        { class: 'actions' },
        element('button', { type: 'button', class: 'act', onclick: () => void look(false) }, texts.classNow.lookAgain),
        element(
          'button',
          {
            type: 'button',
            class: 'act two',
            'aria-describedby': 'check-again-about',
            onclick: () => void checkAgain(),
          },
          texts.classNow.checkAgain,
        ),
      ),
      element('p', { class: 'hint', id: 'check-again-about' }, texts.classNow.checkAgainAbout),
      element('p', { class: 'hint' }, texts.classNow.every),
    );
  }

  document.addEventListener('visibilitychange', () => {
    if (here && document.visibilityState === 'visible') void look(true);
  });
  return {
    root,
    enter() {
      here = true;
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
