import { describe, expect, it } from 'vitest';
import { errorText, shortErrorText } from '../../src/errors/errorText.ts';
import type { CellValue } from '../../src/measurement/cellValue.ts';
import { comparedValues } from '../../src/measurement/comparedValues.ts';
import { readMeasure } from '../../src/measurement/readMeasure.ts';
import { succeeded } from '../chemistry/succeeded.ts';

const compared = (one: CellValue, other: CellValue) =>
  comparedValues(
    { name: 'measured', measure: succeeded(readMeasure(one, 'measured')) },
    { name: 'accepted', measure: succeeded(readMeasure(other, 'accepted')) },
  );

describe('comparedValues', () => {
  it.each([
    ['0.095', 0.1, 0.095, 0.1],
    ['0.095 mol/L', '0.100 mol/L', 0.095, 0.1],
    ['95 mmol/L', '0.1 M', 0.095, 0.1],
    ['250 mL', '0.25 L', 250, 250],
    ['119 g/mol', '119.002 g mol-1', 119, 119.002],
    ['3 %', '4 %', 3, 4],
    // A bare number counts in the unit of the other.
    ['0.095 L', 0.1, 0.095, 0.1],
    [95, '100 mg', 95, 100],
  ])('compares %s and %s as %d and %d', (first, second, one, other) => {
    expect(compared(first, second)).toEqual({ ok: true, value: { one, other } });
  });
  it('refuses units that measure different things, and names both', () => {
    const found = compared('5 g', '5 mL');
    expect(!found.ok && errorText(found.error)).toBe(
      '“5 mL”, a volume, can’t be used for the accepted value. Give a mass, like the measured value.',
    );
    expect(!found.ok && shortErrorText(found.error)).toBe('⚠ units of two kinds');
  });
  it.each([
    ['5 apples', 5],
    [5, '5 apples'],
  ])('refuses a word that is no unit: %s, %s', (first, second) => {
    const found = compared(first, second);
    expect(found).toMatchObject({ ok: false, error: { code: 'unit-unknown', received: '“5 apples”' } });
    expect(!found.ok && shortErrorText(found.error)).toBe('⚠ unit: apples?');
  });
});

describe('readMeasure', () => {
  it('keeps the number as it stands beside the converted one', () => {
    expect(succeeded(readMeasure('7140 mg', 'm'))).toMatchObject({
      number: { value: 7140, lastPlace: 0 },
      converted: { value: 7.14, decimal: '7.140', lastPlace: -3 },
      unit: { kind: 'mass', symbol: 'mg', power: -3 },
      unitTyped: 'mg',
    });
    expect(succeeded(readMeasure('5 apples', 'm'))).toMatchObject({ unit: undefined, unitTyped: 'apples' });
    expect(succeeded(readMeasure(0.5, 'm'))).toMatchObject({ number: { value: 0.5, isText: false }, unitTyped: '' });
  });
  it.each([true, new Date(0), '', 'x', 'mL', '1,234 g', 'x'.repeat(101), '1e308 kg'])('refuses %s', (cell) => {
    expect(readMeasure(cell, 'm').ok).toBe(false);
  });
});
