import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { readCsv } from '../../scripts/generate/csv.ts';
import { densitiesSource } from '../../scripts/generate/densities.ts';
import { readFormula } from '../../src/chemistry/readFormula.ts';
import { solutionDensity } from '../../src/chemistry/solutionDensity.ts';
import { succeeded } from './succeeded.ts';

const path = new URL('../published/density.csv', import.meta.url).pathname;
const rows = readCsv(path).filter(({ substance, temperature_C }) => substance !== 'water' && temperature_C === '20');
const at = (formula: string, massPercent: number) => solutionDensity(succeeded(readFormula(formula)), massPercent);

describe('solutionDensity', () => {
  it('has the table that the published one gives', () => {
    expect(readFileSync(new URL('../../src/chemistry/densities.generated.ts', import.meta.url), 'utf8')).toBe(
      densitiesSource(path),
    );
    expect(rows.length).toBeGreaterThan(100);
  });
  it('gives every published figure at its own strength, within 0.004 g/mL of the second source', () => {
    for (const { formula = '', mass_percent, density_g_per_mL, second_value_g_per_mL } of rows) {
      const found = at(formula, Number(mass_percent));
      expect([formula, found?.density]).toEqual([formula, Number(density_g_per_mL)]);
      if (second_value_g_per_mL) {
        expect(Math.abs((found?.density ?? 0) - Number(second_value_g_per_mL))).toBeLessThanOrEqual(0.0041);
      }
    }
  });
  it('lies between its neighbours in between, and begins with water', () => {
    expect(at('NaCl', 0)?.density).toBe(0.998207);
    expect(at('NaCl', 19)?.density).toBeCloseTo((1.1319 + 1.1478) / 2, 10);
    expect(at('NaCl', 0.5)?.density).toBeGreaterThan(0.998207);
  });
  it('says that glucose is from memory', () => {
    expect(at('C6H12O6', 10)?.isConfirmed).toBe(false);
    expect(at('NaCl', 10)?.isConfirmed).toBe(true);
  });
  it('has nothing for a substance or a strength that the table lacks', () => {
    expect(at('KBr', 5)).toBeUndefined();
    expect(at('NaCl', 60)).toBeUndefined();
    expect(at('NaCl', -1)).toBeUndefined();
    expect(at('NaCl', Number.NaN)).toBeUndefined();
  });
});
