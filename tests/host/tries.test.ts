import { beforeEach, describe, expect, it } from 'vitest';
import type { StandIn } from '../../src/preview/standin/openStandIn.ts';
import { open, savedWith, stepRow, typeIn } from './bench.ts';
import { sheetState, valueAt } from './cells.ts';
import { setup } from './setup.ts';

const sheet = 'Fern class';
const saved = savedWith(setup);

let host: StandIn;
let first: number;
beforeEach(() => {
  host = open({ saved });
  first = stepRow(host, { sheet, key: 'c1-t1', step: 'molar mass' });
});

const tries = (row: number) => valueAt(host, { sheet, row, column: 10 });
const type = (row: number, text: string) => typeIn(host, { sheet, cells: [[row, 3, text]] });

describe('onEdit', () => {
  it('counts an entry and notes when it was typed', () => {
    type(first, '119');
    expect(tries(first)).toBe('1');
    // A serial number with a fraction: day and time.
    expect(Number(valueAt(host, { sheet, row: first, column: 11 }))).toBeGreaterThan(45_000);
    expect(host.triggerErrors).toEqual([]);
  });

  it('counts only what is new: not a blank, not the same again', () => {
    type(first, '119');
    type(first, '119');
    type(first, '');
    type(first, '119');
    expect(tries(first)).toBe('1');
    type(first, '120');
    expect(tries(first)).toBe('2');
  });

  it('counts each new row of a paste once, over several teams, and no row between them', () => {
    type(first + 1, '5');
    const rows = sheetState(host, sheet).rows;
    const last = stepRow(host, { sheet, key: 'c1-t2', step: 'moles of solute' });
    typeIn(host, {
      sheet,
      cells: Array.from({ length: last - first + 1 }, (_, index) => [
        first + index,
        3,
        index === 1 ? '5' : `1${index}`,
      ]),
    });
    expect(rows).toBeGreaterThan(last);
    expect(tries(first)).toBe('1');
    expect(tries(first + 1)).toBe('1');
    expect(tries(last)).toBe('1');
    const heading = stepRow(host, { sheet, key: 'c1-t2', step: 'cautions read' }) - 1;
    expect(tries(heading)).toBe('');
    expect(tries(heading - 1)).toBe('');
    expect(host.triggerErrors).toEqual([]);
  });

  it('is never lower after an undo and never in another row', () => {
    type(first, '1');
    type(first, '2');
    host.undo('student');
    expect(Number(tries(first))).toBeGreaterThanOrEqual(2);
    expect(tries(first + 1)).toBe('');
  });

  it('goes with its row when rows are sorted, and counts nothing then', () => {
    type(first, '9');
    type(first, '8');
    type(first + 1, '7');
    host.sortRows('teacher', sheetState(host, sheet).id, { row: first, column: 1, rows: 3, columns: 14 }, 3, true);
    const found = [0, 1, 2].map((down) => [
      valueAt(host, { sheet, row: first + down, column: 3 }),
      tries(first + down),
    ]);
    expect(found).toContainEqual(['8', '2']);
    expect(found).toContainEqual(['7', '1']);
    type(stepRow(host, { sheet, key: 'c1-t1', step: 'mass of solute' }), '6');
    expect(host.triggerErrors).toEqual([]);
  });

  it('takes no notice of a block that covers the questions too', () => {
    typeIn(host, {
      sheet,
      cells: [
        [first, 2, 'question'],
        [first, 3, '5'],
      ],
    });
    expect(tries(first)).toBe('');
  });

  it('does nothing on other sheets and in other columns, with few calls', () => {
    const notes = host.book.addSheet('Notes', 0).name;
    host.resetCounts();
    typeIn(host, { sheet: 'Plan', seat: 'teacher', cells: [[6, 2, 'x']] });
    typeIn(host, { sheet: notes, cells: [[first, 3, '119']] });
    typeIn(host, { sheet, cells: [[first, 9, 'we']] });
    const calls = Object.values(host.counts.host).reduce((sum, count) => sum + count, 0);
    expect(calls).toBeLessThan(16);
    expect(host.counts.host['Range.setValues']).toBeUndefined();
    expect(tries(first)).toBe('');
  });

  it('takes few calls for an entry and one check', () => {
    host.resetCounts();
    type(first, '119');
    const calls = Object.values(host.counts.host).reduce((sum, count) => sum + count, 0);
    console.log(`host calls of one entry: ${calls}`);
    expect(calls).toBeLessThan(20);
    expect(host.counts.functions).toEqual({ CHECKTEAM: 1 });
  });

  it('asks for no lock and flushes nothing, so a build or a class that types at once costs no count', () => {
    host.holdLock(true);
    host.resetCounts();
    type(first, '119.00');
    expect(tries(first)).toBe('1');
    expect(valueAt(host, { sheet, row: first, column: 5 })).toBe('on target');
    const calls = host.counts.host;
    expect(Object.keys(calls).filter((name) => /Lock|flush/.test(name))).toEqual([]);
    expect(calls['Range.getValue']).toBeUndefined();
    expect(calls['Range.getValues']).toBe(2);
    expect(calls['Range.setValues']).toBe(2);
    expect(host.triggerErrors).toEqual([]);
    host.holdLock(false);
  });

  it('keeps an entry that looks like a formula from becoming one anywhere', () => {
    type(first, '=1+1');
    type(first + 1, '+5');
    type(first + 2, "'@x");
    expect(valueAt(host, { sheet, row: first, column: 3 })).toBe('=1+1');
    for (const row of [first, first + 1, first + 2]) {
      expect(tries(row)).toBe('1');
      const content = host.book.cell(sheetState(host, sheet), row, 13).content;
      expect(content?.kind).toBe('text');
    }
  });
});
