import { describe, expect, it } from 'vitest';
import { readEntry } from '../../src/lab/readEntry.ts';
import { unitTable } from '../../src/measurement/unitTable.generated.ts';

const read = (cell: unknown, kind: Parameters<typeof readEntry>[1] = 'mass', decimalMark?: 'point' | 'comma') =>
  readEntry(cell as never, kind, { decimalMark });

describe('readEntry', () => {
  it.each([
    ['7.14', 7.14, 3, 3, -2],
    ['7.140 g', 7.14, 4, 4, -3],
    ['7140', 7140, 3, 4, 0],
    ['7140 mg', 7.14, 3, 4, -3],
    ['2.5 kg', 2500, 2, 2, 2],
    ['7.14e3 mg', 7.14, 3, 3, -2],
    ['7.14 × 10^3 mg', 7.14, 3, 3, -2],
    ['  0.050  g ', 0.05, 2, 2, -3],
    [7.1, 7.1, 2, 2, -1],
    ['0', 0, 1, 1, 0],
  ])('reads %j as %d g with its figures', (cell, value, figuresMin, figuresMax, lastPlace) => {
    const found = read(cell);
    expect(found).toMatchObject({
      kind: 'number',
      entry: { figuresMin, figuresMax, lastPlace, isText: typeof cell === 'string' },
    });
    expect(found.kind === 'number' && found.entry.value).toBeCloseTo(value, 12);
  });
  it.each([
    '5 mol',
    '5 mol/L',
    '5 apples',
    '5 °C',
    '5 g/mol',
    '5 %',
    '5 m/s',
    '5 g * cm',
    '5 mol·g^-1',
    '5 s-1',
    '5 g CuSO4·5H2O',
  ])('keeps the number of %j and says that the unit is another', (cell) => {
    expect(read(cell)).toMatchObject({ kind: 'number', unit: 'other kind', entry: { value: 5 } });
  });
  it.each(Object.values(unitTable).flatMap((row) => row.split(' ').map((pair) => pair.split('|')[0])))(
    'takes no known unit for arithmetic: %s',
    (unit) => {
      for (const kind of ['volume', 'mass', 'ratio'] as const) expect(read(`5 ${unit}`, kind).kind).toBe('number');
    },
  );
  it.each(['', ' ', null, undefined])('reads %j as blank', (cell) => {
    expect(read(cell)).toEqual({ kind: 'blank' });
  });
  it.each([
    [true, 'other kind'],
    [new Date(0), 'other kind'],
    ['seven', 'not a number'],
    ['1:10', 'not a number'],
    ['=1+1', 'calculation'],
    ['=0.5*0.195', 'calculation'],
    ['=A1/2', 'calculation'],
    ['=SUM(1)', 'calculation'],
    ['39/400', 'calculation'],
    ['0.5*0.195', 'calculation'],
    ['0.5 x 0.195', 'calculation'],
    ['0.5 × 0.195', 'calculation'],
    ['0.5·0.195 mol', 'calculation'],
    ['1/4', 'calculation'],
    ['1/4 mol', 'calculation'],
    ['0.215*0.1*119', 'calculation'],
    ['0.215 mol*0.1 L', 'calculation'],
    ['12+3', 'calculation'],
    ['15.0 g + 0.1 g', 'calculation'],
    ['12 - 3', 'calculation'],
    ['(0.5*2)', 'calculation'],
    ['2^3', 'calculation'],
    ['0.5*0.195=0.0975', 'calculation'],
    ['249.68?', 'more than a number'],
    ['249.68 g ?', 'more than a number'],
    ['249.68 =', 'more than a number'],
    ['? 249.68', 'more than a number'],
    ['= 249.68', 'more than a number'],
    ['m = 15.0 g', 'more than a number'],
    ['why?', 'not a number'],
    ['2026-05-04', 'not a number'],
    ['1,234', 'two ways'],
    ['1,234 g', 'two ways'],
    [Number.NaN, 'not a number'],
    [Number.POSITIVE_INFINITY, 'not a number'],
  ])('calls %j unreadable: %s', (cell, because) => {
    expect(read(cell)).toEqual({ kind: 'unreadable', because });
  });
  it('is never in doubt where the sheet has a decimal mark', () => {
    expect(read('1,234 g', 'mass', 'comma')).toMatchObject({ kind: 'number', entry: { value: 1.234 } });
    expect(read('1,234', 'mass', 'point')).toMatchObject({ kind: 'number', entry: { value: 1234 } });
    expect(read('0,5', 'mass', 'point')).toMatchObject({ kind: 'number', entry: { value: 0.5 } });
    expect(read('1.234', 'mass', 'comma')).toMatchObject({ kind: 'number', entry: { value: 1234 } });
  });
});
