import { element } from '../page/element.ts';
import { problemNotice } from '../page/notice.ts';
import { fillTube, tube } from '../page/tube.ts';
import { texts } from '../texts.ts';
import { type Builder, type BuildPhase, percentDone } from './builder.ts';

/** One thing to do after a build. */
export interface NextStep {
  readonly label: string;
  readonly run: () => void;
}

export interface BuildPanelParts {
  readonly builder: Builder;
  /** What comes next once the table stands, the likeliest first. */
  readonly next: () => readonly NextStep[];
  /** Leaves a build that rests or has stopped. */
  readonly back: NextStep;
  /** What is said of a finished build, in place of the usual words. */
  readonly done?: () => string;
  /** What there is now, counted. */
  readonly tally?: () => string;
}

/** The build as it goes: a tube that fills, percent in words, and a way to leave and to go on. */
export function buildPanel({ builder, next, back, done, tally }: BuildPanelParts): {
  readonly root: HTMLElement;
  update(): void;
} {
  const title = element('h2', { tabindex: -1 });
  const drawn = tube({ done: 0, steps: 1 });
  const bar = element(
    'div',
    { role: 'progressbar', 'aria-label': texts.build.progress, 'aria-valuemin': 0, 'aria-valuemax': 100 },
    drawn,
  );
  const words = element('p', { class: 'progress-words', role: 'status' });
  const notes = element('div', { class: 'notes' });
  const actions = element('div', { class: 'actions' });
  const root = element('section', { class: 'build-panel' }, title, bar, words, notes, actions);
  const button = (label: string, run: () => void, primary = false) =>
    element('button', { type: 'button', class: primary ? 'act' : 'act two', onclick: run }, label);
  let shown: BuildPhase['phase'] | 'leaving' | undefined;

  const leading = ({ label, run }: NextStep, primary = false) =>
    button(
      label,
      () => {
        builder.close();
        run();
      },
      primary,
    );
  const goOn = () => void builder.goOn();

  function update(): void {
    const { now } = builder;
    if (now.phase === 'idle') {
      shown = undefined;
      return;
    }
    const percent = percentDone(now.build);
    bar.setAttribute('aria-valuenow', String(percent));
    fillTube(drawn, { done: percent, steps: 100 });
    drawn.style.setProperty('--mark', `${100 / Math.min(Math.max(now.build?.total ?? 10, 4), 24)}%`);
    words.textContent =
      now.phase === 'finished' ? (tally?.() ?? '') : texts.build.now(now.build?.label ?? texts.build.first, percent);
    const state = now.phase === 'running' && now.leaving ? 'leaving' : now.phase;
    if (state === shown) return;
    const before = shown;
    shown = state;
    title.textContent = {
      running: texts.build.title,
      leaving: texts.build.title,
      left: texts.build.leftTitle,
      failed: texts.build.failedTitle,
      finished: texts.build.doneTitle,
    }[state];
    if (now.phase === 'running') {
      notes.replaceChildren(element('p', { class: 'hint' }, now.leaving ? texts.build.leaving : texts.build.may));
      actions.replaceChildren(...(now.leaving ? [] : [button(texts.build.leave, () => builder.leave())]));
    } else if (now.phase === 'left') {
      notes.replaceChildren(element('p', {}, texts.build.kept));
      actions.replaceChildren(button(texts.plan.goOn, goOn, true), leading(back));
    } else if (now.phase === 'failed') {
      notes.replaceChildren(problemNotice(now.problem.message), element('p', {}, texts.build.kept));
      actions.replaceChildren(button(texts.plan.goOn, goOn, true), leading(back));
    } else {
      notes.replaceChildren(
        element('p', {}, done?.() ?? (builder.sample ? texts.build.doneSample : texts.build.done)),
        ...(now.build.late === undefined ? [] : [element('p', { class: 'say' }, now.build.late)]),
      );
      actions.replaceChildren(...next().map((step, place) => leading(step, place === 0)));
    }
    // Focus would be lost with the button that was pressed.
    if (before !== undefined && root.isConnected) title.focus();
  }
  return { root, update };
}
