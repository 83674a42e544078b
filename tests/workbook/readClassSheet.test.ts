import { describe, expect, it } from 'vitest';
import { checkHeadings } from '../../src/lab/texts/feedback.ts';
import { membersTexts } from '../../src/lab/texts/members.ts';
import type { CellValue } from '../../src/measurement/cellValue.ts';
import { classColumns as at, cautionRows, classMarker, classRows } from '../../src/workbook/layout.ts';
import { notYetKnown, readClassSheet } from '../../src/workbook/readClassSheet.ts';

type Row = Partial<Record<keyof typeof at, CellValue>>;

/** Cells of a class sheet from A1 on: the marker, the rows above the blocks, and then these. */
function cells(...rows: readonly Row[]): CellValue[][] {
  const line = (row: Row): CellValue[] =>
    Array.from({ length: Math.max(...Object.values(at)) }, (_, index) => {
      const name = (Object.keys(at) as (keyof typeof at)[]).find((one) => at[one] === index + 1);
      return (name === undefined ? undefined : row[name]) ?? '';
    });
  const above = Array.from({ length: classRows.firstLink }, (_, index) => (index === 0 ? { key: classMarker } : {}));
  // A heading, the cautions and a blank row.
  const between = Array.from({ length: cautionRows + 2 }, () => ({}));
  return [...above, ...between, ...rows].map(line);
}
const firstRow = classRows.firstLink + cautionRows + 3;
const heading = (key: string, row: Row = {}): Row => ({
  key,
  title: `Team ${key}`,
  check: checkHeadings.check,
  ...row,
});
const step = (key: string, name: string, row: Row = {}): Row => ({ key, step: name, ...row });
const blocks = (...rows: readonly Row[]) => readClassSheet(cells(...rows))?.blocks ?? [];
const oneStep = (row: Row) => blocks(heading('a'), step('a', 'moles', row))[0]?.steps[0];

describe('readClassSheet', () => {
  it('reads a row as it stands, by team and step', () => {
    const lastEntry = new Date('2026-03-02T10:00:00Z');
    const [block] = blocks(
      heading('a', { who: ' Ana, Ben ' }),
      step('a', 'moles', {
        entry: ' 0.0600 ',
        check: 'close',
        lookAt: 'Look once more.',
        hint: 'Divide.',
        help: '2',
        who: 'Ana',
        tries: 3,
        lastEntry,
      }),
      { key: 'a' },
    );
    expect(block).toEqual({
      key: 'a',
      team: 'Team a',
      who: 'Ana, Ben',
      whoColumn: at.who,
      checkColumn: at.check,
      headingRow: firstRow,
      closingRow: firstRow + 2,
      known: true,
      steps: [
        {
          row: firstRow + 1,
          key: 'a',
          step: 'moles',
          entry: '0.0600',
          check: 'close',
          lookAt: 'Look once more.',
          hint: 'Divide.',
          helpWanted: 2,
          who: 'Ana',
          tries: 3,
          lastEntry: lastEntry.getTime(),
        },
      ],
    });
  });
  it('is no class sheet without its marker', () => {
    const other = cells(heading('a'), step('a', 'moles'));
    other[0] = [];
    expect(readClassSheet(other)).toBeUndefined();
    expect(readClassSheet([])).toBeUndefined();
    expect(readClassSheet(cells())).toEqual({ blocks: [], linkRows: 1 });
  });
  it('ends a block at its closing row, and where the next team begins', () => {
    const found = blocks(
      heading('a'),
      step('a', 'moles'),
      step('a', 'mass'),
      { key: 'a' },
      {},
      heading('b'),
      step('b', 'moles'),
      heading('c'),
      step('c', 'moles'),
      step('c', 'mass'),
    );
    expect(found.map(({ key, steps, headingRow, closingRow }) => [key, steps.length, headingRow, closingRow])).toEqual([
      ['a', 2, firstRow, firstRow + 3],
      ['b', 1, firstRow + 5, firstRow + 6],
      ['c', 2, firstRow + 7, firstRow + 9],
    ]);
  });
  it('takes rows that people put inside a block for theirs, and passes over a step that has lost its heading', () => {
    const [block] = blocks(heading('a'), step('a', 'moles'), { entry: 'our notes' }, step('a', 'mass'), { key: 'a' });
    expect(block?.steps.map((one) => one.step)).toEqual(['moles', 'mass']);
    expect(block?.steps[1]?.row).toBe(firstRow + 3);
    expect(blocks(step('a', 'moles'), heading('b'), step('b', 'moles')).map(({ key }) => key)).toEqual(['b']);
  });
  it('counts the rows of links above the first block', () => {
    expect(readClassSheet(cells(heading('a')))?.linkRows).toBe(1);
    expect(readClassSheet(cells({}, {}, heading('a')))?.linkRows).toBe(3);
  });
  it('takes the invitation to write who is in a team for an empty cell', () => {
    expect(blocks(heading('a', { who: membersTexts.heading }))[0]?.who).toBe('');
  });
  it('knows nothing of a block whose check is loading or failed, and no hint or feedback of before', () => {
    const row = step('a', 'moles', { check: 'close', lookAt: 'Old.', hint: 'Old.', entry: '5' });
    for (const check of ['Loading...', '#ERROR!', '']) {
      const [block] = blocks(heading('a', { check }), row);
      expect(block?.known).toBe(false);
      expect(block?.steps[0]).toMatchObject({ check: notYetKnown, lookAt: '', hint: '', entry: '5' });
    }
  });
  it('knows the words of a check and no others, and a blank for a row that is not scored', () => {
    for (const check of ['on target', 'close', 'follows', 'not yet', 'unreadable', 'blank', ''])
      expect(oneStep({ check })?.check).toBe(check);
    for (const check of ['On target', '#REF!']) expect(oneStep({ check })?.check).toBe(notYetKnown);
  });
  it('takes help from 0 to 3, and anything else for none', () => {
    const help = (given: CellValue) => oneStep({ help: given })?.helpWanted;
    expect(['0', '1', '3', 3, '4', '-1', '1.5', 'yes', ''].map(help)).toEqual([0, 1, 3, 3, 0, 0, 0, 0, 0]);
  });
  it('takes tries only as a number and the last entry only as a time', () => {
    expect(['4', 4, Number.NaN, ''].map((tries) => oneStep({ tries })?.tries)).toEqual([0, 4, 0, 0]);
    expect(['10:00', 46083, ''].map((lastEntry) => oneStep({ lastEntry })?.lastEntry)).toEqual([
      undefined,
      undefined,
      undefined,
    ]);
  });
});
