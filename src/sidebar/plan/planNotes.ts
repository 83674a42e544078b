import type { LessonView } from '../../desk/views.ts';
import { askDesk } from '../askDesk.ts';
import { element } from '../page/element.ts';
import { texts } from '../texts.ts';
import { type Builder, percentDone } from './builder.ts';
import type { PlanEditor } from './planEditor.ts';

/** What to know before the plan itself: a build that was left, what is wrong in the sheets, and what was typed before. */
export function planNotes(
  editor: PlanEditor,
  { builder, fromSheet }: { readonly builder: Builder; readonly fromSheet: () => void },
): readonly HTMLElement[] {
  const { plan } = texts;
  const notice = (...parts: readonly HTMLElement[]) => element('div', { class: 'notice' }, ...parts);
  const notes: HTMLElement[] = [];
  if (builder.now.phase === 'left') {
    notes.push(
      notice(
        element('p', {}, plan.halfBuilt(percentDone(builder.now.build))),
        element('button', { type: 'button', class: 'act', onclick: () => void builder.goOn() }, plan.goOn),
      ),
    );
  }
  if (editor.lesson.problems.length > 0) {
    notes.push(
      element(
        'div',
        { class: 'notice problem' },
        element('p', {}, plan.sheetProblems),
        element('ul', {}, ...editor.lesson.problems.map((problem) => element('li', {}, problem))),
      ),
    );
  }
  if (editor.isKept) {
    notes.push(
      notice(
        element('p', {}, plan.draftKept),
        element('button', { type: 'button', class: 'act quiet', onclick: fromSheet }, plan.fromSheet),
      ),
    );
  }
  return notes;
}

/** For a file in which nothing has been built: a class to look at first. */
export const sampleOffer = (builder: Builder): HTMLElement =>
  element(
    'div',
    { class: 'notice sample' },
    element('p', {}, texts.plan.sample.about),
    element(
      'button',
      { type: 'button', class: 'act quiet', onclick: () => void builder.start(() => askDesk('startSample'), true) },
      texts.plan.sample.button,
    ),
  );

/** A lesson of one's own stands beside the invented one. */
export const isSampleLeft = ({ lessons }: LessonView): boolean =>
  lessons.some(({ invented }) => invented) && lessons.some(({ invented }) => !invented);

export const sampleRemoval = (builder: Builder): HTMLElement =>
  element(
    'div',
    { class: 'notice sample' },
    element('p', {}, texts.plan.sample.over),
    element(
      'button',
      { type: 'button', class: 'act quiet', onclick: () => void builder.start(() => askDesk('removeSample')) },
      texts.plan.sample.out,
    ),
  );
