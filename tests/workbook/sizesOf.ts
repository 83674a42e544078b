import type { SizedRun } from '../../src/workbook/workbook.ts';

/** What so many rows or columns measure once their runs were set, one after the other; 0 where none names them. */
export function sizesOf(runs: readonly SizedRun[], all: number): readonly number[] {
  const sizes = Array.from({ length: all }, () => 0);
  for (const { from, count, size } of runs) sizes.fill(size, from - 1, from - 1 + count);
  return sizes;
}
