import { type IonCount, ions } from '../../chemistry/ions.ts';
import { molarMass } from '../../chemistry/molarMass.ts';
import { readFormula } from '../../chemistry/readFormula.ts';
import { failure, type Result, success } from '../../errors/result.ts';
import { notAboveZero } from '../../measurement/aboveZero.ts';
import { isBlank } from '../../measurement/cellValue.ts';
import type { Millilitres, MolesPerLitre } from '../../measurement/quantity.ts';
import { readQuantity } from '../../measurement/readQuantity.ts';
import type { Activity } from '../lesson/activity.ts';
import { recipeNumbers } from '../numbers/recipeNumbers.ts';
import { recipeOf } from '../numbers/recipeOf.ts';
import { particleTexts } from '../texts/particles.ts';

/** What a team's own numbers say about its solutions, as far as a picture needs them. */
export interface Solutions {
  /** As typed. */
  readonly formula: string;
  /** What one formula unit gives in water. */
  readonly kinds: readonly IonCount[];
  /** The solution that is made or taken. */
  readonly first: { readonly molarity: MolesPerLitre; readonly volume: Millilitres };
  /** What the first becomes, where the activity dilutes: `first.volume` is then the portion that goes into it. */
  readonly diluted?: { readonly molarity: MolesPerLitre; readonly volume: Millilitres };
  /** Which dilution of a row of flasks it is, from 1 on; left out where there is no row. */
  readonly step?: number;
}

export interface TeamNumbersToRead {
  readonly activity: Pick<Activity, 'numbers'>;
  /** By name of the given, as typed. */
  readonly givens: Readonly<Record<string, string>>;
  readonly decimalMark: 'point' | 'comma';
  /** Which dilution of a row of flasks; the first where left out. */
  readonly step?: number;
}

/**
 * Reads the solutions of a team from its own numbers. Of a row of flasks it is one dilution: from the stock or the flask
 * before into the next.
 *
 * @returns Fails as `readFormula`, `ions`, `readQuantity` and the recipe's relation do, and with `nothing-to-picture` where
 * the activity makes no solution that is known.
 */
export function readSolutions({ activity, givens, decimalMark, step = 1 }: TeamNumbersToRead): Result<Solutions> {
  const { formula: name } = activity.numbers;
  const formula = readFormula(givens[name], name);
  if (!formula.ok) return formula;
  const recipe = recipeOf(activity);
  if (recipe?.entry.picture === undefined) {
    return failure({ code: 'nothing-to-picture', argument: name, ...particleTexts.noPicture });
  }
  const kinds = ions(formula.value);
  if (!kinds.ok) return kinds;
  const mass = molarMass(formula.value);
  if (!mass.ok) return mass;
  const numbers: Record<string, number> = {};
  for (const [own, { kind, optional, isPictured = true }] of Object.entries(recipe.entry.takes)) {
    const given = recipe.takes[own];
    if (given === undefined || !isPictured || (optional && isBlank(givens[given]))) continue;
    const quantity = readQuantity(givens[given], kind, given, { decimalMark });
    if (!quantity.ok) return quantity;
    const { value, unit } = quantity.value;
    const error = notAboveZero({ value, argument: given, unit });
    if (error) return failure(error);
    numbers[given] = value;
  }
  const pictured = recipe.entry.picture(recipeNumbers(recipe, numbers), { molarMass: mass.value, step });
  if (!pictured.ok) return pictured;
  return success({ formula: formula.value.text, kinds: kinds.value, ...pictured.value });
}
