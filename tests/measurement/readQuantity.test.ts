import Big from 'big.js';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { errorText } from '../../src/errors/errorText.ts';
import { quoted } from '../../src/errors/quoted.ts';
import { type QuantityKind, readQuantity } from '../../src/measurement/readQuantity.ts';
import { unitsOfKind } from '../../src/measurement/unit.ts';
import { cases } from '../depth.ts';

const defaults = { volume: 'mL', mass: 'g', amount: 'mol', concentration: 'mol/L', density: 'g/mL' } as const;
const everyUnit = (Object.keys(defaults) as (keyof typeof defaults)[]).flatMap((kind) =>
  unitsOfKind(kind)
    .split(/, | or /)
    .map((unit) => ({ kind, unit })),
);
const numberAndUnit = (kind: QuantityKind, typed: string) => readQuantity(typed, kind, 'value');

describe('readQuantity', () => {
  it('converts in decimal, so that no digit changes', () => {
    const digits = fc.integer({ min: 1, max: 99_999_999 });
    fc.assert(
      fc.property(
        digits,
        fc.integer({ min: 0, max: 9 }),
        fc.constantFrom(...everyUnit),
        (number, decimals, { kind, unit }) => {
          const typed = new Big(number).div(new Big(10).pow(decimals)).toFixed(decimals);
          const read = numberAndUnit(kind, `${typed} ${unit}`);
          const one = numberAndUnit(kind, `1 ${unit}`);
          if (!read.ok || !one.ok) throw new Error(`${typed} ${unit} was refused`);
          expect(new Big(read.value.decimal).eq(new Big(typed).times(one.value.decimal))).toBe(true);
          expect(read.value.value).toBe(Number(read.value.decimal));
        },
      ),
      { numRuns: cases({ short: 300, deep: 7500 }) },
    );
  });

  it.each([
    ['18.60 L', 'volume', 18600],
    ['200 mL', 'volume', 200],
    ['200mL', 'volume', 200],
    ['400 µL', 'volume', 0.4],
    ['400 μL', 'volume', 0.4],
    ['400 uL', 'volume', 0.4],
    ['2,5 l', 'volume', 2500],
    ['5 ml', 'volume', 5],
    ['1 litre', 'volume', 1000],
    ['1 liter', 'volume', 1000],
    ['1 dm^3', 'volume', 1000],
    ['1 dm3', 'volume', 1000],
    ['5 cm³', 'volume', 5],
    ['2 x 10^3 mL', 'volume', 2000],
    ['5 mmol/L', 'concentration', 0.005],
    ['0.3 M', 'concentration', 0.3],
    ['5 mol L⁻¹', 'concentration', 5],
    ['5 mol·L^-1', 'concentration', 5],
    ['5 mol dm-3', 'concentration', 5],
    ['0,2 mol·dm^-3', 'concentration', 0.2],
    ['250 µM', 'concentration', 0.00025],
    ['7.3 g', 'mass', 7.3],
    ['7.3\u200b', 'mass', 7.3],
    ['7.3\u200b g', 'mass', 7.3],
    ['7.3 g\u200b', 'mass', 7.3],
    ['2.5 kg', 'mass', 2500],
    ['40.0 mg', 'mass', 0.04],
    ['1.19 g/mL', 'density', 1.19],
    ['1005.3 kg/m^3', 'density', 1.0053],
    ['1190 g/L', 'density', 1.19],
    ['0.2 mole/litre', 'concentration', 0.2],
    ['0.2 moldm⁻³', 'concentration', 0.2],
    ['6.00x10-2 mol/L', 'concentration', 0.06],
    ['2.5 e-2 mol', 'amount', 0.025],
    ['98 %', 'percent', 98],
    ['37 % w/w', 'percent', 37],
    ['0.9%', 'percent', 0.9],
    ['98', 'percent', 98],
    ['0.25 mol', 'amount', 0.25],
    ['5 mmol', 'amount', 0.005],
  ] as const)('reads %s as a %s of %d', (typed, kind, value) => {
    expect(readQuantity(typed, kind, 'value')).toMatchObject({ ok: true, value: { value, typed } });
  });
  it('keeps the figures that were typed through a conversion', () => {
    expect(readQuantity('18.60 L', 'volume', 'v')).toMatchObject({
      ok: true,
      value: { decimal: '18600', figures: 4, lastPlace: 1, unit: 'L' },
    });
    expect(readQuantity('0.050 L', 'volume', 'v')).toMatchObject({
      ok: true,
      value: { decimal: '50', figures: 2, lastPlace: 0 },
    });
    expect(readQuantity('7.140 g', 'mass', 'm')).toMatchObject({ ok: true, value: { decimal: '7.140', figures: 4 } });
  });

  it('names both kinds for a unit of another kind', () => {
    const read = readQuantity('2.5 kg', 'volume', 'volume');
    expect(!read.ok && errorText(read.error)).toBe(
      '“2.5 kg”, a mass, can’t be used for the volume. Give a volume such as 200 mL.',
    );
  });
  it.each(Object.keys(defaults) as (keyof typeof defaults)[])(
    'refuses every unit of another kind where a %s belongs',
    (kind) => {
      for (const other of everyUnit.filter((unit) => unit.kind !== kind)) {
        expect(readQuantity(`5 ${other.unit}`, kind, 'x')).toMatchObject({
          ok: false,
          error: { code: 'unit-other-kind' },
        });
      }
    },
  );
  it.each([
    ['5 gal', 'volume', 'L, dL, cL, mL, µL, dm³, cm³ or m³'],
    ['5 oz', 'mass', 'kg, g, mg, µg or ng'],
    ['5 N', 'concentration', 'mol/L'],
    ['5 constructor', 'volume', 'mL'],
    ['5 __proto__', 'mass', 'g'],
    ['5 g g', 'mass', 'g'],
    ['1 ML', 'volume', 'mL'],
  ] as const)('lists the units of the kind for %s', (typed, kind, listed) => {
    const read = readQuantity(typed, kind, 'x');
    expect(read).toMatchObject({ ok: false, error: { code: 'unit-unknown' } });
    expect(!read.ok && read.error.advice).toContain(listed);
  });
  it.each([0.98, 1, 0.05, '0.98', '1', -0.5])('shows both readings of a bare %s as a percentage', (typed) => {
    expect(readQuantity(typed, 'percent', 'purity_percent')).toMatchObject({
      ok: false,
      error: { code: 'percent-two-readings' },
    });
  });
  it.each([
    [0.98, '0.98', '98'],
    ['0.07', '“0.07”', '7'],
    ['5e-30', '“5e-30”', '5e-28'],
    [-0.5, '-0.5', '-50'],
    ['1', '“1”', '100'],
  ])('says what a bare percentage of %s could be', (typed, received, hundredfold) => {
    const both = `${Number(typed)} % or ${hundredfold} %`;
    expect(readQuantity(typed, 'percent', 'purity_percent')).toEqual({
      ok: false,
      error: {
        code: 'percent-two-readings',
        argument: 'purity_percent',
        expected: both,
        received,
        advice: 'Type it as text with its sign, such as "98 %".',
        brief: both,
      },
    });
  });
  it.each([0, 1.01, 98, '0', '1.01', '0.5 %', '1 %'])('takes %s as one percentage only', (typed) => {
    expect(readQuantity(typed, 'percent', 'x')).toMatchObject({
      ok: true,
      value: { value: Number.parseFloat(`${typed}`) },
    });
  });
  it.each([0.5, 1])('takes a bare %d of every other kind', (typed) => {
    for (const kind of Object.keys(defaults) as (keyof typeof defaults)[]) {
      expect(readQuantity(typed, kind, 'x')).toMatchObject({ ok: true, value: { value: typed, unit: '' } });
    }
  });

  it.each([
    ['volume', 'a volume such as 200 mL'],
    ['mass', 'a mass such as 2.5 g'],
    ['amount', 'an amount such as 0.25 mol'],
    ['concentration', 'a concentration such as 0.3 mol/L'],
    ['density', 'a density such as 1.05 g/mL'],
    ['percent', 'a percentage such as 98 %'],
  ] as const)('asks for %s where there is none', (kind, wanted) => {
    for (const cell of [true, new Date(0), '', 'x', 'mL', '#N/A', 'mL 5', '1.2.3 mL', undefined]) {
      expect(readQuantity(cell, kind, 'given')).toEqual({
        ok: false,
        error: {
          code: 'quantity-expected',
          argument: 'given',
          received: quoted(cell),
          advice: `Give ${wanted}.`,
          brief: wanted.replace(/ such as .*/, ''),
        },
      });
    }
  });
  it.each([
    ['volume', 'a volume', '2.5 kg', 'a mass', 'volume, not kg'],
    ['mass', 'a mass', '5 mol', 'an amount', 'mass, not mol'],
    ['amount', 'an amount', '5 mM', 'a concentration', 'amount, not mM'],
    ['concentration', 'a concentration', '5 g/mL', 'a density', 'concentration, not g/mL'],
    ['concentration', 'a concentration', '5 g/L', 'a mass concentration', 'concentration, not g/L'],
    ['concentration', 'a concentration', '1 mol/kg', 'a molality', 'concentration, not mol/kg'],
    ['mass', 'a mass', '119 g/mol', 'a molar mass', 'mass, not g/mol'],
    ['density', 'a density', '98 %', 'a percentage', 'density, not %'],
    ['percent', 'a percentage', '5 mL', 'a volume', 'percentage, not mL'],
  ] as const)('says that it wants %s and got another kind', (kind, one, typed, other, brief) => {
    const read = readQuantity(typed, kind, 'given');
    expect(read).toMatchObject({
      ok: false,
      error: { code: 'unit-other-kind', argument: 'given', received: `“${typed}”, ${other},`, brief },
    });
    expect(!read.ok && read.error.advice).toMatch(new RegExp(`^Give ${one} such as `));
  });
  it.each([
    ['5 gal', 'volume', 'a volume in L, dL, cL, mL, µL, dm³, cm³ or m³', 'gal'],
    ['5 parts', 'percent', 'a percentage in %', 'parts'],
    ['5 barleycorns', 'volume', 'a volume in L, dL, cL, mL, µL, dm³, cm³ or m³', 'barleycorns'],
    ['5 tablespoons', 'volume', 'a volume in L, dL, cL, mL, µL, dm³, cm³ or m³', 'tablespoons'],
    ['5 barley-corns', 'volume', 'a volume in L, dL, cL, mL, µL, dm³, cm³ or m³', 'barley-corns'],
    ['5 troy  ounces', 'mass', 'a mass in kg, g, mg, µg or ng', 'troy  ounces'],
    ['5 troy   ounces', 'mass', 'a mass in kg, g, mg, µg or ng', 'troy   ounce…'],
  ] as const)('does not know the unit of %s', (typed, kind, wanted, brief) => {
    expect(readQuantity(typed, kind, 'given')).toEqual({
      ok: false,
      error: {
        code: 'unit-unknown',
        argument: 'given',
        received: `“${typed}”`,
        advice: `Give ${wanted}.`,
        brief,
      },
    });
  });
  it.each([Number.NaN, Number.POSITIVE_INFINITY])('refuses a cell that holds %d', (cell) => {
    for (const kind of ['volume', 'percent'] as const) expect(readQuantity(cell, kind, 'given').ok).toBe(false);
  });
  it('reads text of 100 characters and no longer', () => {
    const spaced = (length: number) => `5${' '.repeat(length - 3)}mL`;
    expect(readQuantity(spaced(100), 'volume', 'v')).toMatchObject({ ok: true, value: { value: 5, unit: 'mL' } });
    expect(readQuantity(spaced(101), 'volume', 'v')).toMatchObject({ ok: false, error: { code: 'quantity-expected' } });
  });
  it.each([
    ['0.5 kg', { value: 500, decimal: '500', figures: 1, lastPlace: 2, ambiguousZeros: 0 }],
    ['1200 kg', { value: 1.2e6, decimal: '1200000', figures: 4, lastPlace: 3, ambiguousZeros: 2 }],
    ['250 mg', { value: 0.25, decimal: '0.250', figures: 3, lastPlace: -3, ambiguousZeros: 1 }],
    ['1.5e3 mg', { value: 1.5, decimal: '1.5', figures: 2, lastPlace: -1, ambiguousZeros: 0 }],
    ['1e310 mg', { value: 1e307, figures: 1, lastPlace: 307, ambiguousZeros: 0 }],
    ['-0.50 kg', { value: -500, decimal: '-500', figures: 2, lastPlace: 1, ambiguousZeros: 0 }],
    ['0.0 kg', { value: 0, decimal: '0', figures: 1, lastPlace: 2, ambiguousZeros: 0 }],
  ])('moves only the decimal mark of %s', (typed, read) => {
    const unit = typed.replace(/^\S+ /, '');
    expect(readQuantity(` ${typed} `, 'mass', 'm')).toMatchObject({
      ok: true,
      value: { ...read, unit, isText: true, typed: ` ${typed} ` },
    });
  });
  it('refuses a conversion that no number can hold', () => {
    const read = readQuantity('1e308 kg', 'mass', 'm');
    expect(!read.ok && errorText(read.error)).toBe(
      '“1e308 kg” can’t be used for the m: it must be between 10^-300 and 10^300. Check its power of ten.',
    );
    expect(readQuantity('1e-320 µg', 'mass', 'm')).toMatchObject({ ok: false, error: { code: 'number-out-of-range' } });
  });
  it('passes on a comma that can be read two ways', () => {
    expect(readQuantity('1,234 g', 'mass', 'm')).toMatchObject({ ok: false, error: { code: 'number-two-readings' } });
    expect(readQuantity('1,234 g', 'mass', 'm', { decimalMark: 'comma' })).toMatchObject({
      ok: true,
      value: { value: 1.234 },
    });
  });
});
