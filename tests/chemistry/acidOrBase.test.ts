import { describe, expect, it } from 'vitest';
import { type AcidOrBase, acidOrBase } from '../../src/chemistry/acidOrBase.ts';
import { dissolvesHot } from '../../src/chemistry/dissolvesHot.ts';
import type { Formula } from '../../src/chemistry/formula.ts';
import { needsWaterFirst } from '../../src/chemistry/needsWaterFirst.ts';
import { readFormula } from '../../src/chemistry/readFormula.ts';
import { concentratedReagents } from '../../src/lab/lesson/concentratedReagents.ts';
import { molesPerLitre } from '../../src/measurement/quantity.ts';

const formula = (text: string): Formula => {
  const read = readFormula(text);
  if (!read.ok) throw new Error(read.error.advice);
  return read.value;
};

describe('acidOrBase', () => {
  it.each<[AcidOrBase, string]>([
    ['acid', 'HCl H2SO4 HNO3 CH3COOH C2H4O2 H3PO4 C6H8O7 C6H8O7·H2O H2C2O4·2H2O HClO4 HBr H3AsO4 ClCH2COOH'],
    ['base', 'NaOH KOH LiOH Ba(OH)2·8H2O Ca(OH)2 NH3 NH4OH CH3NH2'],
    ['neither', 'KBr NaHSO4 Na2CO3 NaHCO3 NH4Cl H2O2 C2H5OH C12H22O11 CuSO4·5H2O FeCl3 AgNO3 CO(NH2)2 FeF3'],
  ])('finds %s', (kind, formulas) => {
    for (const text of formulas.split(' ')) expect([text, acidOrBase(formula(text))]).toEqual([text, kind]);
  });

  it('agrees with the list of reagents that are sold concentrated', () => {
    // The kind beside each reagent is that of tests/published/reagents.csv.
    expect(concentratedReagents().length).toBeGreaterThan(9);
    for (const { formula: text, kind } of concentratedReagents()) {
      expect([text, acidOrBase(formula(text))]).toEqual([text, kind]);
    }
  });
});

describe('needsWaterFirst', () => {
  it.each([
    // An acid of 2 mol/L or more, whatever its label says.
    ['HCl', 2, true],
    ['HCl', 1.99, false],
    ['CH3COOH', 2, true],
    ['C6H8O7', 2.5, true],
    ['HCl', 6, true],
    ['H2SO4', 6, true],
    // Corrosive at its strength below that: nitric acid from 5 %, sulfuric acid from 15 % (CLP, Annex VI).
    ['HNO3', 1, true],
    ['HNO3', 0.1, false],
    ['H2SO4', 1.9, true],
    ['H2SO4', 0.5, false],
    // Sodium and potassium hydroxide from 2 % (CLP, Annex VI), which is 0.5 and 0.4 mol/L.
    ['NaOH', 1, true],
    ['NaOH', 0.1, false],
    ['KOH', 1, true],
    ['KOH', 0.1, false],
    // Neither acid nor base: no heat of dilution to fear.
    ['AgNO3', 1, false],
    ['KBr', 3, false],
    ['H2O2', 10, false],
  ] as const)('of %s at %d mol/L is %s', (text, molarity, expected) => {
    expect(needsWaterFirst(formula(text), molesPerLitre(molarity))).toBe(expected);
  });

  it('takes an unknown strength for the strongest', () => {
    for (const text of ['HCl', 'H2SO4', 'NaOH', 'CH3COOH']) {
      expect([text, needsWaterFirst(formula(text), undefined)]).toEqual([text, true]);
    }
    expect(needsWaterFirst(formula('KBr'), undefined)).toBe(false);
  });
});

describe('dissolvesHot', () => {
  it.each([
    ['NaOH', true],
    ['KOH', true],
    ['LiOH·H2O', true],
    ['HONa', true],
    // Liquids that somebody may weigh like a solid.
    ['H2SO4', true],
    ['CH3COOH', true],
    ['C6H8O7', false],
    ['Ba(OH)2·8H2O', true],
    ['KBr', false],
    ['NaHCO3', false],
    ['HClO', false],
  ])('of %s is %s', (text, expected) => {
    expect(dissolvesHot(formula(text))).toBe(expected);
  });
});
