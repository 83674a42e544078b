import { expect, it } from 'vitest';
import type { CellValue } from '../../src/measurement/cellValue.ts';
import { classColumns as at } from '../../src/workbook/layout.ts';
import { obstaclesIn } from '../../src/workbook/obstaclesIn.ts';

/** Rows 3 to 5 are a block whose formula shows nothing; typed are its check, what to look at and the hint, row by row. */
const found = (...typed: readonly (readonly CellValue[])[]) => {
  const cells: CellValue[][] = [[], [], ...typed.map((three) => [...Array<string>(at.check - 1).fill(''), ...three])];
  return obstaclesIn({ known: false, headingRow: 3, closingRow: 5 }, cells).map(({ cell, text }) => `${cell} ${text}`);
};

it('names each cell in which something stands where a formula has to show, and what stands there', () => {
  expect(found(['', '', ''], ['', 'an idea', ''], [7, '', 'another'])).toEqual(['F4 an idea', 'E5 7', 'G5 another']);
  expect(found([], ['ours'])).toEqual(['E4 ours']);
});
it('takes for typed what only holds the sign of an error, and not the error that the host shows for the check', () => {
  expect(found(['#REF!'], ['#1'])).toEqual(['E4 #1']);
  expect(found(['no #1'])).toEqual(['E3 no #1']);
});
it('names nothing while the host is at work, and nothing where the checks show', () => {
  expect(found(['Loading...'], ['', 'an idea'])).toEqual([]);
  expect(obstaclesIn({ known: true, headingRow: 1, closingRow: 1 }, [['', '', '', '', 'x']])).toEqual([]);
});
