import type { StandIn } from '../../src/preview/standin/openStandIn.ts';

interface Counting {
  countHost(name: string): void;
}

/** Calls that change the workbook or the script's stores: between two of them the file is left alike. */
const isChange = (name: string): boolean =>
  /\.(set|insert|add|protect|hide|delete|remove|clear|releaseLock)/.test(name) && !/Builder\./.test(name);

export interface Change {
  /** Which change it is, from 1. */
  readonly place: number;
  readonly name: string;
  /** The workbook just before it: what is left where the script is ended there. */
  readonly saved: string;
}

/** From now on every change is noted with the workbook as it stood before it. The list grows as the host works. */
export function saveAtChanges(host: StandIn): readonly Change[] {
  const changes: Change[] = [];
  watch(host, (name) => {
    if (isChange(name)) changes.push({ place: changes.length + 1, name, saved: host.save() });
  });
  return changes;
}

/** From now on somebody does something just before the `number`-th change, once, while the script is at work. */
export function actAtChange(host: StandIn, number: number, act: () => void): { readonly stop: () => void } {
  let changes = 0;
  let isActing = false;
  const stop = watch(host, (name) => {
    if (isActing || !isChange(name)) return;
    changes += 1;
    if (changes !== number) return;
    isActing = true;
    act();
    isActing = false;
  });
  return { stop };
}

export interface Failure {
  /** Calls so far, of every kind. */
  readonly calls: () => number;
  /** Lets go on from here without failing. */
  readonly stop: () => void;
}

/** From now on the host fails at its `number`-th call, once, as it does when it is too busy; reading counts as well. */
export function failAtCall(host: StandIn, number: number): Failure {
  let calls = 0;
  const stop = watch(host, () => {
    calls += 1;
    if (calls === number) throw new Error('Service Spreadsheets failed while accessing document.');
  });
  return { calls: () => calls, stop };
}

/** Tells of every call of the host before it is made. */
function watch(host: StandIn, told: (name: string) => void): () => void {
  const counts = host.counts as unknown as Counting;
  const count = counts.countHost;
  counts.countHost = function (this: unknown, name: string) {
    count.call(counts, name);
    told(name);
  };
  return () => {
    counts.countHost = count;
  };
}
