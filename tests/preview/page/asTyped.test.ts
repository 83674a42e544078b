import { expect, it } from 'vitest';
import { asTyped } from '../../../src/preview/page/asTyped.ts';
import { clipOf } from '../../../src/preview/page/clipboard.ts';
import { fillDown } from '../../../src/preview/page/fillDown.ts';
import type { SheetView } from '../../../src/preview/view.ts';

const sheet = {
  cells: { '1,1': { text: 'old', input: 'old', bold: true }, '2,1': { text: 'shown', input: '', spilled: true } },
  hiddenRows: [],
  hiddenColumns: [],
} as unknown as SheetView;
const block = { top: 1, left: 1, bottom: 2, right: 1 };

it('takes what was typed a moment ago for what stands in a cell, and leaves its looks', () => {
  const typed = asTyped(sheet, new Map([['1,1', '=A9*2']]));
  expect(typed.cells['1,1']).toEqual({ text: '=A9*2', input: '=A9*2', bold: true, spilled: false });
  expect(fillDown(typed, block)).toEqual([{ row: 2, column: 1, text: '=A10*2' }]);
  expect(sheet.cells['1,1']?.input).toBe('old');
});
it('copies a text without the mark that made it one, and what was typed over a spilled cell', () => {
  const typed = asTyped(
    sheet,
    new Map([
      ['1,1', "'007"],
      ['2,1', 'mine'],
    ]),
  );
  expect(clipOf(typed, block)).toMatchObject({ text: '007\nmine', inputs: [["'007"], ['mine']] });
});
it('is the sheet itself where nothing is on its way', () => {
  expect(asTyped(sheet, new Map())).toBe(sheet);
});
