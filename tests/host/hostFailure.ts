import type { StandIn } from '../../scripts/preview/standin/openStandIn.ts';

/** Calls that change the workbook or the script's stores: between two of them a failure leaves the same state. */
const changes = /\.(set|insert|add|protect|hide|delete|remove|clear|build$|releaseLock)/;

export interface Interruption {
  /** Calls that changed something so far. */
  readonly made: () => number;
  /** Lets go on from here without failing. */
  readonly stop: () => void;
}

/** From now on the host fails at its `number`-th change, once, as it does when it is too busy. */
export function failAtChange(host: StandIn, number: number): Interruption {
  const counts = host.counts as unknown as { countHost(name: string): void };
  const count = counts.countHost;
  let made = 0;
  counts.countHost = function (this: unknown, name: string) {
    count.call(counts, name);
    if (!changes.test(name)) return;
    made += 1;
    if (made === number) throw new Error('Service Spreadsheets failed while accessing document.');
  };
  return {
    made: () => made,
    stop: () => {
      counts.countHost = count;
    },
  };
}
