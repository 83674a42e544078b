import { describe, expect, it } from 'vitest';
import { dotRows } from '../../src/sidebar/classNow/dotRows.ts';
import { texts } from '../../src/sidebar/texts.ts';

const line = { length: 200, apart: 10 };

describe('dotRows', () => {
  it('ends the line at a round number and places values in proportion', () => {
    expect(dotRows([1, 4], line)).toEqual({
      dots: [
        { at: 40, row: 0 },
        { at: 160, row: 0 },
      ],
      end: 5,
      rows: 1,
    });
    expect(dotRows([3000], line).end).toBe(10_000);
    expect(dotRows([0], line)).toMatchObject({ dots: [{ at: 0, row: 0 }], end: 1 });
  });
  it('puts dots that would touch above each other, and loses none', () => {
    const { dots, rows } = dotRows([2, 2, 2.1, 2.2, 4.9], line);
    expect(dots.map(({ row }) => row)).toEqual([0, 1, 2, 3, 0]);
    expect(rows).toBe(4);
  });
});

describe('the spread in words', () => {
  it('says how many, from where to where, and where the middle is', () => {
    expect(texts.classNow.spread.words([1.234])).toBe('One team so far: 1.2 %.');
    expect(texts.classNow.spread.words([0.4, 1.2, 6.2])).toBe('3 teams so far: from 0.4 % to 6.2 %, median 1.2 %.');
    expect(texts.classNow.spread.words([1, 2, 3, 10])).toContain('median 2.5 %');
  });
});
