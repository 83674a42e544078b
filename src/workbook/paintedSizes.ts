import type { SizedRun } from './workbook.ts';

/**
 * Heights of rows, or widths of columns, in the fewest calls that set one size for a run of them: from large to small, as a
 * wall is painted in stripes. Runs of one size share a call where nothing that lies between them has to be set before.
 *
 * @param sizes - In pixels, from the first row or column on.
 * @param first - Number of the first one.
 * @returns In the order in which they are set: later ones over earlier ones.
 */
export function paintedSizes(sizes: readonly number[], first = 1): readonly SizedRun[] {
  const runs = runsOf(sizes, first);
  const next = sharing(runs);
  const painted: SizedRun[] = [];
  const paint = (from: number, to: number): void => {
    for (let start = from; start <= to; ) {
      const run = runs[start];
      if (run === undefined) return;
      const between: (readonly [number, number])[] = [];
      let end = start;
      for (let other = next(end, to); other > end; other = next(end, to)) {
        between.push([end + 1, other - 1]);
        end = other;
      }
      const last = runs[end] ?? run;
      painted.push({ ...run, count: last.from + last.count - run.from });
      for (const [inner, until] of between) paint(inner, until);
      start = end + 1;
    }
  };
  paint(0, runs.length - 1);
  return painted;
}

/** Neighbours that are alike, in one run each. */
function runsOf(sizes: readonly number[], first: number): readonly SizedRun[] {
  const runs: SizedRun[] = [];
  sizes.forEach((size, place) => {
    const last = runs[runs.length - 1];
    if (last?.size === size) runs[runs.length - 1] = { ...last, count: last.count + 1 };
    else runs.push({ from: first + place, count: 1, size });
  });
  return runs;
}

/**
 * With which later run of its size the first of a stretch of runs shares its call, so that the whole stretch takes the
 * fewest; with itself where none is better. Every stretch is worked out from those within it.
 */
function sharing(runs: readonly SizedRun[]): (from: number, to: number) => number {
  const count = runs.length;
  const calls = new Uint16Array((count + 2) * (count + 2));
  const shared = new Uint16Array((count + 2) * (count + 2));
  const place = (from: number, to: number): number => from * (count + 2) + to + 1;
  // A stretch that ends before it begins takes none.
  const needed = (from: number, to: number): number => (to < from ? 0 : (calls[place(from, to)] ?? 0));
  for (let from = count - 1; from >= 0; from -= 1) {
    const alike = runs.flatMap(({ size }, at) => (at > from && size === runs[from]?.size ? [at] : []));
    for (let to = from; to < count; to += 1) {
      let fewest = 1 + needed(from + 1, to);
      let best = from;
      for (const other of alike) {
        if (other > to) break;
        const both = needed(from + 1, other - 1) + needed(other, to);
        if (both < fewest) [fewest, best] = [both, other];
      }
      calls[place(from, to)] = fewest;
      shared[place(from, to)] = best;
    }
  }
  return (from, to) => shared[place(from, to)] ?? from;
}
