import type { DensityLine } from '../../chemistry/densityLines.ts';
import type { Formula } from '../../chemistry/formula.ts';
import { molarMass } from '../../chemistry/molarMass.ts';
import { readFormula } from '../../chemistry/readFormula.ts';
import { quoted } from '../../errors/quoted.ts';
import { failure, type Result, success } from '../../errors/result.ts';
import { isBlank } from '../../measurement/cellValue.ts';
import { readQuantity, type TypedQuantity } from '../../measurement/readQuantity.ts';
import { ionCounts } from '../judging/ionCounts.ts';
import type { Activity, Given } from '../lesson/activity.ts';
import { decimalMarkOf } from '../lesson/lessonSettings.ts';
import type { Setup } from '../lesson/setup.ts';
import { solubleMolarity } from '../lesson/solutes.ts';
import { numbersRemarks, startTexts } from '../texts/numbers.ts';
import { byOwnName } from './byOwnName.ts';
import type { Substance } from './recipe.ts';
import { type ActivityRecipe, recipeOf } from './recipeOf.ts';

/** The numbers that a teacher starts from, read. */
export interface StartNumbers {
  readonly substance: Substance;
  /** By name of the given, for each that holds a number. */
  readonly typed: Readonly<Record<string, TypedQuantity>>;
  /** The table of densities, where the plan leaves its lines to us. */
  readonly table: readonly DensityLine[] | undefined;
  /** What to know about the substance, in plain words. */
  readonly remarks: readonly string[];
}

const kinds = { 'mol/L': 'concentration', mL: 'volume', g: 'mass', 'g/mL': 'density', '%': 'percent' } as const;
const kindOf = ({ unit }: Given) => (unit in kinds ? kinds[unit as keyof typeof kinds] : undefined);

/** Hydrates of school laboratories to name where one is asked for. */
const someHydrates = ['CuSO4·5H2O', 'MgSO4·7H2O', 'CaCl2·2H2O'];

/** What a lesson asks of its substance, where this one does not fit. */
const unfitSubstance = (
  { numbers }: Activity,
  { recipe, formula, received }: { recipe: ActivityRecipe | undefined; formula: Formula; received: string },
) =>
  recipe?.entry.unfit?.(formula, received) ??
  (numbers.hydrate && !formula.hydrate ? startTexts.hydrate(received, someHydrates) : undefined);

/**
 * Reads what a plan starts from. Fails with `numbers-start` for a blank, `numbers-solute` for a substance that the lesson
 * cannot be done with, or as reading the number, the formula or the ion does; `argument` is the given's name.
 */
export function readStartNumbers(
  activity: Activity,
  setup: Pick<Setup, 'givens'> & { readonly settings: Pick<Setup['settings'], 'decimal mark'> },
): Result<StartNumbers> {
  const decimalMark = decimalMarkOf(setup.settings);
  const typed: Record<string, TypedQuantity> = {};
  for (const given of activity.givens) {
    const cell = setup.givens[given.name];
    if (isBlank(cell)) {
      // Whether there is an ion to name depends on the formula, which is read below.
      if (given.optional || given.fromTable || given.name === activity.numbers.ion) continue;
      return failure({ code: 'numbers-start', argument: given.name, ...startTexts.missing(given.about) });
    }
    const kind = kindOf(given);
    if (kind === undefined) continue;
    const read = readQuantity(cell, kind, given.name, { decimalMark });
    if (!read.ok) return read;
    if (!(read.value.value > 0) && !(given.fromTable && read.value.value === 0)) {
      return failure({ code: 'numbers-start', argument: given.name, ...startTexts.notPositive(quoted(cell)) });
    }
    typed[given.name] = read.value;
  }
  const { numbers } = activity;
  const formulaText = setup.givens[numbers.formula] ?? '';
  const formula = readFormula(formulaText, numbers.formula);
  if (!formula.ok) return formula;
  const mass = molarMass(formula.value);
  if (!mass.ok) return mass;
  const recipe = recipeOf(activity);
  const unfit = unfitSubstance(activity, { recipe, formula: formula.value, received: quoted(formulaText) });
  if (unfit) return failure({ code: 'numbers-solute', argument: numbers.formula, ...unfit });
  const remarks: string[] = [];
  if (numbers.ion !== undefined) {
    const ion = setup.givens[numbers.ion];
    const counts = ionCounts(formula.value, ion);
    if (!counts.ok && counts.error.code !== 'ion-not-in-formula') {
      remarks.push(numbersRemarks.noIons(formulaText.trim()));
    } else if (isBlank(ion)) {
      const about = activity.givens.find(({ name }) => name === numbers.ion)?.about ?? '';
      return failure({ code: 'numbers-start', argument: numbers.ion, ...startTexts.missing(about) });
    } else if (!counts.ok) {
      return failure({ ...counts.error, argument: numbers.ion });
    }
  }
  const givenOf = (name: string): string => recipe?.takes[name] ?? name;
  const lines = recipe?.entry.fillIn?.(byOwnName(recipe.takes, typed), {
    formula: formula.value,
    molarMass: mass.value,
    givenOf,
  });
  if (lines && !lines.ok) return lines;
  const all = { ...typed };
  for (const [name, filled] of Object.entries(lines?.value.filled ?? {})) if (filled) all[givenOf(name)] = filled;
  return success({
    typed: all,
    table: lines?.value.table,
    remarks,
    substance: {
      formula: formulaText.trim(),
      molarMass: mass.value,
      purityPercent: all[recipe?.takes.purity ?? '']?.value ?? 100,
      solubleMolarity: solubleMolarity(formulaText),
    },
  });
}
