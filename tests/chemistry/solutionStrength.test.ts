import { describe, expect, it } from 'vitest';
import { readCsv } from '../../scripts/generate/csv.ts';
import { molarMass } from '../../src/chemistry/molarMass.ts';
import { readFormula } from '../../src/chemistry/readFormula.ts';
import { bottleOf, massPercentOf } from '../../src/chemistry/solutionStrength.ts';
import { errorText } from '../../src/errors/errorText.ts';
import { molesPerLitre } from '../../src/measurement/quantity.ts';
import { succeeded } from './succeeded.ts';

const perMole = (formula: string): number => succeeded(molarMass(succeeded(readFormula(formula))));
const strength = (formula: string, molarity: number): number =>
  succeeded(massPercentOf(succeeded(readFormula(formula)), molesPerLitre(molarity)));
/** Molarity of a solution with so many grams in 100 g, by the definitions: a litre weighs 1000 ρ grams. */
const molarityAt = (formula: string, massPercent: number, gramsPerMl: number): number =>
  (10 * massPercent * gramsPerMl) / perMole(formula);

const published = readCsv(new URL('../published/density.csv', import.meta.url).pathname)
  .filter(({ temperature_C, substance }) => temperature_C === '20' && substance !== 'water')
  .map((row) => ({
    formula: row.formula ?? '',
    massPercent: Number(row.mass_percent),
    gramsPerMl: Number(row.density_g_per_mL),
  }));

describe('massPercentOf', () => {
  it('has the published lines to compare with', () => expect(published.length).toBeGreaterThan(100));
  // Above the last line of ammonia its density steps down, so a rounding error decides on which side that line is.
  const steady = published.filter(({ formula, massPercent }) => !(formula === 'NH3' && massPercent === 30));
  it.each(steady)('gives $massPercent % of $formula back from the molarity at $gramsPerMl g/mL', (line) => {
    const { formula, massPercent, gramsPerMl } = line;
    expect(strength(formula, molarityAt(formula, massPercent, gramsPerMl))).toBeCloseTo(massPercent, 6);
  });

  it.each([
    { formula: 'NaCl', massPercent: 5.5, gramsPerMl: (1.034 + 1.0413) / 2, place: 'half way between 5 and 6 %' },
    { formula: 'HCl', massPercent: 22.5, gramsPerMl: 1.098 + 0.25 * (1.1492 - 1.098), place: 'between 20 and 30 %' },
    { formula: 'HCl', massPercent: 0.5, gramsPerMl: (0.9982 + 1.0031) / 2, place: 'between water and 1 %' },
    { formula: 'HCl', massPercent: 45, gramsPerMl: 1.1977, place: 'above the last line, 40 %: its density' },
    {
      formula: 'NH3',
      massPercent: 29,
      gramsPerMl: 0.9228 + 0.9 * (0.892 - 0.9228),
      place: 'below its last line, 30 %',
    },
    { formula: 'NH3', massPercent: 32, gramsPerMl: 0.88, place: 'above the last line of ammonia, 30 %: lighter still' },
  ])('takes the density of $massPercent % $formula $place', ({ formula, massPercent, gramsPerMl }) => {
    expect(strength(formula, molarityAt(formula, massPercent, gramsPerMl))).toBeCloseTo(massPercent, 9);
  });
  it.each(['NaCl', 'C12H22O11', 'KBr'])('is 0 %% in a solution without %s', (formula) => {
    expect(strength(formula, 0)).toBe(0);
  });
  it('takes 1.00 g/mL where no density is known', () => {
    // KBr is not in the table: 0.5 mol × 119.002 g/mol in 1000 g.
    expect(strength('KBr', 0.5)).toBeCloseTo(5.9501, 4);
  });
  it.each(['KBr', 'H2SO4', 'CaCl2·2H2O'])('is never above 100 %%: %s', (formula) => {
    expect(strength(formula, 30)).toBe(100);
  });

  it.each([
    ['CuSO4·5H2O', 'CuSO4', 5, 1.0511],
    ['CuSO4 · 5 H2O', 'CuSO4', 5, 1.0511],
    ['CuSO4*5H2O', 'CuSO4', 5, 1.0511],
    ['CuSO4.5H2O', 'CuSO4', 5, 1.0511],
    ['Na2CO3·10H2O', 'Na2CO3', 5, 1.0502],
    ['MgSO4·H2O', 'MgSO4', 5, 1.0497],
  ])(
    'finds the density of %s without its water and counts the crystals as they are written',
    (formula, dry, massPercent, gramsPerMl) => {
      const asWritten = (massPercent * perMole(formula)) / perMole(dry);
      expect(strength(formula, molarityAt(dry, massPercent, gramsPerMl))).toBeCloseTo(asWritten, 6);
    },
  );

  it('needs an atomic weight', () => {
    const result = massPercentOf(succeeded(readFormula('TcCl4')), molesPerLitre(1));
    expect(!result.ok && errorText(result.error)).toMatch(/^“Tc” \(technetium\) has no standard atomic weight/);
  });
});

describe('bottleOf', () => {
  it.each([
    ['HCl', 37.2, 1.18],
    ['HClO4', 70.5, 1.67],
    ['HClO4·2H2O', 70.5, 1.67],
    ['NH3', 28, 0.9],
    ['H2O2', 30, 1.11],
  ])('gives %s as a supplier’s table prints it: %d %%, %d g/mL', (formula, massPercent, density) => {
    expect(bottleOf(formula)).toEqual({ massPercent, density });
  });
  it.each(['NaCl', 'H', 'Cl', '', 'H·H2OCl'])('has no bottle of “%s”', (formula) => {
    expect(bottleOf(formula)).toBeUndefined();
  });
});
