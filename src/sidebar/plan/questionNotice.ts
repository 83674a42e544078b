import type { BuildAnswers } from '../../desk/building/buildNote.ts';
import type { BuildQuestion } from '../../desk/building/questions.ts';
import { element } from '../page/element.ts';
import { texts } from '../texts.ts';

/** What a build has to know before it writes anything, with a button for each answer. */
export function questionNotice(
  question: BuildQuestion,
  { answer, leave }: { readonly answer: (answers: BuildAnswers) => void; readonly leave: () => void },
): HTMLElement {
  const { names, typed, sample } = texts.plan;
  const { next } = texts;
  const button = (label: string, run: () => void) =>
    element('button', { type: 'button', class: 'act two', onclick: run }, label);
  const list = (lines: readonly string[]) => element('ul', {}, ...lines.map((line) => element('li', {}, line)));
  const notice = (...parts: readonly HTMLElement[]) => element('div', { class: 'notice', role: 'alert' }, ...parts);
  if (question.about === 'names') {
    return notice(
      element('p', {}, names.ask),
      list(question.pairs.map(names.pair)),
      button(names.same, () => answer({ names: 'same' })),
      button(names.other, () => answer({ names: 'other' })),
    );
  }
  if (question.about === 'next lesson') {
    return notice(
      element('p', {}, next.begins(question)),
      list(question.where.map(next.entries)),
      element('p', {}, next.stays),
      button(next.yes, () => answer({ begins: 'next' })),
      button(next.no, leave),
    );
  }
  if (question.about === 'same day') {
    return notice(
      element('p', {}, next.sameDay(question.classes)),
      button(next.sameDayYes, () => answer({ sameDay: true })),
      button(next.no, leave),
    );
  }
  if (question.about === 'sample') {
    return notice(
      element('p', {}, sample.ask(question)),
      button(sample.remove, () => answer({ sample: 'remove' })),
      button(sample.keep, () => answer({ sample: 'keep' })),
    );
  }
  return notice(
    element('p', {}, typed.ask(question.cells)),
    list(question.where.map(typed.where)),
    button(typed.no, leave),
    button(typed.yes(question.cells), () => answer({ setAside: question.cells })),
  );
}
