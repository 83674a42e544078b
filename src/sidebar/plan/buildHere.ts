import type { Outcome, Problem } from '../../desk/outcome.ts';
import type { BuildState } from '../../desk/views.ts';
import { focusHeading, viewHeading } from '../page/heading.ts';
import type { Builder } from './builder.ts';
import { buildPanel } from './buildPanel.ts';

/** Shows a build in the view that began it, in place of what stands there, until somebody goes back. */
export function buildHere({
  root,
  title,
  builder,
  words,
  toClass,
  redraw,
}: {
  readonly root: HTMLElement;
  readonly title: string;
  readonly builder: Builder;
  readonly words: { readonly back: string; readonly done?: string };
  readonly toClass: () => void;
  readonly redraw: () => void;
}): {
  /** Goes on from the first answer; a problem comes back and nothing is shown. */
  start(first: Outcome<BuildState>): Problem | undefined;
  showing(): boolean;
} {
  let mine = false;
  const panel = buildPanel({
    builder,
    toClass: () => {
      mine = false;
      builder.close();
      toClass();
    },
    toPlan: () => {
      mine = false;
      redraw();
    },
    words,
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
  return {
    start(first) {
      if (!first.ok) return first.problem;
      mine = true;
      void builder.start(() => Promise.resolve(first));
      return undefined;
    },
    showing() {
      if (mine && builder.now.phase === 'idle') mine = false;
      if (mine) show();
      return mine;
    },
  };
}
