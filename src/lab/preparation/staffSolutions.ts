import { molarMass } from '../../chemistry/molarMass.ts';
import type { Formula } from '../../chemistry/readFormula.ts';
import { reagentMolarity } from '../../chemistry/reagentMolarity.ts';
import { bottleOf } from '../../chemistry/solutionStrength.ts';
import {
  type GramsPerMole,
  gramsPerMillilitre,
  type MolesPerLitre,
  type Percent,
  percent,
} from '../../measurement/quantity.ts';
import type { Shelf } from '../lesson/setup.ts';
import { roundedUp } from './spare.ts';
import type { TeamUse } from './teamUse.ts';

/** A solution that staff make before the day, or in front of the class. */
export interface StaffSolution {
  readonly formula: Formula;
  readonly molarity: MolesPerLitre;
  /** As the Plan has it, where it is typed without a unit. */
  readonly typed?: string;
  readonly teams: number;
  /** Made in front of each class once, from a concentrated reagent: no team takes of it. */
  readonly isWatched: boolean;
  /** What the teams take, rinsing included, or what classes watch, in mL. */
  readonly neededMl: number;
  readonly withSpareMl: number;
  /** One flask, filled so many times. */
  readonly flaskMl: number;
  readonly fillings: number;
  readonly from:
    | { readonly kind: 'solid'; readonly gramsEach: number; readonly gramsInAll: number }
    | {
        readonly kind: 'bottle';
        readonly massPercent: Percent;
        readonly density: number;
        readonly millilitresEach: number;
        readonly millilitresInAll: number;
        /** False: the strength stands in the Plan; true: a supplier's table, to compare with the bottle in hand. */
        readonly isFromTable: boolean;
      };
}

/** Stock that a team rinses its pipette with and throws away, in mL (common practice, no source). */
export const rinseMl = 10;

/** The filling that wastes least; with four of the largest flask not enough, as many as it takes. */
function flaskFor(volumeMl: number, { flasksMl }: Shelf): { readonly flaskMl: number; readonly fillings: number } {
  const largest = Math.max(...flasksMl);
  const choices = flasksMl
    .map((flaskMl) => ({ flaskMl, fillings: Math.max(1, Math.ceil(volumeMl / flaskMl - 1e-9)) }))
    .filter(({ flaskMl, fillings }) => fillings <= 4 || flaskMl === largest);
  return choices.reduce((best, choice) => {
    const waste = choice.flaskMl * choice.fillings - best.flaskMl * best.fillings;
    return waste < 0 || (waste === 0 && choice.fillings < best.fillings) ? choice : best;
  });
}

interface Need {
  readonly formula: Formula;
  readonly molarity: MolesPerLitre;
  readonly typed: string | undefined;
  readonly bottle:
    | { readonly massPercent: Percent; readonly density: number; readonly isFromTable: boolean }
    | undefined;
  teams: number;
  neededMl: number;
  /** Of what a class watches, the largest volume of its teams, by class. */
  readonly watchedMl: Map<string, number>;
}

/**
 * Stocks that stand ready for the teams, and solutions of concentrated reagents, which staff make: one line a strength. A
 * reagent is diluted once in front of each class, however many of its teams have worked that solution out.
 */
export function staffSolutions(
  uses: readonly TeamUse[],
  { shelf, spare }: { readonly shelf: Shelf; readonly spare: number },
): readonly StaffSolution[] {
  const needs = new Map<string, Need>();
  const lineFor = (key: string, need: Omit<Need, 'teams' | 'neededMl' | 'watchedMl'>): Need => {
    const line = needs.get(key) ?? { ...need, teams: 0, neededMl: 0, watchedMl: new Map() };
    line.teams += 1;
    needs.set(key, line);
    return line;
  };
  for (const { team, taken, madeByStaff } of uses) {
    if (taken) {
      const table = bottleOf(taken.formula.text);
      const bottle = table && { massPercent: percent(table.massPercent), density: table.density, isFromTable: true };
      const { formula, molarity, typed } = taken;
      lineFor(`${formula.text} ${molarity}`, { formula, molarity, typed, bottle }).neededMl += taken.volume + rinseMl;
    }
    if (madeByStaff) {
      const { formula, molarity, massPercent, density, volume, typed } = madeByStaff;
      const bottle = { massPercent, density, isFromTable: false };
      const key = `${formula.text} ${molarity} ${massPercent} ${density}`;
      const line = lineFor(key, { formula, molarity, typed, bottle });
      line.watchedMl.set(team.className, Math.max(volume, line.watchedMl.get(team.className) ?? 0));
    }
  }
  return [...needs.values()]
    .map((need) => solutionOf(need, { shelf, spare }))
    .sort((one, other) =>
      one.formula.text === other.formula.text
        ? other.molarity - one.molarity
        : one.formula.text < other.formula.text
          ? -1
          : 1,
    );
}

function solutionOf(
  { formula, molarity, typed, bottle, teams, neededMl: takenMl, watchedMl }: Need,
  { shelf, spare }: { readonly shelf: Shelf; readonly spare: number },
): StaffSolution {
  const neededMl = takenMl + [...watchedMl.values()].reduce((sum, volume) => sum + volume, 0);
  const withSpareMl = roundedUp(neededMl * (1 + spare), 1);
  const { flaskMl, fillings } = flaskFor(withSpareMl, shelf);
  const mass = molarMass(formula);
  // The team's line was read with the same formula, so its mass is known.
  const perMole = mass.ok ? mass.value : (Number.NaN as GramsPerMole);
  const shared = {
    formula,
    molarity,
    ...(typed === undefined ? {} : { typed }),
    teams,
    isWatched: watchedMl.size > 0,
    neededMl,
    withSpareMl,
    flaskMl,
    fillings,
  };
  const strength =
    bottle &&
    reagentMolarity({
      molarMass: perMole,
      massPercent: bottle.massPercent,
      density: gramsPerMillilitre(bottle.density),
    });
  if (bottle && strength?.ok && strength.value > molarity) {
    const each = (molarity * flaskMl) / strength.value;
    return {
      ...shared,
      from: {
        kind: 'bottle',
        ...bottle,
        millilitresEach: Number(each.toFixed(1)),
        millilitresInAll: Number((each * fillings).toFixed(1)),
      },
    };
  }
  const each = (molarity * flaskMl * perMole) / 1000;
  const step = shelf.balanceReadabilityG;
  const places = Math.max(0, Math.round(-Math.log10(step)));
  const shown = Number((Math.round(each / step) * step).toFixed(places));
  return {
    ...shared,
    from: { kind: 'solid', gramsEach: shown, gramsInAll: Number((shown * fillings).toFixed(places)) },
  };
}
