import { molarMass } from '../../chemistry/molarMass.ts';
import { type Formula, readFormula } from '../../chemistry/readFormula.ts';
import { failure, type Result, success } from '../../errors/result.ts';
import { isBlank } from '../../measurement/cellValue.ts';
import { isBareNumber } from '../../measurement/isBareNumber.ts';
import {
  type Grams,
  type GramsPerMillilitre,
  type Millilitres,
  type MolesPerLitre,
  molesPerLitre,
  type Percent,
  percent,
} from '../../measurement/quantity.ts';
import { readQuantity } from '../../measurement/readQuantity.ts';
import type { Activity } from '../lesson/activity.ts';
import { dilutionsIn } from '../lesson/dilutionsIn.ts';
import type { TeamPlan } from '../lesson/setup.ts';
import { recipeNumbers } from '../numbers/recipeNumbers.ts';
import { recipeOf } from '../numbers/recipeOf.ts';

/** A solution at one strength, and how much of it. */
export interface Portion {
  readonly formula: Formula;
  readonly molarity: MolesPerLitre;
  readonly volume: Millilitres;
  /** The molarity as the Plan has it, figures kept; left out where it is worked out. */
  readonly typed?: string;
}

/** What one team needs and makes, read from its own numbers. */
export interface TeamUse {
  readonly team: TeamPlan;
  readonly formula: Formula;
  readonly solid?: { readonly mass: Grams; readonly purity?: Percent };
  /** A solution that the team makes from the solid. */
  readonly made?: Portion;
  /** Taken from a stock that staff set out. */
  readonly taken?: Portion;
  /** Taken from the stock that the team made itself. */
  readonly takenFromOwn?: Portion;
  /** The team's own weaker solutions, strongest first. */
  readonly diluted: readonly Portion[];
  /** A solution that staff make from the bottle while students watch. */
  readonly madeByStaff?: Portion & { readonly massPercent: Percent; readonly density: GramsPerMillilitre };
  /** Taken from the bottle by the students themselves, in mL: only where the Plan says so. */
  readonly poured?: { readonly volume: Millilitres; readonly massPercent: Percent };
  /** Sizes in mL of the flasks the team fills. */
  readonly flasksMl: readonly number[];
  /** Volumes in mL that it delivers by pipette, each once. */
  readonly deliveredMl: readonly number[];
  /** Portions that are dried and weighed. */
  readonly driedCount: number;
  /** Portions that are weighed in a closed vessel. */
  readonly closedCount: number;
  readonly weighings: readonly Grams[];
  /** Only where the activity names no recipe. */
  readonly handled?: Handled;
}

/** What the team handles where no recipe says how much: it stands ready in these forms. */
export interface Handled {
  /** The substance itself is weighed. */
  readonly solid: boolean;
  /** Of a concentrated reagent, as its label has it. */
  readonly massPercent?: Percent;
  /** Of the strongest solution that is handled. */
  readonly molarity?: MolesPerLitre;
  /** The molarity as the Plan has it. */
  readonly typed?: string;
}

/**
 * Reads a team's line of the Plan.
 *
 * @returns Fails with what reading one of its cells fails with, or with what the relation itself refuses.
 */
export function teamUse(
  activity: Activity,
  team: TeamPlan,
  {
    decimalMark,
    studentsDilute,
  }: { readonly decimalMark: 'point' | 'comma' /** Staff do where this is false. */; readonly studentsDilute: boolean },
): Result<TeamUse> {
  const { numbers } = activity;
  const formula = readFormula(team.givens[numbers.formula], numbers.formula);
  if (!formula.ok) return formula;
  const mass = molarMass(formula.value);
  if (!mass.ok) return mass;
  let trouble: Result<never> | undefined;
  /** A given as a number in its unit; the first that cannot be read is kept as the trouble. */
  const read = (name: string, kind: Parameters<typeof readQuantity>[1]): number => {
    const cell = team.givens[name];
    const quantity: Result<{ readonly value: number }> = isBlank(cell)
      ? failure({
          code: 'given-missing',
          argument: name,
          advice: 'Fill in the cell in the Plan.',
          brief: name,
        })
      : readQuantity(cell, kind, name, { decimalMark });
    if (quantity.ok) return quantity.value.value;
    trouble ??= quantity;
    return Number.NaN;
  };
  const portion = (molarity: MolesPerLitre, volume: Millilitres, given?: string): Portion => ({
    formula: formula.value,
    molarity,
    volume,
    ...typedAs(given),
  });
  /** With a unit of its own it is shown as it was read. */
  const typedAs = (given: string | undefined): { readonly typed?: string } => {
    const cell = (given === undefined ? '' : (team.givens[given] ?? '')).trim();
    return isBareNumber(cell) ? { typed: cell } : {};
  };
  const nothing: TeamUse = {
    team,
    formula: formula.value,
    diluted: [],
    flasksMl: [],
    deliveredMl: [],
    driedCount: 0,
    closedCount: 0,
    weighings: [],
  };

  const recipe = recipeOf(activity);
  if (recipe === undefined) {
    const ticked = activity.steps.find((step) => step.kind === 'ticked');
    const { solid = false, massPercent, molarity } = ticked?.substance ?? {};
    const handled: Handled = {
      solid,
      ...(massPercent === undefined ? {} : { massPercent: percent(read(massPercent, 'percent')) }),
      ...(molarity === undefined
        ? {}
        : { molarity: molesPerLitre(read(molarity, 'concentration')), ...typedAs(molarity) }),
    };
    return trouble ?? success({ ...nothing, handled });
  }

  const values: Record<string, number> = {};
  for (const [own, { kind, optional }] of Object.entries(recipe.entry.takes)) {
    const given = recipe.takes[own];
    if (given === undefined || (optional && isBlank(team.givens[given]))) continue;
    values[given] = read(given, kind);
  }
  if (trouble) return trouble;
  const amounts = recipe.entry.use(recipeNumbers(recipe, values), {
    molarMass: mass.value,
    portion: (molarity, volume, own) => portion(molarity, volume, own === undefined ? undefined : recipe.takes[own]),
    dilutions: dilutionsIn(activity),
    studentsDilute,
  });
  return amounts.ok ? success({ ...nothing, ...amounts.value }) : amounts;
}
