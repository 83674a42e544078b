/** Where a dot stands: along the line, and in which row above it. */
interface Dot {
  readonly at: number;
  readonly row: number;
}

const ends = [1, 2, 5, 10, 20, 50, 100, 200, 500, 1000];

/** Places values along a line that begins at 0 and ends at a round number; dots that would touch are put above each other. */
export function dotRows(
  values: readonly number[],
  { length, apart }: { readonly length: number; readonly apart: number },
): { readonly dots: readonly Dot[]; readonly end: number; readonly rows: number } {
  const largest = Math.max(...values);
  const end = ends.find((one) => one >= largest) ?? 10 ** Math.ceil(Math.log10(largest));
  const lastInRow: number[] = [];
  const dots = [...values]
    .sort((one, other) => one - other)
    .map((value): Dot => {
      const at = (value / end) * length;
      const free = lastInRow.findIndex((last) => at - last >= apart);
      const row = free < 0 ? lastInRow.length : free;
      lastInRow[row] = at;
      return { at, row };
    });
  return { dots, end, rows: lastInRow.length };
}
