import type { Outcome, Problem } from '../../desk/outcome.ts';
import type { BuildState } from '../../desk/views.ts';
import { texts } from '../texts.ts';

export type BuildPhase =
  | { readonly phase: 'idle' }
  | { readonly phase: 'running'; readonly build: BuildState | undefined; readonly leaving: boolean }
  | { readonly phase: 'left'; readonly build: BuildState | undefined }
  | { readonly phase: 'failed'; readonly build: BuildState | undefined; readonly problem: Problem }
  | { readonly phase: 'finished'; readonly build: BuildState };

/** Builds sheet by sheet, whatever view is open; can be left after any sheet and taken up again. */
export interface Builder {
  readonly now: BuildPhase;
  readonly sample: boolean;
  onChange(listener: () => void): void;
  /** Returns a problem that belongs to a field of the plan; every other one shows as a stopped build. */
  start(first: () => Promise<Outcome<BuildState>>, sample?: boolean): Promise<Problem | undefined>;
  goOn(): Promise<void>;
  leave(): void;
  /** An unfinished build that the sheet told of. */
  found(build: BuildState): void;
  close(): void;
}

/** A host that keeps answering the same is not building; three answers are enough to see it. */
const answersWithoutProgress = 3;

export interface BuilderParts {
  readonly next: () => Promise<Outcome<BuildState>>;
  /** Waited for before a build is called finished, so that what is shown then is current. */
  readonly finishing: () => Promise<void>;
}

export function makeBuilder({ next, finishing }: BuilderParts): Builder {
  let now: BuildPhase = { phase: 'idle' };
  let sample = false;
  let leaving = false;
  /** What going on begins with: the very step that failed, so that a plan that never arrived is sent again. */
  let pending = next;
  const listeners: (() => void)[] = [];
  const become = (phase: BuildPhase) => {
    now = phase;
    for (const listener of listeners) listener();
  };
  const lastBuild = () => ('build' in now ? now.build : undefined);

  async function run(first: () => Promise<Outcome<BuildState>>): Promise<Problem | undefined> {
    leaving = false;
    let build = lastBuild();
    let still = 0;
    let step = first;
    become({ phase: 'running', build, leaving });
    for (;;) {
      pending = step;
      const outcome = await step();
      if (!outcome.ok) {
        become({ phase: 'failed', build, problem: outcome.problem });
        return outcome.problem;
      }
      still = build && outcome.value.done <= build.done && outcome.value.label === build.label ? still + 1 : 0;
      build = outcome.value;
      pending = next;
      if (build.finished) {
        await finishing();
        become({ phase: 'finished', build });
        return undefined;
      }
      if (leaving) {
        become({ phase: 'left', build });
        return undefined;
      }
      if (still >= answersWithoutProgress) {
        become({ phase: 'failed', build, problem: { message: texts.build.stuck } });
        return undefined;
      }
      become({ phase: 'running', build, leaving });
      step = next;
    }
  }

  return {
    get now() {
      return now;
    },
    get sample() {
      return sample;
    },
    onChange: (listener) => {
      listeners.push(listener);
    },
    async start(first, isSample = false) {
      if (now.phase === 'running') return undefined;
      sample = isSample;
      now = { phase: 'idle' };
      const problem = await run(first);
      if (problem?.field === undefined) return undefined;
      become({ phase: 'idle' });
      return problem;
    },
    async goOn() {
      if (now.phase !== 'running') await run(pending);
    },
    leave() {
      if (now.phase !== 'running') return;
      leaving = true;
      become({ phase: 'running', build: now.build, leaving });
    },
    found(build) {
      if (now.phase === 'idle' && !build.finished) become({ phase: 'left', build });
    },
    close() {
      if (now.phase !== 'running') become({ phase: 'idle' });
    },
  };
}

export const percentDone = (build: BuildState | undefined): number =>
  build && build.total > 0 ? Math.round((100 * Math.min(Math.max(build.done, 0), build.total)) / build.total) : 0;
