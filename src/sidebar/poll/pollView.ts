import type { PollView } from '../../desk/views.ts';
import {
  answersOf,
  dayBefore,
  type PollSummary,
  pollChange,
  pollDays,
  pollSummary,
  type StatementCounts,
} from '../../lab/poll/pollSummary.ts';
import { askAfresh, askDesk, isStale } from '../askDesk.ts';
import { choice } from '../page/choice.ts';
import { element } from '../page/element.ts';
import { field } from '../page/field.ts';
import { focusHeading, viewHeading } from '../page/heading.ts';
import { problemNotice } from '../page/notice.ts';
import type { Page } from '../page/page.ts';
import type { View } from '../page/view.ts';
import { waiting } from '../page/waiting.ts';
import { dayWords } from '../record/dayWords.ts';
import { texts } from '../texts.ts';
import { pollBars } from './pollBars.ts';

/** What the class says about the lesson: counts by statement, what changed since last time, and the open lines. */
export function pollView(page: Page): View {
  const words = texts.poll;
  const status = element('p', { class: 'waiting', role: 'status' });
  const trouble = element('div', {});
  const pick = element('div', {});
  const content = element('div', {});
  const said = element('p', { class: 'said', role: 'status' });
  const toSheet = element(
    'button',
    { type: 'button', class: 'act two', hidden: true, onclick: () => void goToSheet() },
    words.toSheet,
  );
  const root = element(
    'div',
    { class: 'view poll' },
    viewHeading(words.title),
    status,
    trouble,
    pick,
    content,
    element(
      'div',
      { class: 'actions' },
      element('button', { type: 'button', class: 'act', onclick: () => void read() }, words.again),
      toSheet,
    ),
    said,
    element('p', { class: 'hint' }, words.honest),
  );
  let className = '';
  let day = '';
  let shown = '';

  async function read(ask: typeof askAfresh = askAfresh): Promise<void> {
    const outcome = await waiting(status, words.reading, ask('readPoll'));
    if (!outcome.ok) {
      trouble.replaceChildren(
        problemNotice(outcome.problem.message, { label: texts.tryAgain, run: () => void read() }),
      );
      return;
    }
    trouble.replaceChildren();
    shown = JSON.stringify(outcome.value);
    frame(outcome.value);
  }

  /** What was read is shown at once, and looked at again behind it where it is old. */
  async function come(): Promise<void> {
    await read(askDesk);
    if (!isStale('readPoll')) return;
    const outcome = await askAfresh('readPoll');
    if (!outcome.ok || JSON.stringify(outcome.value) === shown) return;
    shown = JSON.stringify(outcome.value);
    frame(outcome.value);
  }

  async function goToSheet(): Promise<void> {
    const outcome = await askDesk('goToPoll');
    said.textContent = outcome.ok ? words.went : outcome.problem.message;
  }

  function frame(poll: PollView): void {
    toSheet.hidden = poll.sheet === '';
    if (poll.sheet === '') {
      pick.replaceChildren();
      content.replaceChildren(
        element('p', {}, words.noSheet),
        element('button', { type: 'button', class: 'act two', onclick: () => page.show('plan') }, words.toPlan),
      );
      return;
    }
    if (poll.answers.length === 0) {
      pick.replaceChildren();
      content.replaceChildren(element('p', {}, words.nobody(poll.sheet)));
      return;
    }
    const classes = [...new Set([...page.lesson.classes, ...poll.answers.map((answer) => answer.className)])].filter(
      (name) => name !== '',
    );
    if (className !== '' && !classes.includes(className)) className = '';
    const days = pollDays(poll.answers, className);
    if (!days.includes(day)) day = days[0] ?? '';
    const classChoice = choice(
      [{ value: '', label: words.allClasses }, ...classes.map((name) => ({ value: name, label: name }))],
      className,
    );
    const dayChoice = choice(
      days.map((name) => ({ value: name, label: words.day(name, name === poll.today) })),
      day,
    );
    classChoice.addEventListener('change', () => {
      className = classChoice.value;
      frame(poll);
      document.getElementById('poll-class')?.focus();
    });
    dayChoice.addEventListener('change', () => {
      day = dayChoice.value;
      draw(poll);
    });
    pick.replaceChildren(
      field({ id: 'poll-class', label: words.pickClass, control: classChoice }).root,
      ...(days.length === 0 ? [] : [field({ id: 'poll-day', label: words.pickDay, control: dayChoice }).root]),
    );
    draw(poll);
  }

  function draw({ answers }: PollView): void {
    const now = pollSummary(answersOf(answers, { className, day }));
    if (now.answers === 0) {
      content.replaceChildren(element('p', {}, words.noneHere));
      return;
    }
    const earlier = dayBefore(answers, { className, day });
    const before =
      earlier === undefined
        ? undefined
        : { day: earlier, summary: pollSummary(answersOf(answers, { className, day: earlier })) };
    const most = Math.max(1, ...now.statements.flatMap(({ counts }) => counts));
    content.replaceChildren(
      element('p', { class: 'clock' }, words.answers(now)),
      ...now.statements.map((statement, place) => statementSection({ statement, place, now, before, most })),
      element(
        'section',
        {},
        element('h2', {}, words.openLines),
        now.openLines.length === 0
          ? element('p', { class: 'hint' }, words.noLines)
          : element('ul', { class: 'open-lines' }, ...now.openLines.map((line) => element('li', {}, line))),
      ),
    );
  }

  return {
    root,
    enter() {
      said.textContent = '';
      focusHeading(root);
      void come();
    },
    leave() {},
  };
}

interface StatementParts {
  readonly statement: StatementCounts;
  readonly place: number;
  readonly now: PollSummary;
  readonly before: { readonly day: string; readonly summary: PollSummary } | undefined;
  readonly most: number;
}

function statementSection({ statement, place, now, before, most }: StatementParts): HTMLElement {
  const words = texts.poll;
  const earlier = before?.summary.statements[place];
  const change = before === undefined ? undefined : pollChange(now, before.summary)[place];
  return element(
    'section',
    {},
    element('h2', {}, statement.statement),
    pollBars(statement, most),
    element('p', { class: 'hint' }, words.agree(statement)),
    before !== undefined &&
      earlier !== undefined &&
      change !== undefined &&
      element('p', { class: 'change' }, words.change[change], ' ', words.lastTime(dayWords(before.day), earlier)),
    statement.other > 0 && element('p', { class: 'hint' }, words.otherWords(statement.other)),
  );
}
