import { describe, expect, it } from 'vitest';
import { type RecordEntry, recordFields } from '../../src/lab/record/recordEntry.ts';
import { recordWords } from '../../src/lab/texts/record.ts';
import { layoutFits } from '../../src/workbook/layoutFits.ts';
import { planRecordSheet } from '../../src/workbook/planRecordSheet.ts';
import { readRecordSheet, rowFor } from '../../src/workbook/readRecordSheet.ts';

const plan = planRecordSheet();
const headings = recordFields.map((field) => recordWords.labels[field]);
const entry = Object.fromEntries(recordFields.map((field) => [field, `${field} words`])) as RecordEntry;
const line = recordFields.map((field) => entry[field]);
const sheet = (...lines: readonly (readonly string[])[]) => [['Record'], ['a note'], [], headings, ...lines];

describe('planRecordSheet', () => {
  it('writes nothing where rows of the record stand, however often it is built', () => {
    const [lines] = plan.writable;
    for (const { row, cells } of plan.blocks) expect(row + cells.length - 1).toBeLessThan(lines?.row ?? 0);
    expect(layoutFits(plan, sheet(line, line))).toBe('same');
  });
  it('has a heading for each field, and no two alike', () => {
    expect(new Set(headings).size).toBe(recordFields.length);
  });
});

describe('readRecordSheet', () => {
  it('reads rows back, blank lines between them left out', () => {
    const reading = readRecordSheet(sheet(line, [], ['2026-03-01', 'Moss class']));
    expect(reading?.rows.map(({ row }) => row)).toEqual([5, 7]);
    expect(reading?.rows[0]?.entry).toEqual(entry);
    expect(reading?.freeRow).toBe(8);
    expect(reading && rowFor(reading, { day: '2026-03-01', className: 'Moss class' })?.row).toBe(7);
    expect(reading && rowFor(reading, { day: '2026-03-02', className: 'Moss class' })).toBeUndefined();
  });
  it('goes by the headings, wherever a column was moved to', () => {
    const reading = readRecordSheet([['x', ...headings].reverse(), ['x', ...line].reverse()]);
    expect(reading?.rows[0]?.entry).toEqual(entry);
  });
  it('reads nothing by guess where a heading is gone', () => {
    expect(readRecordSheet([headings.slice(1), line.slice(1)])).toBeUndefined();
  });
});
