import { describe, expect, it } from 'vitest';
import { followedRow } from '../../../src/preview/page/followedRow.ts';
import type { SheetView } from '../../../src/preview/view.ts';

/** A sheet whose first column holds these words; the second is the one typed in. */
const sheet = (words: readonly string[]): SheetView =>
  ({
    rows: words.length,
    columns: 2,
    cells: Object.fromEntries(words.map((word, index) => [`${index + 1},1`, { text: word, input: word }])),
  }) as unknown as SheetView;
const team = ['team', 'mass', 'volume'];

describe('followedRow', () => {
  it('stays above a row that was added', () => {
    expect(followedRow(sheet([...team, ...team]), sheet([...team, 'new', ...team]), { row: 2, column: 2 })).toBe(2);
  });
  it('goes down with its row, though another team’s row reads the same', () => {
    expect(followedRow(sheet([...team, ...team]), sheet([...team, 'new', ...team]), { row: 5, column: 2 })).toBe(6);
  });
  it('goes up when rows above are removed', () => {
    expect(followedRow(sheet(['a', 'b', ...team]), sheet(team), { row: 5, column: 2 })).toBe(3);
  });
  it('finds a row that was ordered elsewhere', () => {
    expect(followedRow(sheet(['c', 'a', 'b']), sheet(['a', 'b', 'c']), { row: 1, column: 2 })).toBe(3);
  });
  it('does not take another team’s row for one that was removed', () => {
    expect(
      followedRow(sheet([...team, ...team]), sheet(['team', 'volume', ...team]), { row: 2, column: 2 }),
    ).toBeUndefined();
  });
});
