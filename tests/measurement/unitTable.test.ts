import { readFileSync } from 'node:fs';
import { all, create } from 'mathjs';
import { describe, expect, it } from 'vitest';
import { unitsSource } from '../../scripts/generate/units.ts';
import { readMeasure } from '../../src/measurement/readMeasure.ts';
import { readQuantity } from '../../src/measurement/readQuantity.ts';
import { unitsOfKind } from '../../src/measurement/unit.ts';

const math = create(all ?? {}, { number: 'number' });

/** What mathjs calls each unit; M is mol/L by definition. */
const forMathjs: Readonly<Record<string, string>> = {
  µL: 'uL',
  'dm³': 'dm^3',
  'cm³': 'cm^3',
  'm³': 'm^3',
  µg: 'ug',
  µmol: 'umol',
  M: 'mol/L',
  mM: 'mmol/L',
  µM: 'umol/L',
  'µmol/L': 'umol/L',
  'mol/dm³': 'mol/dm^3',
  'g/cm³': 'g/cm^3',
  'kg/m³': 'kg/m^3',
};
const defaults = { volume: 'mL', mass: 'g', amount: 'mol', concentration: 'mol/L', density: 'g/mL' } as const;
const everyUnit = (Object.keys(defaults) as (keyof typeof defaults)[]).flatMap((kind) =>
  unitsOfKind(kind)
    .split(/, | or /)
    .map((unit) => ({ kind, unit })),
);

describe('the table of units', () => {
  it('has the table that mathjs’s definitions give', () => {
    expect(readFileSync(new URL('../../src/measurement/unitTable.generated.ts', import.meta.url), 'utf8')).toBe(
      unitsSource(),
    );
    expect(everyUnit.length).toBeGreaterThanOrEqual(23);
  });
  it.each(everyUnit)('converts $unit as mathjs does', ({ kind, unit }) => {
    for (const number of ['1', '18.60', '0.3', '2.5e-3', '400', '7.25']) {
      const read = readQuantity(`${number} ${unit}`, kind, 'value');
      const theirs = math.unit(Number(number), forMathjs[unit] ?? unit).toNumber(defaults[kind]);
      expect(read.ok && Math.abs(read.value.value / theirs - 1)).toBeLessThan(1e-14);
    }
  });

  /** Units that are made of two: each mass and amount over each volume, mass and amount. */
  const composed = ['kg', 'g', 'mg', 'µg', 'ng', 'kmol', 'mol', 'mmol', 'µmol'].flatMap((over) =>
    ['L', 'dL', 'mL', 'dm³', 'cm³', 'm³', 'kg', 'g', 'mol', 'mmol', 'kmol'].map((under) => ({ over, under })),
  );
  it.each(composed)('converts $over/$under as mathjs does, or has no such unit', ({ over, under }) => {
    const read = readMeasure(`7.25 ${over}/${under}`, 'value');
    const unit = read.ok ? read.value.unit : undefined;
    const own = { density: 'g/mL', concentration: 'mol/L', 'molar mass': 'g/mol', molality: 'mol/kg' } as const;
    if (unit === undefined) {
      const dimension = (one: string) => (/mol$/.test(one) ? 'amount' : /g$/.test(one) ? 'mass' : 'volume');
      expect(dimension(over)).toBe(dimension(under));
      return;
    }
    const theirs = math
      .unit(7.25, `${forMathjs[over] ?? over} / (${forMathjs[under] ?? under})`)
      .toNumber(own[unit.kind as keyof typeof own]);
    expect(read.ok && Math.abs(read.value.converted.value / theirs - 1)).toBeLessThan(1e-14);
  });
});
