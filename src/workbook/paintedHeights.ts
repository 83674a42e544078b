import type { RowHeight } from './workbook.ts';

interface Run {
  readonly row: number;
  readonly rows: number;
  readonly height: number;
}

/**
 * Heights of rows below each other in the fewest calls that set one height for a run of rows: from large to small, as a
 * wall is painted in stripes. Runs of one height share a call where nothing that lies between them has to be set before.
 *
 * @param heights - In pixels, from the first row on.
 * @param first - Number of the first row.
 * @returns In the order in which they are set: later ones over earlier ones.
 */
export function paintedHeights(heights: readonly number[], first: number): readonly RowHeight[] {
  const runs = runsOf(heights, first);
  const next = sharing(runs);
  const painted: RowHeight[] = [];
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
      painted.push({ row: run.row, rows: last.row + last.rows - run.row, height: run.height });
      for (const [inner, until] of between) paint(inner, until);
      start = end + 1;
    }
  };
  paint(0, runs.length - 1);
  return painted;
}

/** Rows below each other that are alike, in one run each. */
function runsOf(heights: readonly number[], first: number): readonly Run[] {
  const runs: Run[] = [];
  heights.forEach((height, place) => {
    const last = runs[runs.length - 1];
    if (last?.height === height) runs[runs.length - 1] = { ...last, rows: last.rows + 1 };
    else runs.push({ row: first + place, rows: 1, height });
  });
  return runs;
}

/**
 * With which later run of its height the first of a stretch of runs shares its call, so that the whole stretch takes the
 * fewest; with itself where none is better. Every stretch is worked out from those within it.
 */
function sharing(runs: readonly Run[]): (from: number, to: number) => number {
  const count = runs.length;
  const calls = new Uint16Array((count + 2) * (count + 2));
  const shared = new Uint16Array((count + 2) * (count + 2));
  const place = (from: number, to: number): number => from * (count + 2) + to + 1;
  // A stretch that ends before it begins takes none.
  const needed = (from: number, to: number): number => (to < from ? 0 : (calls[place(from, to)] ?? 0));
  for (let from = count - 1; from >= 0; from -= 1) {
    const alike = runs.flatMap(({ height }, at) => (at > from && height === runs[from]?.height ? [at] : []));
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
