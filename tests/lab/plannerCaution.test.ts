import { describe, expect, it } from 'vitest';
import { plannerCaution } from '../../src/lab/plannerCaution.ts';
import { cautionedSolutes, listedSolutes, proposedSolutes, solubleMolarity } from '../../src/lab/solutes.ts';

describe('plannerCaution', () => {
  it.each([
    ['HF', 'Hydrofluoric'],
    ['HClO4', 'Perchloric'],
    ['H2SO4', 'sulfuric'],
    ['HNO3', 'nitric'],
    ['HCOOH', 'formic'],
    ['CH2O2', 'formic'],
    ['K2Cr2O7', 'Chromium(VI)'],
    ['(NH4)2Cr2O7', 'Chromium(VI)'],
    ['K₂CrO₄', 'Chromium(VI)'],
    ['CrO3', 'Chromium(VI)'],
    ['Pb(NO3)2', 'Lead'],
    ['HgCl2', 'Mercury'],
    ['CoCl2·6H2O', 'Cobalt'],
    ['NiSO4·6H2O', 'Nickel'],
    ['BaCl2·2H2O', 'Barium'],
    ['H3BO3', 'Boric'],
    ['B(OH)3', 'Boric'],
    ['H2C2O4·2H2O', 'Oxalic'],
    ['(COOH)2', 'Oxalic'],
  ])('says why %s is not proposed', (formula, reason) => {
    expect(plannerCaution(formula)).toContain(reason);
    expect(plannerCaution(formula)).toContain('safety data sheet');
  });

  it.each(['KBr', 'CO(NH2)2', 'CrCl3·6H2O', 'Cr(OH)3', 'BaSO4', 'Na2SO4', 'KNO3', 'CuSO4·5H2O', 'HCl', 'nonsense', ''])(
    'has nothing of its own against %s',
    (formula) => {
      expect(plannerCaution(formula)).toBe('');
    },
  );
});

describe('proposedSolutes', () => {
  it('offers none that has a caution, that is kept from students, or that hardly dissolves', () => {
    const offered = proposedSolutes();
    expect(offered.map(({ formula }) => formula)).toContain('KBr');
    expect(offered.length).toBeGreaterThan(15);
    for (const { formula, caution } of offered) {
      expect(caution).toBe('');
      expect(plannerCaution(formula)).toBe('');
      expect(solubleMolarity(formula), formula).toBeGreaterThan(0.1);
      expect(listedSolutes().find((listed) => listed.formula === formula)?.use).toBe('');
    }
    for (const { formula, caution } of cautionedSolutes()) {
      expect(caution).not.toBe('');
      expect(offered.map((solute) => solute.formula)).not.toContain(formula);
    }
  });
});

describe('solubleMolarity', () => {
  it.each([
    // A saturated solution holds more moles in a litre than the careful figure, since it is denser than 1 g/mL. Densities
    // near 20 °C from memory: KBr 1.37, K2CO3 1.57, Na2SO4 1.15 g/mL.
    { formula: 'KBr', saturated: (1000 * 1.37 * (65.1 / 165.1)) / 119.0 },
    { formula: 'K2CO3', saturated: (1000 * 1.57 * (109.8 / 209.8)) / 138.2 },
    { formula: 'Na2SO4', saturated: (1000 * 1.15 * (19.5 / 119.5)) / 142.04 },
  ])('stays below the saturated solution of $formula but within a third and a half of it', ({ formula, saturated }) => {
    const limit = solubleMolarity(formula) ?? 0;
    expect(limit).toBeLessThan(saturated);
    expect(limit).toBeGreaterThan(saturated / 2);
  });

  it('knows a formula however it is written, and says nothing of one that is not listed', () => {
    expect(solubleMolarity('CuSO₄ . 5H₂O')).toBe(solubleMolarity('CuSO4·5H2O'));
    expect(solubleMolarity('RbBr')).toBeUndefined();
  });
});
