import type { StandIn } from '../../src/preview/standin/openStandIn.ts';

/** Calls that change the workbook or the script's stores: between two of them a failure leaves the same state. */
const isChange = (name: string): boolean =>
  /\.(set|insert|add|protect|hide|delete|remove|clear|releaseLock)/.test(name) && !/Builder\./.test(name);

export interface Interruption {
  /** Calls that changed something so far, in order. */
  readonly names: readonly string[];
  /** Lets go on from here without failing. */
  readonly stop: () => void;
}

/** From now on the host fails at its `number`-th change, once, as it does when it is too busy. */
export function failAtChange(host: StandIn, number: number): Interruption {
  const counts = host.counts as unknown as { countHost(name: string): void };
  const count = counts.countHost;
  const names: string[] = [];
  counts.countHost = function (this: unknown, name: string) {
    count.call(counts, name);
    if (!isChange(name)) return;
    names.push(name);
    if (names.length === number) throw new Error('Service Spreadsheets failed while accessing document.');
  };
  return {
    names,
    stop: () => {
      counts.countHost = count;
    },
  };
}
