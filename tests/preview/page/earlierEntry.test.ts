import { expect, it } from 'vitest';
import { earlierEntry } from '../../../src/preview/page/earlierEntry.ts';

const cells = Object.fromEntries(
  ['1.25', 'Otter', '=1+1', '1.2', 'otters', 'two\nlines'].map((input, index) => [
    `${index + 1},3`,
    { text: input, input },
  ]),
);
const offered = (row: number, typed: string) => earlierEntry({ cells, rows: 9 }, { row, column: 3 }, typed);

it('is what stands in the column and begins with what was typed, nearest above first and then below', () => {
  expect([offered(7, '1.2'), offered(7, 'O'), offered(3, 'o')]).toEqual(['1.25', 'Otters', 'otter']);
  expect(offered(1, '1')).toBe('1.2');
});
it('is nothing for a blank, a formula, a whole entry, text of several lines, and in another column', () => {
  expect([offered(7, ''), offered(7, '='), offered(7, '1.25'), offered(7, 'two')]).toEqual(Array(4).fill(undefined));
  expect(earlierEntry({ cells, rows: 9 }, { row: 7, column: 2 }, '1')).toBeUndefined();
});
