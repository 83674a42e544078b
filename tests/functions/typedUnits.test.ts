import { describe, expect, it } from 'vitest';
import { callFunction } from '../../src/functions/callFunction.ts';

const words = (text: string) => text.split(' ');
const masses = ['g', 'gm', 'gms', 'gram', 'grams', 'gramme', 'grammes', 'Grams', 'g.'];
const amounts = words('mol mols mole moles Mol');
const volumes = ['mL', 'ml', 'mls', 'cc', 'cm3', 'cm³', 'cm^3', 'millilitre', 'milliliters', 'cubic centimetres'];
const litres = words('L l litre litres liter liters dm3 dm³');
const molarities = [
  ...words(
    'M molar mol/L mol/l mole/litre moles/liter mol/dm³ mol/dm3 moldm⁻³ moldm-3 mol·L⁻¹ mol·dm-3 mol.L-1 molL-1',
  ),
  'mol dm-3',
  'mol L⁻¹',
  'mol / L',
  'mol per litre',
  'moles per liter',
];

describe('units as people type them, in the functions', () => {
  it.each(masses)('a mass in %s', (unit) => {
    expect(callFunction('MOLES', ['KBr', `23.80046 ${unit}`])).toBeCloseTo(0.2, 12);
    expect(callFunction('MOLES', ['KBr', `23.80046${unit}`])).toBeCloseTo(0.2, 12);
  });
  it.each(amounts)('an amount in %s', (unit) => {
    expect(callFunction('GRAMS', ['KBr', `0.2 ${unit}`])).toBeCloseTo(23.80046, 10);
  });
  it.each(volumes)('a volume in %s', (unit) => {
    expect(callFunction('DILUTIONVOLUME', [2, 0.5, `100 ${unit}`])).toBe(25);
  });
  it.each(litres)('a volume in %s', (unit) => {
    expect(callFunction('DILUTIONVOLUME', [2, 0.5, `0.1 ${unit}`])).toBe(25);
  });
  it.each(molarities)('a molarity in %s, in every function that takes or converts one', (unit) => {
    expect(callFunction('DILUTIONVOLUME', [`2 ${unit}`, `0.5${unit}`, 100])).toBe(25);
    expect(callFunction('SOLUTEMASS', ['KBr', `0.300 ${unit}`, 200])).toBeCloseTo(7.140138, 10);
    expect(callFunction('CONVERTCONCENTRATION', [0.25, unit, 'mmol/L'])).toBe(250);
    expect(callFunction('CONVERTCONCENTRATION', [250, 'mM', unit])).toBe(0.25);
    expect(callFunction('CONVERTCONCENTRATION', [`0.25 ${unit}`, 'M', 'mM'])).toBe(250);
    expect(callFunction('PERCENTERROR', [`0.095 ${unit}`, '0.1 mol/L'])).toBeCloseTo(5, 12);
    expect(callFunction('CHECKENTRY', [`250 mM`, `0.25 ${unit}`])).toMatchObject([['on target', expect.any(String)]]);
    expect(callFunction('SIGFIGS', [`0.250 ${unit}`])).toBe(3);
  });
  it.each([
    ['g/dm³', 'g/L', 1],
    ['g dm-3', 'mg/L', 1000],
    ['µg/L', 'ng/mL', 1],
    ['ng/mL', 'mg/L', 0.001],
    ['mg/dL', 'g/L', 0.01],
    ['% w/v', 'g/L', 10],
    ['g/100 mL', '% w/v', 1],
    ['molal', 'mol/kg', 1],
    ['mmol/kg', 'molal', 0.001],
    ['wt %', 'ppm', 10_000],
    ['ppb', 'ppm', 0.001],
  ])('one %s in %s is %d', (from, to, gives) => {
    expect(callFunction('CONVERTCONCENTRATION', [1, from, to])).toBeCloseTo(gives, 12);
  });
  it.each(['6.00x10-2', '6.00 x 10-2', '6.00×10⁻²', '6.00 × 10^-2', '6.00 e-2', '6.00e−2', '0,0600', '0.06\u202f'])(
    'the number %s',
    (number) => {
      expect(callFunction('GRAMS', ['KBr', number])).toBeCloseTo(7.140138, 10);
      expect(callFunction('GRAMS', ['KBr', `${number} mol`])).toBeCloseTo(7.140138, 10);
    },
  );
});
