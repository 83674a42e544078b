import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { concentrationUnits, readConcentrationUnit } from '../../src/chemistry/concentrationUnit.ts';
import { conversionNeeds, convertConcentration } from '../../src/chemistry/convertConcentration.ts';
import { gramsPerMillilitre, gramsPerMole } from '../../src/measurement/quantity.ts';
import { succeeded } from './succeeded.ts';

const unit = (text: string) => succeeded(readConcentrationUnit(text, 'from'));
const [molarMass, density] = [gramsPerMole(58.44), gramsPerMillilitre(1.05)];
const convert = (value: number, from: string, to: string) =>
  convertConcentration({ value, from: unit(from), to: unit(to), molarMass, density });

describe('convertConcentration', () => {
  it.each([
    [1, 'mol/L', 'mmol/L', 1000],
    [1, 'M', 'µmol/L', 1e6],
    [250, 'mM', 'M', 0.25],
    [1, 'g/L', 'mg/dL', 100],
    [5, '% w/v', 'g/L', 50],
    [1, 'g/dL', '% w/v', 1],
    [1, 'µg/mL', 'mg/L', 1],
    [1, '% w/w', 'ppm', 10000],
    [15, 'ppb', 'ppm', 0.015],
    [58.44, 'g/L', 'mol/L', 1],
    [2, 'mol/L', 'g/dL', 11.688],
    [90, 'mg/dL', 'mmol/L', 900 / 58.44],
    [10, '% w/w', 'g/L', 105],
    [10, '% w/w', '% w/v', 10.5],
    [1, 'ppm', 'mg/L', 1.05],
    [1, 'mol/kg', '% w/w', 5844 / 1058.44],
  ] as const)('gives %d %s in %s as %d [by the definitions of the units]', (value, from, to, gives) => {
    expect(Math.abs(succeeded(convert(value, from, to)) / gives - 1)).toBeLessThan(1e-14);
  });
  it('comes back from every unit to every other', () => {
    const any = fc.constantFrom(...concentrationUnits);
    fc.assert(
      fc.property(any, any, fc.double({ min: 1e-9, max: 0.3, noNaN: true }), (from, to, share) => {
        const value = succeeded(convert(100 * share, '% w/w', from));
        const there = succeeded(convert(value, from, to));
        expect(Math.abs(succeeded(convert(there, to, from)) / value - 1)).toBeLessThan(1e-11);
      }),
      { numRuns: 2000, seed: 31 },
    );
  });
  it('asks for a formula or a density exactly where the pair needs it', () => {
    for (const from of concentrationUnits) {
      for (const to of concentrationUnits) {
        const needs = conversionNeeds(unit(from).kind, unit(to).kind);
        const given = { value: 0.001, from: unit(from), to: unit(to) };
        expect(convertConcentration({ ...given, molarMass, density }).ok).toBe(true);
        expect(convertConcentration({ ...given, density }).ok).toBe(!needs.formula);
        expect(convertConcentration({ ...given, molarMass }).ok).toBe(!needs.density);
        if (needs.formula)
          expect(convertConcentration({ ...given, density })).toMatchObject({
            error: { code: 'conversion-needs', argument: 'formula' },
          });
        if (needs.density)
          expect(convertConcentration({ ...given, molarMass })).toMatchObject({
            error: { code: 'conversion-needs', argument: 'density' },
          });
      }
    }
    expect(conversionNeeds(unit('% w/w').kind, unit('mol/kg').kind)).toEqual({ formula: true, density: false });
    expect(conversionNeeds(unit('g/L').kind, unit('mol/L').kind)).toEqual({ formula: true, density: false });
    expect(conversionNeeds(unit('g/L').kind, unit('ppm').kind)).toEqual({ formula: false, density: true });
  });
  it.each([
    [101, '% w/w', 'ppm'],
    [1100, 'g/L', '% w/w'],
    [20, 'mol/L', '% w/w'],
    [100, '% w/w', 'mol/kg'],
    [1050, 'g/L', 'mol/kg'],
    [2e6, 'ppm', 'g/L'],
  ] as const)('refuses %d %s in %s: the solute would outweigh its solution', (value, from, to) => {
    expect(convert(value, from, to)).toMatchObject({ ok: false, error: { code: 'solute-over-whole' } });
  });
  it('takes 0, and refuses less, and a density of 0', () => {
    expect(convert(0, '% w/w', 'mol/L')).toEqual({ ok: true, value: 0 });
    expect(convert(-1, 'M', 'mM')).toMatchObject({ error: { code: 'below-zero', argument: 'value' } });
    expect(
      convertConcentration({ value: 1, from: unit('g/L'), to: unit('ppm'), density: gramsPerMillilitre(0) }),
    ).toMatchObject({ error: { argument: 'density' } });
    expect(convert(1e307, 'M', 'µM')).toMatchObject({ error: { code: 'result-not-finite' } });
  });
});

describe('readConcentrationUnit', () => {
  it.each([
    ['mol/l', 'mol/L'],
    ['M', 'M'],
    ['mM', 'mM'],
    ['umol/L', 'µmol/L'],
    ['μmol/L', 'µmol/L'],
    ['µM', 'µM'],
    ['%w/v', '% w/v'],
    ['% (w/v)', '% w/v'],
    ['w/v %', '% w/v'],
    ['% w/w', '% w/w'],
    ['% m/m', '% w/w'],
    ['ug/mL', 'µg/mL'],
    ['mg/dl', 'mg/dL'],
    ['ppm', 'ppm'],
    ['mol/kg', 'mol/kg'],
    [' g/L ', 'g/L'],
  ])('reads %s as %s', (typed, symbol) => {
    expect(succeeded(readConcentrationUnit(typed, 'to')).symbol).toBe(symbol);
  });
  it('shows both readings of a bare percent sign', () => {
    expect(readConcentrationUnit('%', 'from')).toMatchObject({
      ok: false,
      error: { code: 'percent-unclear', argument: 'from' },
    });
  });
  it.each(['', 'm', 'N', 'constructor', '__proto__', 5, true, undefined, 'g', 'mol'])(
    'refuses %s, and lists the units',
    (typed) => {
      const read = readConcentrationUnit(typed, 'to');
      expect(read).toMatchObject({ ok: false, error: { code: 'concentration-unit-unknown' } });
      for (const symbol of concentrationUnits) expect(!read.ok && read.error.expected).toContain(symbol);
    },
  );
});
