import type { BuildAnswers } from '../../desk/building/buildNote.ts';
import type { Outcome, Problem } from '../../desk/outcome.ts';
import type { BuildState } from '../../desk/views.ts';
import { element } from '../page/element.ts';
import { focusHeading, viewHeading } from '../page/heading.ts';
import { problemNotice } from '../page/notice.ts';
import type { Builder } from './builder.ts';
import { buildPanel, type NextStep } from './buildPanel.ts';
import { questionNotice } from './questionNotice.ts';

/** Shows a build in the view that began it, in place of what stands there, until somebody goes back. */
export function buildHere({
  root,
  title,
  builder,
  back,
  next,
  done,
  redraw,
}: {
  readonly root: HTMLElement;
  readonly title: string;
  readonly builder: Builder;
  /** Says where one goes back to. */
  readonly back: string;
  /** What comes next once it is built, before going back; `leave` ends showing the build here. */
  readonly next?: (leave: () => void) => readonly NextStep[];
  readonly done?: () => string;
  readonly redraw: () => void;
}): {
  /**
   * Goes on from the first answer; a problem comes back and nothing is shown. Where the answer is a question it is asked
   * in place of the view, and `again` is what is done with what was said.
   */
  start(
    first: Outcome<BuildState>,
    again?: (answers: BuildAnswers) => Promise<Outcome<BuildState>>,
  ): Problem | undefined;
  showing(): boolean;
} {
  let mine = false;
  const leave = (): void => {
    mine = false;
  };
  const goBack: NextStep = {
    label: back,
    run() {
      leave();
      redraw();
    },
  };
  const panel = buildPanel({
    builder,
    next: () => [...(next?.(leave) ?? []), goBack],
    back: goBack,
    ...(done === undefined ? {} : { done }),
  });
  const show = (): void => {
    if (!mine) return;
    if (builder.now.phase === 'idle') return;
    panel.update();
    if (root.contains(panel.root)) return;
    root.replaceChildren(viewHeading(title), panel.root);
    if (root.isConnected) focusHeading(panel.root);
  };
  builder.onChange(show);
  const askFirst = (
    { problem: { question, message } }: { readonly problem: Problem },
    {
      said,
      again,
    }: { readonly said: BuildAnswers; readonly again: (answers: BuildAnswers) => Promise<Outcome<BuildState>> },
  ): void => {
    const place = element('div', {});
    const go = async (given: BuildAnswers) => {
      const answers = { ...said, ...given };
      place.replaceChildren();
      const outcome = await again(answers);
      if (!outcome.ok && outcome.problem.question) askFirst(outcome, { said: answers, again });
      else if (!outcome.ok) place.replaceChildren(problemNotice(outcome.problem.message));
      else begin(outcome);
    };
    if (question === undefined) place.replaceChildren(problemNotice(message));
    else place.replaceChildren(questionNotice(question, { answer: (given) => void go(given), leave: redraw }));
    root.replaceChildren(viewHeading(title), place);
    focusHeading(root);
  };
  const begin = (first: Outcome<BuildState>): void => {
    mine = true;
    void builder.start(() => Promise.resolve(first));
  };
  return {
    start(first, again) {
      if (first.ok) begin(first);
      else if (first.problem.question && again) askFirst(first, { said: {}, again });
      else return first.problem;
      return undefined;
    },
    showing() {
      if (mine && builder.now.phase === 'idle') mine = false;
      if (mine) show();
      return mine;
    },
  };
}
