import { describe, expect, it } from 'vitest';
import { readFormula } from '../../src/chemistry/readFormula.ts';
import { solutesFor } from '../../src/desk/lesson/solutesFor.ts';
import { activityById } from '../../src/lab/lesson/activities.ts';

const formulasFor = (id: string) => {
  const activity = activityById(id);
  if (!activity) throw new Error(`Expected the activity ${id}.`);
  return solutesFor(activity)?.map(({ formula }) => formula);
};

describe('solutesFor', () => {
  it('leaves the list alone where any solute will do', () => {
    expect(formulasFor('stock and dilution')).toBeUndefined();
    expect(formulasFor('serial dilution')).toBeUndefined();
  });
  it('offers only hydrates for crystals that hold water', () => {
    const formulas = formulasFor('solution from a hydrate') ?? [];
    expect(formulas).toContain('CuSO4·5H2O');
    expect(formulas).not.toContain('KBr');
    for (const formula of formulas) {
      const read = readFormula(formula);
      expect(read.ok && read.value.hydrate, formula).toBeTruthy();
    }
  });
  it('offers only acids that come concentrated, and says why the planner would not', () => {
    expect(formulasFor('concentrated reagent')).toEqual(['HCl', 'H2SO4', 'HNO3', 'H3PO4', 'CH3COOH', 'HCOOH']);
    const activity = activityById('concentrated reagent');
    const sulfuric = (activity ? solutesFor(activity) : [])?.find(({ formula }) => formula === 'H2SO4');
    expect(sulfuric).toMatchObject({
      name: 'sulfuric acid',
      caution: expect.stringContaining('boils and spits when water is added'),
    });
  });
  it('offers for drying only what survives it', () => {
    expect(formulasFor('weighed residue')).toEqual(expect.arrayContaining(['KBr', 'KCl', 'NaCl', 'Na2SO4']));
    expect(formulasFor('weighed residue')).not.toContain('CuSO4·5H2O');
  });
  it('offers for a density only what the table of densities has, without its water', () => {
    const formulas = formulasFor('measured density') ?? [];
    expect(formulas).toEqual(expect.arrayContaining(['C12H22O11', 'NaCl', 'KCl', 'C6H12O6']));
    expect(formulas).not.toContain('KBr');
    expect(formulas.filter((formula) => formula.includes('·'))).toEqual([]);
  });
});
