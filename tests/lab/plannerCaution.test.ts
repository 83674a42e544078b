import { describe, expect, it } from 'vitest';
import { cautionsAt } from '../../src/chemistry/cautionsAt.ts';
import { readFormula } from '../../src/chemistry/readFormula.ts';
import { activityById, allActivities } from '../../src/lab/lesson/activities.ts';
import { keptFromStudents } from '../../src/lab/lesson/keptFromStudents.ts';
import { plannerCaution } from '../../src/lab/lesson/plannerCaution.ts';
import { cautionedSolutes, listedSolutes, proposedSolutes, solubleMolarity } from '../../src/lab/lesson/solutes.ts';
import { startingGivens } from '../../src/lab/lesson/startingGivens.ts';
import { recipeOf } from '../../src/lab/numbers/recipeOf.ts';

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

  it.each(['KMnO4', 'NaF', 'KClO3', 'AlCl3', 'Na2B4O7·10H2O', 'CuCl2·2H2O'])(
    'says that staff alone handle %s as it stands in the bottle',
    (formula) => {
      expect(plannerCaution(formula)).toMatch(/for staff only\. Let staff make a dilute stock/);
    },
  );
  it.each(['NaOH', 'KOH', 'AgNO3', 'ZnCl2', 'Na3PO4·12H2O'])('says that solid %s burns', (formula) => {
    expect(plannerCaution(formula)).toMatch(/burns skin and eyes badly\. Let staff weigh it out/);
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

/** How sure the hazards of a substance are: that of its codes, or of there being none. */
function isSettled(formula: string): boolean {
  const read = readFormula(formula);
  if (!read.ok) throw new Error(formula);
  const { statements, verdict } = cautionsAt(read.value, 'undiluted');
  const hazards = statements.filter(({ about }) => about === 'hazard');
  return hazards.length === 0
    ? verdict === 'none'
    : hazards.every(({ code, confidence }) => confidence === 'h' || confidence === 't' || code === 'H290');
}

describe('what a new plan starts from', () => {
  it('is settled by the act or by two sources, is no table salt, and is nothing that the planner would not propose', () => {
    const starts = allActivities().map((activity) => {
      const formula = startingGivens(activity)[activity.numbers.formula] ?? '';
      return [activity.id, formula] as const;
    });
    expect(Object.fromEntries(starts)).toEqual({
      'solution from a solid': 'KBr',
      'solution from a hydrate': 'CuSO4·5H2O',
      'solution from an impure solid': 'Na2CO3',
      'concentrated reagent': 'HCl',
      dilution: 'KBr',
      'stock and dilution': 'KBr',
      'serial dilution': 'KBr',
      'weighed residue': 'KBr',
      'measured density': 'C12H22O11',
      'bench reading': 'KBr',
    });
    const offered = proposedSolutes().map(({ formula }) => formula);
    for (const [id, formula] of starts) {
      expect([id, formula, isSettled(formula)]).toEqual([id, formula, true]);
      const activity = activityById(id);
      const own =
        activity &&
        recipeOf(activity)
          ?.entry.offers?.()
          .map((one) => one.formula);
      expect(own ?? offered).toContain(formula);
    }
  });
});

describe('proposed solutes and their own cautions', () => {
  it('never contradict each other: what students weigh is for students, does not burn, and rests on two sources', () => {
    const offered = proposedSolutes().map(({ formula }) => formula);
    expect(offered).toHaveLength(22);
    for (const formula of offered) {
      const read = readFormula(formula);
      if (!read.ok) throw new Error(formula);
      const cautions = cautionsAt(read.value, 'undiluted');
      expect([formula, keptFromStudents(cautions, false), cautions.codes.includes('H314')]).toEqual([
        formula,
        false,
        false,
      ]);
      expect([
        formula,
        cautions.statements
          .map(({ advice }) => advice)
          .join(' ')
          .includes('staff only'),
      ]).toEqual([formula, false]);
      expect([formula, isSettled(formula)]).toEqual([formula, true]);
    }
    // One source, or contradicted; grave as a solid; named in the list of what is never proposed.
    for (const formula of [
      'C8H5O4K',
      'CH3COONa·3H2O',
      'CO(NH2)2',
      'Mg(NO3)2',
      'KMnO4',
      'AgNO3',
      'NaOH',
      'BaCl2·2H2O',
    ]) {
      expect(offered).not.toContain(formula);
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
