import type { BuildAnswers } from '../../desk/building/buildNote.ts';
import type { LessonsView } from '../../desk/views.ts';
import type { Setup } from '../../lab/lesson/setup.ts';
import { askDesk } from '../askDesk.ts';
import { element } from '../page/element.ts';
import type { Page } from '../page/page.ts';
import { texts } from '../texts.ts';
import { activityPart } from './activityPart.ts';
import { benchPart } from './benchPart.ts';
import type { Builder } from './builder.ts';
import { buildPart } from './buildPart.ts';
import { checksPart } from './checksPart.ts';
import { type ClassParts, classFields } from './classFields.ts';
import { givensPart } from './givensPart.ts';
import { nextLessonView, nextPart } from './nextPart.ts';
import { numbersPart } from './numbersPart.ts';
import { planEditor } from './planEditor.ts';
import { planFields } from './planFields.ts';
import { isSampleLeft, planNotes, sampleOffer, sampleRemoval } from './planNotes.ts';
import { planProblems } from './planProblems.ts';
import { previewPart } from './previewPart.ts';
import { safetyPart } from './safetyPart.ts';
import { shelfPart } from './shelfPart.ts';

/**
 * The plan as a form: what a first lesson needs is in plain sight, everything else is folded below it with what is set
 * said in a line. `redraw` shows the form anew from the sheet.
 */
export function planForm(
  page: Page,
  {
    builder,
    redraw,
    next,
  }: {
    readonly builder: Builder;
    readonly redraw: () => void;
    /** The lessons of the file, where the plan is of the next one. */
    readonly next?: LessonsView | undefined;
  },
): readonly HTMLElement[] {
  const { plan } = texts;
  const editor =
    next === undefined ? planEditor(page.lesson) : planEditor(nextLessonView(page.lesson), 'labrow next lesson');
  const fields = planFields(editor);
  const fromSheet = () => {
    editor.drop();
    redraw();
  };
  const givens = givensPart(editor, fields);
  const bench = benchPart(editor, fields);
  const activity = activityPart(editor, {
    fields,
    picked() {
      givens.draw();
      bench.takePeriods();
    },
  });
  const numbers = numbersPart(editor, { fields, givens });
  const shelf = shelfPart(editor, { fields, changed: givens.lookAtShelf });
  const fieldsOfClasses: Pick<ClassParts, 'register' | 'forget'> = {
    register: (name, made, check) => {
      editor.fields.set(name, made);
      if (check) editor.checks.set(name, check);
    },
    forget() {
      for (const kept of [editor.fields, editor.checks]) {
        for (const name of [...kept.keys()].filter((key) => key.startsWith('classes.'))) kept.delete(name);
      }
    },
  };
  const { seed } = page.lesson.setup.settings;
  const ofNext = next === undefined ? undefined : nextPart(editor, { classes: next.classes, seed, ...fieldsOfClasses });
  const ownClasses = () =>
    classFields({
      classes: editor.draft.classes,
      changed: (list) => editor.put({ classes: list }),
      ...fieldsOfClasses,
    });
  const status = element('p', { class: 'waiting', role: 'status' });
  const problems = planProblems(editor);
  const preview = previewPart(editor, { problems, status });
  const { build } = buildPart(editor, {
    page,
    builder,
    problems,
    status,
    fromSheet,
    ...(ofNext === undefined
      ? {}
      : {
          begin: (setup: Setup, answers: BuildAnswers) =>
            askDesk(
              'nextLesson',
              setup,
              { takesPeople: ofNext.takesPeople(), knows: next?.classes.flatMap(({ keys }) => keys) },
              answers,
            ),
        }),
  });
  const { built } = editor.lesson;
  const form = element(
    'form',
    {
      novalidate: true,
      onsubmit: (event) => {
        // Enter in a field is no order to build: only the button is.
        event.preventDefault();
      },
    },
    element('section', {}, activity, givens.substance),
    ofNext?.root ?? element('section', {}, element('h2', {}, plan.classes), ownClasses()),
    problems.summary,
    problems.result,
    status,
    element(
      'div',
      { class: 'actions' },
      element(
        'button',
        { type: 'button', class: 'act', onclick: () => void build() },
        next !== undefined ? texts.next.build : built ? plan.buildAgain : plan.build,
      ),
      element('button', { type: 'button', class: 'act two', onclick: () => void preview.show() }, plan.preview),
    ),
    built && element('p', { class: 'hint' }, plan.again),
    preview.root,
    element(
      'div',
      { class: 'folds' },
      element('p', { class: 'hint' }, plan.setAlready),
      numbers,
      shelf,
      checksPart(editor, fields),
      safetyPart(editor, fields),
      bench.root,
    ),
  );
  return [
    ...(built || next !== undefined || builder.now.phase === 'left' ? [] : [sampleOffer(builder)]),
    ...(next === undefined && isSampleLeft(page.lesson) ? [sampleRemoval(builder)] : []),
    ...planNotes(editor, { builder, fromSheet }),
    form,
  ];
}
