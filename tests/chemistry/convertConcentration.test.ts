import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { concentrationUnits, readConcentrationUnit } from '../../src/chemistry/concentrationUnit.ts';
import { conversionNeeds, convertConcentration } from '../../src/chemistry/convertConcentration.ts';
import { errorText, shortErrorText } from '../../src/errors/errorText.ts';
import type { Result } from '../../src/errors/result.ts';
import { gramsPerMillilitre, gramsPerMole } from '../../src/measurement/quantity.ts';
import { cases } from '../depth.ts';
import { succeeded } from './succeeded.ts';

const messageOf = (result: Result<unknown>): string => (result.ok ? 'no error' : errorText(result.error));
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
  it.each([
    [9, 'mM', 'M', 0.009],
    [0.7, 'g/dL', 'g/L', 7],
    [0.3, '% w/w', 'ppm', 3000],
    [3, 'ppb', '% w/w', 0.0000003],
  ] as const)('moves only the decimal mark from %d %s to %s: %d', (value, from, to, gives) => {
    expect(convert(value, from, to)).toEqual({ ok: true, value: gives });
  });
  it('counts in mol/kg all that is not solute as solvent', () => {
    // 10 g of 58.44 g/mol in 90 g of solvent.
    expect(succeeded(convert(10, '% w/w', 'mol/kg'))).toBeCloseTo(10 / 58.44 / 0.09, 12);
  });
  it.each([
    [100, '% w/w', 'ppm', 1e6],
    [100, '% w/w', 'g/L', 1050],
    [1050, 'g/L', '% w/w', 100],
  ] as const)('takes %d %s, which is nothing but solute, in %s', (value, from, to, gives) => {
    expect(convert(value, from, to)).toEqual({ ok: true, value: gives });
  });
  it.each([
    [1100, 'g/L', 'mg/dL', 110_000],
    [100, 'mol/L', 'mmol/L', 100_000],
    [100, 'mol/L', 'g/L', 5844],
  ] as const)(
    'cannot see in %d %s that the solute outweighs its solution, as in %s no mass is known',
    (value, from, to, gives) => {
      expect(convert(value, from, to)).toEqual({ ok: true, value: gives });
    },
  );
  it('comes back from every unit to every other', () => {
    const any = fc.constantFrom(...concentrationUnits);
    fc.assert(
      fc.property(any, any, fc.double({ min: 1e-9, max: 0.3, noNaN: true }), (from, to, share) => {
        const value = succeeded(convert(100 * share, '% w/w', from));
        const there = succeeded(convert(value, from, to));
        expect(Math.abs(succeeded(convert(there, to, from)) / value - 1)).toBeLessThan(1e-11);
      }),
      { numRuns: cases({ short: 400, deep: 10_000 }) },
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
  });
  it.each([
    ['amount in volume', 'amount in volume', { formula: false, density: false }],
    ['amount in solvent', 'amount in solvent', { formula: false, density: false }],
    ['mass in mass', 'mass in mass', { formula: false, density: false }],
    ['mass in mass', 'amount in solvent', { formula: true, density: false }],
    ['mass in volume', 'amount in volume', { formula: true, density: false }],
    ['mass in volume', 'mass in mass', { formula: false, density: true }],
    ['mass in mass', 'amount in volume', { formula: true, density: true }],
    ['amount in volume', 'amount in solvent', { formula: true, density: true }],
  ] as const)('needs from %s to %s: %o', (from, to, needs) => {
    expect(conversionNeeds(from, to)).toEqual(needs);
  });
  it('says what is needed, and for which pair', () => {
    const formula = convertConcentration({ value: 1, from: unit('g/L'), to: unit('mol/L') });
    expect(messageOf(formula)).toBe('Converting g/L to mol/L needs the molar mass. Give a formula such as KBr.');
    expect(!formula.ok && shortErrorText(formula.error)).toBe('⚠ formula needed');
    const noDensity = convertConcentration({ value: 1, from: unit('ppm'), to: unit('mg/L') });
    expect(messageOf(noDensity)).toBe(
      'Converting ppm to mg/L needs the density of the solution. Give a density such as 1.05 g/mL.',
    );
    expect(!noDensity.ok && shortErrorText(noDensity.error)).toBe('⚠ density needed');
  });
  it.each([
    [101, '% w/w', 'ppm'],
    [1100, 'g/L', '% w/w'],
    [20, 'mol/L', '% w/w'],
    [100, '% w/w', 'mol/kg'],
    [1050, 'g/L', 'mol/kg'],
    [2e6, 'ppm', 'g/L'],
  ] as const)('refuses %d %s in %s: the solute would outweigh its solution', (value, from, to) => {
    expect(messageOf(convert(value, from, to))).toBe(
      `${value} ${from} would be more solute than solution. Check the units, the density and the powers of ten.`,
    );
  });
  it('takes 0, and refuses less, and a density of 0', () => {
    expect(convert(0, '% w/w', 'mol/L')).toEqual({ ok: true, value: 0 });
    expect(messageOf(convert(-1, 'M', 'mM'))).toBe(
      '-1 M can’t be used for the value: it must be 0 M or more. Check its sign, and the cell it comes from.',
    );
    const weightless = { value: 1, from: unit('g/L'), to: unit('ppm'), density: gramsPerMillilitre(0) };
    expect(messageOf(convertConcentration(weightless))).toBe(
      '0 g/mL can’t be used for the density: it must be above 0 g/mL. Check its sign, and the cell it comes from.',
    );
  });
  it.each([0.4, 5.1, 1190])('asks about a density of %d g/mL, which no solution has', (dense) => {
    const given = { value: 1, from: unit('g/L'), to: unit('ppm'), density: gramsPerMillilitre(dense) };
    const found = convertConcentration(given);
    expect(found).toMatchObject({ ok: false, error: { code: 'density-unlikely', argument: 'density' } });
    expect(messageOf(found)).toMatch(
      / g\/mL is not a likely density: solutions have 0\.5 to 5 g\/mL\. Is it in kg\/m³.*\?/,
    );
    expect(!found.ok && shortErrorText(found.error)).toBe('⚠ density in kg/m³?');
  });
  it.each([0.5, 0.79, 1.19, 5])('takes a density of %d g/mL', (dense) => {
    const given = { value: 1, from: unit('g/L'), to: unit('ppm'), density: gramsPerMillilitre(dense) };
    expect(convertConcentration(given).ok).toBe(true);
  });
  it.each([
    ['one kind of unit', 1e307, 'M', 'µM'],
    ['amount and mass in a volume', 1e308, 'mol/L', 'g/L'],
  ] as const)('refuses a result beyond every number, within %s', (_, value, from, to) => {
    const given = { value, from: unit(from), to: unit(to), molarMass };
    expect(convertConcentration(given)).toMatchObject({
      ok: false,
      error: { code: 'result-not-finite', argument: 'value' },
    });
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
    ['m/m %', '% w/w'],
    ['% (m/v)', '% w/v'],
    ['m/v %', '% w/v'],
    ['w/w%', '% w/w'],
    ['ug/mL', 'µg/mL'],
    ['mg/dl', 'mg/dL'],
    ['ppm', 'ppm'],
    ['mol/kg', 'mol/kg'],
    [' g/L ', 'g/L'],
    ['mol/dm³', 'mol/dm³'],
    ['mol dm-3', 'mol/dm³'],
    ['moldm⁻³', 'mol/dm³'],
    ['mole/litre', 'mol/L'],
    ['molar', 'M'],
    ['g/dm³', 'g/dm³'],
    ['g dm-3', 'g/dm³'],
    ['grams per litre', 'g/L'],
    ['µg/L', 'µg/L'],
    ['ng/mL', 'ng/mL'],
    ['molal', 'mol/kg'],
    ['mol kg-1', 'mol/kg'],
    ['g/100 mL', '% w/v'],
    ['wt %', '% w/w'],
    ['% by mass', '% w/w'],
    ['ppm (w/w)', 'ppm'],
  ])('reads %s as %s', (typed, symbol) => {
    expect(succeeded(readConcentrationUnit(typed, 'to')).symbol).toBe(symbol);
  });
  it('shows both readings of a bare percent sign', () => {
    expect(messageOf(readConcentrationUnit(' % ', 'from'))).toBe(
      '“ % ” could be % w/w or % w/v. ' + 'Type % w/w for grams in 100 g, or % w/v for grams in 100 mL.',
    );
  });
  it('lists the units for any other text', () => {
    expect(messageOf(readConcentrationUnit('furlongs', 'to'))).toBe(
      '“furlongs” is not a unit that can be converted here. Type one of mol/L, M, mmol/L, mM, µmol/L, g/L, mg/L, mg/dL, g/dL, µg/mL, mol/dm³, g/dm³, µg/L, ' +
        'ng/mL, % w/v, % w/w, ppm, ppb, mol/kg, molal.',
    );
  });
  it.each(['', 'm', 'N', 'constructor', '__proto__', 5, true, null, undefined, new Date(0), 'g', 'mol', 'w/w', '%w'])(
    'refuses %s',
    (typed) => {
      expect(readConcentrationUnit(typed, 'to')).toMatchObject({
        ok: false,
        error: { code: 'concentration-unit-unknown', argument: 'to' },
      });
    },
  );
});
