import type { Finding, Role, Trial } from '../../desk/selfCheck/finding.ts';
import { tenCells } from '../../desk/selfCheck/probes/tries.ts';
import { answered, questionNames, reportText, wordsOf } from '../../desk/selfCheck/reportText.ts';
import { hostProbes } from '../../desk/selfCheck/selfCheck.ts';
import { type QuestionName, questions, selfCheckWords } from '../../desk/selfCheck/words.ts';
import { askDesk } from '../askDesk.ts';
import { copyOut } from '../page/copyOut.ts';
import { drafts } from '../page/drafts.ts';
import { element } from '../page/element.ts';
import { focusHeading, viewHeading } from '../page/heading.ts';
import { problemNotice } from '../page/notice.ts';
import { waiting } from '../page/waiting.ts';
import { texts } from '../texts.ts';
import { clipboardFinding, storageFinding, widthFinding } from './pageFacts.ts';

const say = texts.selfCheck;
const draftName = 'labrow self-check';

type Answers = Partial<Record<QuestionName, 'yes' | 'no'>>;

/** How far a try has come; kept as it goes, since a page over the sidebar may close it. */
interface Progress {
  readonly role: Role;
  readonly trial: Trial | undefined;
  readonly findings: Finding[];
  readonly answers: Answers;
}

/** The self-check from its first word to its report. It asks nothing of the lesson: a student may run it as well. */
export function startSelfCheck(): void {
  const main = element('main', {});
  document.body.append(main);
  const status = element('p', { class: 'waiting', role: 'status' });
  const show = (...parts: readonly (Node | string)[]): void => {
    main.replaceChildren(element('div', { class: 'view self-check' }, viewHeading(say.title), ...parts, status));
    window.scrollTo(0, 0);
    focusHeading(main);
  };
  const button = (label: string, run: () => Promise<void>, kind = 'act'): HTMLElement =>
    element('button', { type: 'button', class: kind, onclick: () => void run() }, label);
  const paragraphs = (words: readonly string[]) => words.map((one) => element('p', {}, one));

  function first(): void {
    const roles = (['teacher', 'student'] as const).map((role) => {
      const control = element('input', { type: 'radio', name: 'role', value: role, checked: role === 'teacher' });
      return { role, control, root: element('label', { class: 'one-choice' }, control, say.roles[role]) };
    });
    show(
      ...paragraphs(say.about),
      element('fieldset', {}, element('legend', {}, say.role), ...roles.map(({ root }) => root)),
      button(say.start, () => probeAll(roles.find(({ control }) => control.checked)?.role ?? 'teacher')),
    );
  }

  async function probeAll(role: Role): Promise<void> {
    show();
    const begun = await waiting(status, say.beginning, askDesk('beginSelfCheck', role));
    if (!begun.ok) return trouble(begun.problem.message);
    const { trial, findings } = begun.value;
    const progress: Progress = { role, trial, findings: [...findings, widthFinding(), storageFinding()], answers: {} };
    if (trial === undefined) return report(progress);
    const device = { now: Date.now(), timeZone: Intl.DateTimeFormat().resolvedOptions().timeZone };
    for (const [index, name] of hostProbes.entries()) {
      const line = say.trying(wordsOf(name).title, index + 1, hostProbes.length);
      const outcome = await waiting(status, line, askDesk('probeFile', trial, name, device));
      progress.findings.push(
        outcome.ok
          ? outcome.value
          : { name, verdict: 'not tried', saw: selfCheckWords.refused(outcome.problem.message) },
      );
    }
    await askDesk('readyTenCells', trial);
    drafts.keep(draftName, progress);
    askToType(progress);
  }

  function askToType(progress: Progress): void {
    const count = async () => {
      const outcome = await waiting(status, say.counting, askDesk('countTenCells'));
      if (outcome.ok) progress.findings.push(outcome.value);
      askQuestions(progress);
    };
    show(
      element('h2', {}, say.typeTitle),
      element('p', {}, say.type(tenCells)),
      element(
        'div',
        { class: 'actions' },
        button(say.typed, count),
        button(say.notTyped, async () => askQuestions(progress), 'act two'),
      ),
    );
  }

  function askQuestions(progress: Progress, ...before: readonly Node[]): void {
    drafts.keep(draftName, progress);
    const { answers } = progress;
    const asked = questionNames.map((name) => {
      const choices = (['yes', 'no'] as const).map((answer) => {
        const choose = () => {
          answers[name] = answer;
          drafts.keep(draftName, progress);
        };
        const control = element('input', { type: 'radio', name, checked: answers[name] === answer, onchange: choose });
        return element('label', { class: 'one-choice' }, control, selfCheckWords.asked[answer]);
      });
      return element('fieldset', {}, element('legend', {}, questions[name].asks), ...choices);
    });
    const finish = (leaves: boolean) => async () => {
      if (progress.trial !== undefined) {
        const ended = await waiting(status, say.finishing, askDesk('endSelfCheck', progress.trial, leaves));
        if (ended.ok) progress.findings.push(ended.value);
      }
      report(progress);
    };
    show(
      ...before,
      element('h2', {}, say.askTitle),
      element('p', {}, say.askAbout),
      button(say.openPage, openTrialPage, 'act two'),
      ...asked,
      element(
        'div',
        { class: 'actions' },
        button(say.finish, finish(false)),
        button(say.leave, finish(true), 'act two'),
      ),
      element('p', { class: 'hint' }, say.leaveAbout),
    );
  }

  async function openTrialPage(): Promise<void> {
    const outcome = await askDesk('openPage', 'trial', '');
    if (!outcome.ok) status.textContent = outcome.problem.message;
  }

  function report(progress: Progress): void {
    drafts.drop(draftName);
    const today = new Date();
    const two = (number: number) => String(number).padStart(2, '0');
    const day = `${today.getFullYear()}-${two(today.getMonth() + 1)}-${two(today.getDate())}`;
    const { role, findings, answers } = progress;
    const words = (copied: readonly Finding[]) =>
      reportText({ findings: [...findings, ...copied, ...answered(answers)], role, day });
    const text = element('textarea', { rows: 24, readonly: true, 'aria-label': say.report, class: 'report' });
    text.value = words([]);
    const said = element('p', { class: 'said', role: 'status' });
    const copy = async () => {
      const by = await copyOut(text);
      // What came of copying belongs into the report as well: it is copied once more with that line in it.
      text.value = words([clipboardFinding(by)]);
      said.textContent = (await copyOut(text)) === 'nothing' ? texts.copy.selected : texts.copy.copied;
    };
    show(
      element('h2', {}, say.report),
      element('p', {}, say.reportAbout),
      text,
      element(
        'div',
        { class: 'actions' },
        button(say.copy, copy),
        button(say.again, async () => first(), 'act two'),
      ),
      said,
    );
  }

  function trouble(message: string): void {
    show(problemNotice(message, { label: texts.tryAgain, run: first }));
  }

  const left = drafts.read(draftName) as Progress | null;
  if (left === null) first();
  else askQuestions(left, element('p', { class: 'notice' }, say.goOn));
}
