import { describe, expect, it } from 'vitest';
import { fillDown } from '../../../src/preview/page/fillDown.ts';
import type { CellView, SheetView } from '../../../src/preview/view.ts';

const sheet: SheetView = {
  id: 1,
  name: 'Sheet1',
  hidden: false,
  rows: 20,
  columns: 4,
  frozenRows: 0,
  frozenColumns: 0,
  columnWidths: [],
  rowHeights: [],
  hiddenColumns: [],
  hiddenRows: [5],
  merges: [],
  cells: {
    '2,1': { text: '3', input: '=B2*$C$1' },
    '2,2': { text: 'a', input: 'a' },
    '3,1': { text: 'b', input: 'b' },
  } satisfies Record<string, CellView>,
};
const texts = (cells: ReturnType<typeof fillDown>) => cells.map(({ row, column, text }) => [row, column, text]);

describe('fillDown', () => {
  it('fills a block from its first row, formulas going along, past hidden rows', () => {
    expect(texts(fillDown(sheet, { top: 2, left: 1, bottom: 6, right: 2 }))).toEqual([
      [3, 1, '=B3*$C$1'],
      [3, 2, 'a'],
      [4, 1, '=B4*$C$1'],
      [4, 2, 'a'],
      [6, 1, '=B6*$C$1'],
      [6, 2, 'a'],
    ]);
  });
  it('fills one cell from the cell above', () => {
    expect(texts(fillDown(sheet, { top: 3, left: 1, bottom: 3, right: 1 }))).toEqual([[3, 1, '=B3*$C$1']]);
  });
  it('goes on with the last row of a block down to where its handle was dragged', () => {
    expect(texts(fillDown(sheet, { top: 2, left: 1, bottom: 3, right: 1 }, 6))).toEqual([
      [4, 1, 'b'],
      [6, 1, 'b'],
    ]);
  });
});
