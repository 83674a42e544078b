import { describe, expect, it } from 'vitest';
import { activityById } from '../../src/lab/lesson/activities.ts';
import { defaultSettings, defaultShelf } from '../../src/lab/lesson/defaultSettings.ts';
import type { Shelf, TeamPlan } from '../../src/lab/lesson/setup.ts';
import { materialBalance } from '../../src/lab/preparation/materialBalance.ts';

/** A plan of teams with the same numbers in each class. */
function balanceOf(
  id: string,
  givens: Readonly<Record<string, string>>,
  { classes, shelf = {} }: { readonly classes: Readonly<Record<string, number>>; readonly shelf?: Partial<Shelf> },
) {
  const activity = activityById(id);
  if (activity === undefined) throw new Error(`there is no ${id}`);
  const teams = Object.entries(classes).flatMap(([className, count]) =>
    Array.from(
      { length: count },
      (_, at): TeamPlan => ({ key: `${className} ${at}`, className, team: `${at}`, givens }),
    ),
  );
  return materialBalance({ activity, teams, shelf: { ...defaultShelf, ...shelf }, settings: defaultSettings });
}

const silver = {
  formula: 'AgNO3',
  'stock molarity': '0.300',
  flask: '200',
  'target molarity': '0.0450',
  'target volume': '100',
  ion: 'Ag+',
  purity: '',
};

/*
 * Worked by hand, Ag 107.8682, N 14.007, O 15.999, so AgNO3 169.872 g/mol:
 *   0.300 × 0.200 × 169.872 = 10.19232 g each; 4 teams 40.76928 → up to 0.01 g: 40.77 g
 *   4 × 200 mL made, 4 × 15 mL used; left 4 × (200 − 15 + 100) = 1140 mL
 *   in flasks of 100 mL: 400 mL made, 4 × (100 − 15 + 100) = 740 mL left
 */
describe('materialBalance', () => {
  it('sums grams, litres made and used, and the waste of all teams', () => {
    expect(balanceOf('stock and dilution', silver, { classes: { Fern: 2, Moss: 2 } })).toEqual({
      consumed: [{ formula: 'AgNO3', unit: 'g', amount: 40.77 }],
      madeMl: 800,
      usedMl: 60,
      wasteMl: 1140,
      isMostlyWaste: true,
      saving: { by: 'smaller flasks', flaskMl: 100, madeMl: 400, wasteMl: 740 },
    });
  });

  it('proposes a smaller flask only where it holds twice the portion and the balance can weigh its solid', () => {
    const coarse = { classes: { Fern: 2 }, shelf: { balanceReadabilityG: 0.06 } };
    // 100 × 0.06 g = 6 g is needed; 5.096 g would be weighed for 100 mL.
    expect(balanceOf('stock and dilution', silver, coarse).saving).toEqual({ by: 'ready stock' });
    const much = { ...silver, 'target molarity': '0.180' };
    // 60 mL are taken: more than half of 100 mL.
    const bigPipettes = { classes: { Fern: 2 }, shelf: { pipettesMl: [10, 50] } };
    expect(balanceOf('stock and dilution', much, bigPipettes)).toMatchObject({
      isMostlyWaste: true,
      saving: { by: 'ready stock' },
    });
  });

  /*
   * Dilution, 0.300 mol/L CuSO4·5H2O, 249.68 g/mol: 4 × (15 + 10) = 100 mL, with spare 110 mL: 200 mL made, 14.98 g; used 60 mL. Waste:
   * 4 × (100 + 10) and the 100 mL that stay in the bottle.
   */
  it('counts what staff make, and what stays over of it', () => {
    const givens = { ...silver, formula: 'CuSO4·5H2O', ion: 'Cu^2+' };
    expect(balanceOf('dilution', givens, { classes: { Fern: 4 } })).toMatchObject({
      consumed: [{ formula: 'CuSO4·5H2O', unit: 'g', amount: 14.98 }],
      madeMl: 200,
      usedMl: 60,
      wasteMl: 540,
      isMostlyWaste: false,
      saving: undefined,
    });
  });

  it('says nothing of use where making the solution is the whole lesson', () => {
    const solid = { formula: 'KBr', molarity: '0.250', flask: '100', ion: 'Br-' };
    const found = balanceOf('solution from a solid', solid, { classes: { Fern: 3 } });
    expect(found).toMatchObject({
      madeMl: 300,
      usedMl: undefined,
      wasteMl: 300,
      isMostlyWaste: false,
      saving: undefined,
    });
  });

  it('leaves no liquid where a portion is dried', () => {
    const residue = { formula: 'KBr', molarity: '0.500', portion: '25' };
    // 4 × (25 + 10) × 1.1 = 154 mL, so 200 mL; 60 mL stay over and 4 × 10 mL are rinsings.
    expect(balanceOf('weighed residue', residue, { classes: { Fern: 4 } }).wasteMl).toBe(100);
  });

  it('says that the same numbers would do with one solution of a reagent for each class', () => {
    const activity = activityById('concentrated reagent');
    if (activity === undefined) throw new Error('there is no such activity');
    const acid = { formula: 'HCl', 'mass percent': '37.2', density: '1.18', 'target volume': '100' };
    const teams = ['0.300', '0.350', '0.400', '0.450'].map(
      (target, at): TeamPlan => ({
        key: String(at),
        className: 'Fern',
        team: String(at),
        givens: { ...acid, 'target molarity': target },
      }),
    );
    const found = materialBalance({ activity, teams, shelf: defaultShelf, settings: defaultSettings });
    // 100 mL with spare is 110 mL: 200 mL of each.
    expect(found).toMatchObject({ madeMl: 800, saving: { by: 'same numbers', solutions: 4, wasteMl: 200 } });
    expect(found.consumed).toMatchObject([{ formula: 'HCl', unit: 'mL', massPercent: 37.2 }]);
  });

  it('counts nothing for a line that cannot be read', () => {
    expect(balanceOf('dilution', { ...silver, 'stock molarity': 'strong' }, { classes: { Fern: 2 } })).toMatchObject({
      consumed: [],
      madeMl: 0,
      wasteMl: 0,
    });
  });
});
