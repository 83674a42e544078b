import { element } from '../page/element.ts';
import { focusHeading, viewHeading } from '../page/heading.ts';
import type { Page } from '../page/page.ts';
import type { View } from '../page/view.ts';
import { texts } from '../texts.ts';
import type { Builder } from './builder.ts';
import { buildPanel } from './buildPanel.ts';
import { planForm } from './planForm.ts';

/** Everything a teacher says before the table is built, and the build itself. */
export function planView(page: Page, builder: Builder): View {
  const root = element('div', { class: 'view plan' });
  const body = element('div', {});
  const toPlan = { label: texts.build.toPlan, run: () => drawForm(true) };
  const toPrepare = { label: texts.build.toPrepare, run: () => page.show('prepare') };
  const toClass = { label: texts.build.toClass, run: () => page.show('classNow') };
  const panel = buildPanel({
    builder,
    next: () => (builder.sample ? [toClass, toPrepare, toPlan] : [toPrepare, toClass, toPlan]),
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
    body.replaceChildren(...planForm(page, { builder, redraw: () => drawForm(true) }));
    if (focus) focusHeading(root);
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
    },
  };
}
