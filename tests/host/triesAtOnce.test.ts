import { beforeEach, describe, expect, it } from 'vitest';
import type { StandIn } from '../../src/preview/standin/openStandIn.ts';
import { classColumns as at } from '../../src/workbook/layout.ts';
import { open, savedWith, stepRow, typeIn } from './bench.ts';
import { valueAt } from './cells.ts';
import { setup } from './setup.ts';

/* Tries on a host that takes its time: each run of the trigger begins 0.2 s after its edit and writes 0.5 s later. */
const slow = { seed: 1, triggerStartsMs: [200, 200], triggerTakesMs: [500, 500], functionTakesMs: [100, 100] } as const;
const sheet = 'Fern class';
const saved = savedWith(setup);
let host: StandIn;
beforeEach(() => {
  host = open({ saved, troubles: { slow } });
  settle();
});
const settle = (): void => {
  while (!host.isIdle) host.passTime(100);
};
const row = (step: string, key = 'c1-t1') => stepRow(host, { sheet, key, step });
const enter = (line: number, text: string) => typeIn(host, { sheet, cells: [[line, at.entry, text]] });
const tries = (line: number) => valueAt(host, { sheet, row: line, column: at.tries });

describe('tries that are counted at once', () => {
  it('are all there where they are of different rows', () => {
    const lines = [row('molar mass'), row('moles of solute'), row('molar mass', 'c1-t2')];
    for (const line of lines) enter(line, '1.5');
    settle();
    expect(lines.map(tries)).toEqual(['1', '1', '1']);
  });
  it('of one row may be one too few, and are never in another row nor lowered', () => {
    const line = row('molar mass');
    enter(line, '1');
    host.passTime(100);
    enter(line, '2');
    settle();
    expect(tries(line)).toBe('1');
    enter(line, '3');
    settle();
    expect(tries(line)).toBe('2');
    expect([tries(line - 1), tries(line + 1)].every((other) => ['', 'tries'].includes(other.toLowerCase()))).toBe(true);
  });
  it('of one row are all there where one comes after the other', () => {
    const line = row('molar mass');
    for (const text of ['1', '2', '3']) {
      enter(line, text);
      settle();
    }
    expect(tries(line)).toBe('3');
    expect(host.triggerErrors).toEqual([]);
  });
});
