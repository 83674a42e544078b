import type { Book } from './book.ts';
import { within } from './drawn.ts';
import type { HostTime } from './hostTime.ts';
import type { Slow } from './troubles.ts';

/**
 * Results of functions in cells come after their time, so many at once and the others in turn. A call whose arguments
 * change meanwhile begins anew: what the older one gives is dropped.
 */
export function takeItsTime({
  book,
  time,
  slow,
  draw,
  onArrived,
}: {
  readonly book: Book;
  readonly time: HostTime;
  readonly slow: Slow;
  readonly draw: () => number;
  readonly onArrived: () => void;
}): void {
  const { functionsAtOnce = Number.POSITIVE_INFINITY, functionTakesMs } = slow;
  const latest = new Map<string, number>();
  const line: { readonly key: string; readonly turn: number }[] = [];
  let turns = 0;
  let running = 0;
  const startNext = (): void => {
    if (running >= functionsAtOnce) return;
    const next = line.shift();
    if (next === undefined) return;
    running += 1;
    time.after(within(functionTakesMs, draw()), () => {
      running -= 1;
      startNext();
      if (latest.get(next.key) !== next.turn) return;
      book.calls.releaseOne(next.key);
      onArrived();
    });
  };
  book.calls.delayed = true;
  book.calls.onWaiting = (key) => {
    turns += 1;
    latest.set(key, turns);
    line.push({ key, turn: turns });
    startNext();
  };
}
