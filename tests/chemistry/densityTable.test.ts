import { describe, expect, it } from 'vitest';
import { readCsv } from '../../scripts/generate/csv.ts';
import { density } from '../../src/chemistry/density.ts';
import { densityFormulas, densityLines } from '../../src/chemistry/densityLines.ts';
import { densityOfMolarity } from '../../src/chemistry/densityOfMolarity.ts';
import { listedFormula } from '../../src/chemistry/listedFormula.ts';
import { massPercentOfDensity } from '../../src/chemistry/massPercentOfDensity.ts';
import { molarMass } from '../../src/chemistry/molarMass.ts';
import { readFormula } from '../../src/chemistry/readFormula.ts';
import { reagentMolarity } from '../../src/chemistry/reagentMolarity.ts';
import { errorText } from '../../src/errors/errorText.ts';
import type { Result } from '../../src/errors/result.ts';
import {
  grams,
  gramsPerMillilitre,
  gramsPerMole,
  millilitres,
  molesPerLitre,
  percent,
} from '../../src/measurement/quantity.ts';
import { succeeded } from './succeeded.ts';

const messageOf = (result: Result<unknown>): string => (result.ok ? 'no error' : errorText(result.error));

interface Line {
  readonly massPercent: number;
  readonly gramsPerMl: number;
}
const lineThrough = (lighter: Line, heavier: Line) => ({
  lighterPercent: percent(lighter.massPercent),
  lighterDensity: gramsPerMillilitre(lighter.gramsPerMl),
  heavierPercent: percent(heavier.massPercent),
  heavierDensity: gramsPerMillilitre(heavier.gramsPerMl),
});
const sugar = lineThrough({ massPercent: 14, gramsPerMl: 1.0549 }, { massPercent: 18, gramsPerMl: 1.0721 });

/** Lines at 20 °C as printed; sources stand in the table itself. */
const printed = (formula: string): readonly Line[] =>
  readCsv(new URL('../published/density.csv', import.meta.url).pathname)
    .filter((row) => row.formula === formula && row.temperature_C === '20')
    .map((row) => ({ massPercent: Number(row.mass_percent), gramsPerMl: Number(row.density_g_per_mL) }))
    .sort((one, other) => one.massPercent - other.massPercent);

describe('a line of a published table, found again from its two neighbours', () => {
  // Largest errors in points of mass percent: 0.024 for sucrose at 10 %, 0.037 for NaCl at 2 %. The tables print
  // densities to 0.0001 g/mL, of which one unit alone makes 0.014 (NaCl) to 0.025 (sucrose).
  it.each([
    ['C12H22O11', 22, 0.025],
    ['NaCl', 13, 0.038],
  ])('%s', (formula, least, largest) => {
    const lines = printed(formula).filter(({ massPercent }) => massPercent > 0);
    const errors = lines.slice(1, -1).map((line, index) => {
      const [before, after] = [lines[index], lines[index + 2]];
      if (!before || !after) throw new Error('a line has two neighbours');
      const found = massPercentOfDensity({
        ...lineThrough(before, after),
        density: gramsPerMillilitre(line.gramsPerMl),
      });
      return Math.abs(succeeded(found) - line.massPercent);
    });
    expect(errors.length).toBeGreaterThanOrEqual(least);
    expect(Math.max(...errors)).toBeLessThanOrEqual(largest);
    expect(Math.max(...errors)).toBeGreaterThan(0.9 * largest);
  });
});

describe('a portion of 25 mL that weighs 26.58 g, by hand', () => {
  it('has the density, the mass percent and the molarity of the lines of sucrose', () => {
    // 26.58 g ÷ 25 mL = 1.0632 g/mL. It is 0.0083 of 0.0172 g/mL on from 14 %, 0.48256 of 4 %: 15.930 %.
    // 1000 mL × 1.0632 g/mL × 0.15930 = 169.37 g in a litre, ÷ 342.297 g/mol = 0.49481 mol/L.
    const heaviness = succeeded(density({ mass: grams(26.58), volume: millilitres(25) }));
    expect(heaviness).toBeCloseTo(1.0632, 10);
    const massPercent = succeeded(massPercentOfDensity({ ...sugar, density: heaviness }));
    expect(massPercent).toBeCloseTo(15.9302, 4);
    const molar = succeeded(molarMass(succeeded(readFormula('C12H22O11'))));
    expect(succeeded(reagentMolarity({ molarMass: molar, massPercent, density: heaviness }))).toBeCloseTo(0.4948, 4);
  });
});

describe('densityOfMolarity', () => {
  it('is the density from which the molarity is found again, on every line of the table', () => {
    let tried = 0;
    for (const formula of densityFormulas()) {
      const molar = succeeded(molarMass(succeeded(readFormula(formula))));
      const lines = densityLines(formula) ?? [];
      lines.slice(1).forEach((line, index) => {
        const before = lines[index];
        if (!before) throw new Error('water comes first');
        const pair = {
          lighterPercent: percent(before.massPercent),
          lighterDensity: gramsPerMillilitre(before.density),
          heavierPercent: percent(line.massPercent),
          heavierDensity: gramsPerMillilitre(line.density),
        };
        for (const molarity of [0.05, 0.5, 2]) {
          const heaviness = succeeded(
            densityOfMolarity({ ...pair, molarMass: molar, molarity: molesPerLitre(molarity) }),
          );
          const massPercent = massPercentOfDensity({ ...pair, density: heaviness });
          if (!massPercent.ok) continue;
          tried += 1;
          const again = reagentMolarity({ molarMass: molar, massPercent: massPercent.value, density: heaviness });
          expect(succeeded(again) / molarity).toBeCloseTo(1, 9);
        }
      });
    }
    expect(tried).toBeGreaterThan(150);
  });
});

describe('two lines of a table', () => {
  const found = (changed: Partial<Record<keyof typeof sugar | 'density', number>>) =>
    massPercentOfDensity({ ...sugar, density: gramsPerMillilitre(1.06), ...changed } as Parameters<
      typeof massPercentOfDensity
    >[0]);
  it('go on beyond both ends', () => {
    expect(succeeded(found({ density: 1.0506 }))).toBeCloseTo(13, 10);
    expect(succeeded(found({ density: 1.0764 }))).toBeCloseTo(19, 10);
  });
  it('serve where the stronger solution is the lighter, as ammonia is', () => {
    const ammonia = lineThrough({ massPercent: 10, gramsPerMl: 0.9575 }, { massPercent: 5, gramsPerMl: 0.977 });
    const read = massPercentOfDensity({ ...ammonia, density: gramsPerMillilitre(0.9731) });
    expect(succeeded(read)).toBeCloseTo(6, 10);
  });
  it('read nothing and all of a solution at their very ends', () => {
    expect(succeeded(found({ lighterPercent: 0, density: 1.0549 }))).toBe(0);
    expect(succeeded(found({ heavierPercent: 100, density: 1.0721 }))).toBe(100);
  });
  it.each([
    [{ lighterDensity: 0 }, 'lighter density', 'above 0 g/mL', '0 g/mL'],
    [{ heavierDensity: -1 }, 'heavier density', 'above 0 g/mL', '-1 g/mL'],
    [{ lighterPercent: -1 }, 'lighter percent', 'from 0 % to 100 %', '-1 %'],
    [{ heavierPercent: 101 }, 'heavier percent', 'from 0 % to 100 %', '101 %'],
    [{ density: 0 }, 'density', 'above 0 g/mL', '0 g/mL'],
  ])('are refused as %o', (changed, argument, wanted, received) => {
    const said = messageOf(found(changed));
    for (const words of [argument, wanted, received]) expect(said).toContain(words);
  });
  it.each([
    [
      { lighterPercent: -1 },
      '-1 % can’t be used for the lighter percent: it must be from 0 % to 100 %. Copy it again from the table of densities.',
    ],
    [{ heavierPercent: 14 }, 'Both lines have the mass percent 14 %. Take two different lines of the table.'],
    [{ heavierDensity: 1.0549 }, 'Both lines have the density 1.0549 g/mL. Take two different lines of the table.'],
    [
      { density: 0.99 },
      '0.99 g/mL is too far from the two lines of the table. On their straight line it would mean less than 0 % or more than 100 %. Check the mass and the volume.',
    ],
    [
      { density: 1.6 },
      '1.6 g/mL is too far from the two lines of the table. On their straight line it would mean less than 0 % or more than 100 %. Check the mass and the volume.',
    ],
  ])('are refused as %o in these words', (changed, said) => {
    expect(messageOf(found(changed))).toBe(said);
  });
  it.each([
    ['molarity', 0, /0 mol\/L .*molarity/],
    ['molarity', 1e308, /^The result for the molarity is beyond /],
  ])('refuse a %s of %f', (_, molarity, said) => {
    const refused = densityOfMolarity({
      ...sugar,
      molarMass: gramsPerMole(342.3),
      molarity: molesPerLitre(molarity),
    });
    expect(messageOf(refused)).toMatch(said);
  });
});

describe('density', () => {
  it.each([
    [0, 25, /0 g .*mass/],
    [26.58, 0, /0 mL .*volume/],
    [1e300, 1e-300, /^The result for the mass is beyond /],
  ])('of %f g in %f mL is refused by name and unit', (mass, volume, said) => {
    expect(messageOf(density({ mass: grams(mass), volume: millilitres(volume) }))).toMatch(said);
  });
});

describe('densityLines', () => {
  it('begin with water, once, and go on as the table is printed', () => {
    const [water, first] = densityLines('C12H22O11') ?? [];
    expect(water).toEqual({ massPercent: 0, density: 0.9982 });
    expect(first).toEqual({ massPercent: 1, density: 1.0021 });
  });
  it('are none for a substance that the table has not', () => {
    expect(densityLines('KBr')).toBeUndefined();
  });
});

describe('listedFormula', () => {
  it.each([
    ['C12H22O11', 'C12H22O11'],
    ['N2H8SO4', '(NH4)2SO4'],
    // As many kinds of atoms of the same number, in other amounts.
    ['C1H22O112', undefined],
    ['CuSO4·0.5H2O', undefined],
    ['CuSO4', 'CuSO4'],
    ['CuSO4·5H2O', undefined],
    ['KBr', undefined],
  ])('finds %s as %s', (typed, listed) => {
    expect(listedFormula(succeeded(readFormula(typed)))).toBe(listed);
  });
  it('puts water in front, once', () => {
    for (const formula of densityFormulas()) {
      const lines = densityLines(formula) ?? [];
      expect(lines[0]).toEqual({ massPercent: 0, density: 0.9982 });
      const percents = lines.map(({ massPercent }) => massPercent);
      expect(percents).toEqual([...new Set(percents)].sort((one, other) => one - other));
    }
    expect(densityLines('KBr')).toBeUndefined();
  });
});
