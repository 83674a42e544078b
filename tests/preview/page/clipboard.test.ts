import { describe, expect, it } from 'vitest';
import { clipOf, pasteInto } from '../../../src/preview/page/clipboard.ts';
import type { SheetView } from '../../../src/preview/view.ts';

const sheet = {
  rows: 9,
  columns: 5,
  hiddenRows: [],
  hiddenColumns: [2],
  cells: {
    '1,1': { text: '0.400', input: '0.400' },
    '1,2': { text: 'hidden', input: 'hidden' },
    '1,3': { text: '2', input: '=A1*5' },
    '2,1': { text: 'spilled', input: '', spilled: true },
  },
} as unknown as SheetView;

describe('clipOf', () => {
  it('copies what is seen: text, without hidden columns', () => {
    expect(clipOf(sheet, { top: 1, left: 1, bottom: 2, right: 3 }).text).toBe('0.400\t2\nspilled\t');
  });
});
describe('pasteInto', () => {
  const clip = clipOf(sheet, { top: 1, left: 1, bottom: 1, right: 3 });
  it('keeps a formula a formula and moves its references', () => {
    const { cells } = pasteInto({ top: 4, left: 1, bottom: 4, right: 1 }, clip.text, clip);
    expect(cells).toEqual([
      { row: 4, column: 1, text: '0.400' },
      { row: 4, column: 2, text: '=A4*5' },
    ]);
  });
  it('takes text from elsewhere as it stands', () => {
    const { cells } = pasteInto({ top: 4, left: 1, bottom: 4, right: 1 }, '=A1*5', clip);
    expect(cells).toEqual([{ row: 4, column: 1, text: '=A1*5' }]);
  });
  it('fills a block with one value', () => {
    const { cells, rows, columns } = pasteInto({ top: 2, left: 1, bottom: 3, right: 2 }, '7', undefined);
    expect([rows, columns, cells.map(({ text }) => text)]).toEqual([2, 2, ['7', '7', '7', '7']]);
  });
});
