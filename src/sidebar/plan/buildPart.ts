import type { BuildAnswers } from '../../desk/building/buildNote.ts';
import type { BuildQuestion } from '../../desk/building/questions.ts';
import type { Outcome } from '../../desk/outcome.ts';
import type { BuildState } from '../../desk/views.ts';
import type { Setup } from '../../lab/lesson/setup.ts';
import { askDesk } from '../askDesk.ts';
import { element } from '../page/element.ts';
import type { Page } from '../page/page.ts';
import { waiting } from '../page/waiting.ts';
import { texts } from '../texts.ts';
import type { Builder } from './builder.ts';
import { draftOf } from './planDraft.ts';
import type { PlanEditor } from './planEditor.ts';
import type { PlanProblems } from './planProblems.ts';
import { questionNotice } from './questionNotice.ts';
import { readPlan } from './readPlan.ts';

interface BuildParts {
  readonly page: Page;
  readonly builder: Builder;
  readonly problems: PlanProblems;
  readonly status: HTMLElement;
  /** Leaves what was typed, and shows what the sheet has. */
  readonly fromSheet: () => void;
  /** What the press does, where it is not to build this lesson. */
  readonly begin?: (setup: Setup, answers: BuildAnswers) => Promise<Outcome<BuildState>>;
}

/** The press that builds: reads the plan, asks what has to be clear first, and lets the builder go on from there. */
export function buildPart(
  editor: PlanEditor,
  { page, builder, problems, status, fromSheet, begin }: BuildParts,
): { build(): Promise<void> } {
  const { result } = problems;
  let isAsking = false;
  async function asked<T>(words: string, answer: Promise<T>): Promise<T> {
    isAsking = true;
    const outcome = await waiting(status, words, answer);
    isAsking = false;
    return outcome;
  }

  async function build(asHere = false, answers: BuildAnswers = {}): Promise<void> {
    const setup = problems.ready();
    if (!setup || isAsking) return;
    if (editor.lesson.built && !asHere) {
      const unread = await asked(texts.plan.comparing, page.refresh());
      if (unread) return problems.show(unread, () => void build());
      if (JSON.stringify(draftOf(page.lesson)) !== editor.began) return askWhichCounts();
    }
    // The form stays until the Plan is written: what has to be mended or answered is shown where it was typed.
    const first = await asked(
      texts.build.first,
      begin === undefined ? askDesk('startBuild', setup, answers, editor.knows) : begin(setup, answers),
    );
    if (first.ok) {
      await builder.start(() => Promise.resolve(first));
      if (builder.now.phase === 'finished' && (begin !== undefined || stands(setup))) editor.drop();
      return;
    }
    const { problem } = first;
    if (problem.question) askFirst(problem.question, (given) => void build(true, { ...answers, ...given }));
    else if (problem.reason === 'changed') {
      await waiting(status, texts.plan.comparing, page.refresh());
      askWhichCounts();
    } else problems.show(problem, () => void build(asHere, answers));
  }

  /**
   * What was asked for is in the file: only then is there nothing left to keep of what was typed. Classes and teams may
   * stand there besides that others have added.
   */
  const stands = (wanted: Setup): boolean => {
    const there = draftOf(page.lesson);
    const read = readPlan(
      there,
      page.lesson.activities.find(({ id }) => id === there.activity),
    );
    if (!('setup' in read)) return false;
    const { classes } = read.setup;
    const hasAll = wanted.classes.every(({ name, teams }) =>
      teams.every((team) => classes.find((one) => one.name === name)?.teams.includes(team)),
    );
    const count = (all: Setup['classes']) => all.reduce((sum, { teams }) => sum + teams.length, 0);
    const added = page.lesson.keys.filter((key) => editor.knows?.includes(key) === false).length;
    const isAll = hasAll && count(classes) <= count(wanted.classes) + added;
    return isAll && JSON.stringify({ ...read.setup, classes: wanted.classes }) === JSON.stringify(wanted);
  };
  const askFirst = (question: BuildQuestion, answered: (answers: BuildAnswers) => void) => {
    const notice = questionNotice(question, { answer: answered, leave: () => result.replaceChildren() });
    result.replaceChildren(notice);
    notice.querySelector('button')?.focus();
  };
  const askWhichCounts = () => {
    const button = (label: string, run: () => void) =>
      element('button', { type: 'button', class: 'act two', onclick: run }, label);
    result.replaceChildren(
      element(
        'div',
        { class: 'notice', role: 'alert' },
        element('p', {}, texts.plan.sheetChanged),
        button(texts.plan.fromSheet, fromSheet),
        button(texts.plan.fromHere, () => void build(true)),
      ),
    );
  };
  return { build: () => build() };
}
