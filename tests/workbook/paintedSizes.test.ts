import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { paintedSizes } from '../../src/workbook/paintedSizes.ts';
import { cases } from '../depth.ts';
import { sizesOf } from './sizesOf.ts';

/** The fewest calls by trying: which rows can be had with so many calls, from none on. */
function fewest(heights: readonly number[]): number {
  const colours = [...new Set(heights)];
  let had = new Set([heights.map(() => 0).join()]);
  for (let calls = 0; ; calls += 1) {
    if (had.has(heights.join())) return calls;
    const next = new Set<string>();
    for (const one of had) {
      const now = one.split(',').map(Number);
      for (let from = 0; from < now.length; from += 1) {
        for (let end = from + 1; end <= now.length; end += 1) {
          for (const colour of colours) next.add([...now].fill(colour, from, end).join());
        }
      }
    }
    had = next;
  }
}

describe('paintedSizes', () => {
  it.each([
    { heights: [], calls: 0, why: 'nothing to set' },
    { heights: [20, 20, 20], calls: 1, why: 'one height' },
    { heights: [20, 50, 20, 70, 20], calls: 3, why: 'two rows within one height' },
    { heights: [50, 20, 50, 20, 50], calls: 3, why: 'rows of two heights in turn' },
    { heights: [50, 70, 20, 70, 50], calls: 3, why: 'one within the other' },
  ])('takes $calls calls for $why', ({ heights, calls }) => {
    expect(paintedSizes(heights)).toHaveLength(calls);
  });
  it('begins at the row that is named', () => {
    expect(paintedSizes([20, 50, 20], 7)).toEqual([
      { from: 7, count: 3, size: 20 },
      { from: 8, count: 1, size: 50 },
    ]);
  });
  it('leaves every row at its height, in as few calls as trying finds', () => {
    const few = fc.array(fc.constantFrom(20, 50, 70), { minLength: 1, maxLength: 5 });
    fc.assert(
      fc.property(few, (heights) => {
        const painted = paintedSizes(heights);
        expect(sizesOf(painted, heights.length)).toEqual(heights);
        expect(painted).toHaveLength(fewest(heights));
      }),
      { numRuns: cases({ short: 20, deep: 500 }) },
    );
  });
  it('leaves every row at its height in a long sheet', () => {
    const many = fc.array(fc.constantFrom(6, 26, 45, 81, 153), { maxLength: 120 });
    fc.assert(
      fc.property(many, (heights) => {
        expect(sizesOf(paintedSizes(heights), heights.length)).toEqual(heights);
      }),
    );
  });
});
