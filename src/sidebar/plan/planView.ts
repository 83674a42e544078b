import type { LessonsView } from '../../desk/views.ts';
import { askAfresh, askDesk } from '../askDesk.ts';
import { element } from '../page/element.ts';
import { focusHeading, viewHeading } from '../page/heading.ts';
import { problemNotice } from '../page/notice.ts';
import type { Page } from '../page/page.ts';
import type { View } from '../page/view.ts';
import { waiting } from '../page/waiting.ts';
import { texts } from '../texts.ts';
import type { Builder } from './builder.ts';
import { buildPanel } from './buildPanel.ts';
import { earlierPart } from './earlierPart.ts';
import { lessonBar } from './lessonBar.ts';
import { planForm } from './planForm.ts';

/** Everything a teacher says before the table is built, and the build itself. */
export function planView(page: Page, builder: Builder): View {
  const root = element('div', { class: 'view plan' });
  const body = element('div', {});
  const toPlan = { label: texts.build.toPlan, run: () => drawForm(true) };
  const toPrepare = { label: texts.build.toPrepare, run: () => page.show('prepare') };
  const toClass = { label: texts.build.toClass, run: () => page.show('classNow') };
  const toLinks = { label: texts.sheets.linksTitle, run: () => page.show('sheets') };
  const panel = buildPanel({
    builder,
    next: () => (builder.sample ? [toClass, toPrepare, toPlan] : [toPrepare, toLinks, toClass, toPlan]),
    back: toPlan,
    tally() {
      const { classes } = page.lesson.setup;
      return texts.build.tally(
        classes.length,
        classes.reduce((sum, { teams }) => sum + teams.length, 0),
      );
    },
  });
  let isVisible = false;
  let drawnFor: unknown;

  function drawForm(focus: boolean): void {
    drawnFor = page.lesson;
    root.replaceChildren(viewHeading(page.lesson.built ? texts.plan.titleAgain : texts.plan.title), body);
    const bar = lessonBar(page, {
      next: () =>
        void showLessons(texts.next.title, (next) => planForm(page, { builder, redraw: () => drawForm(true), next })),
      earlier: () => void showLessons(texts.next.earlierTitle, (lessons) => earlierPart(lessons, { open: openAgain })),
      redraw: () => drawForm(true),
    });
    body.replaceChildren(
      ...(page.lesson.built ? [bar] : []),
      ...planForm(page, { builder, redraw: () => drawForm(true) }),
    );
    if (focus) focusHeading(root);
  }
  const openAgain = (...about: Parameters<Parameters<typeof earlierPart>[1]['open']>): void =>
    void builder.start(() => askDesk('openEarlier', ...about));
  /** What is shown of the lessons of the file in place of the plan, with a way back to it. */
  async function showLessons(title: string, draw: (lessons: LessonsView) => readonly HTMLElement[]): Promise<void> {
    const status = element('p', { class: 'waiting', role: 'status' });
    const back = element(
      'button',
      { type: 'button', class: 'act quiet', onclick: () => drawForm(true) },
      texts.next.back,
    );
    root.replaceChildren(viewHeading(title), body);
    body.replaceChildren(status, back);
    const lessons = await waiting(status, texts.next.reading, askAfresh('readLessons'));
    if (!status.isConnected) return;
    body.replaceChildren(...(lessons.ok ? draw(lessons.value) : [problemNotice(lessons.problem.message)]), back);
    focusHeading(root);
  }
  function draw(focus: boolean): void {
    const { phase } = builder.now;
    if (phase === 'running' || phase === 'failed' || phase === 'finished') {
      panel.update();
      if (!root.contains(panel.root)) {
        drawnFor = undefined;
        root.replaceChildren(viewHeading(texts.plan.title), panel.root);
        if (focus) focusHeading(panel.root);
      }
      return;
    }
    if (root.contains(panel.root) && phase === 'left') panel.update();
    else if (drawnFor !== page.lesson) drawForm(focus);
    else if (focus) focusHeading(root);
  }
  builder.onChange(() => {
    if (isVisible) draw(true);
  });
  return {
    root,
    enter() {
      isVisible = true;
      draw(true);
    },
    leave() {
      isVisible = false;
      // A finished build has been read: whoever comes back wants the plan.
      if (builder.now.phase === 'finished') builder.close();
    },
  };
}
