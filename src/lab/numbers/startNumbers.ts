import { molarMass } from '../../chemistry/molarMass.ts';
import { readFormula } from '../../chemistry/readFormula.ts';
import { quoted } from '../../errors/quoted.ts';
import { failure, type Result, success } from '../../errors/result.ts';
import { isBlank } from '../../measurement/cellValue.ts';
import { readQuantity, type TypedQuantity } from '../../measurement/readQuantity.ts';
import type { Activity, Given } from '../activity.ts';
import { ionCounts } from '../ionCounts.ts';
import type { Setup } from '../setup.ts';
import { solubleMolarity } from '../solutes.ts';
import { startTexts } from '../texts/numbers.ts';
import type { LessonNumbers, Substance } from './lessonNumbers.ts';

/** The numbers that a teacher starts from, read. */
export interface StartNumbers {
  readonly substance: Substance;
  /** By name of the given, for each that holds a number. */
  readonly typed: Readonly<Record<string, TypedQuantity>>;
  readonly lesson: LessonNumbers;
}

const kinds = { 'mol/L': 'concentration', mL: 'volume', g: 'mass', 'g/mL': 'density', '%': 'percent' } as const;
const kindOf = ({ unit }: Given) => (unit in kinds ? kinds[unit as keyof typeof kinds] : undefined);

/** The lesson's numbers by their places in the recipe, from values by name of the given. */
export function lessonNumbers({ numbers }: Activity, values: Readonly<Record<string, number>>): LessonNumbers {
  const value = (name: string): number => values[name] ?? Number.NaN;
  const { solid, dilution } = numbers;
  return {
    ...(solid ? { solid: { molarity: value(solid.molarity), flask: value(solid.flask) } } : {}),
    ...(dilution
      ? { dilution: { stock: value(dilution.stock), target: value(dilution.target), volume: value(dilution.volume) } }
      : {}),
  };
}

/**
 * Reads what a plan starts from. Fails with `numbers-start` for a blank, or as reading the number, the formula or the ion
 * does; `argument` is the given's name.
 */
export function readStartNumbers(activity: Activity, setup: Setup): Result<StartNumbers> {
  const decimalMark = setup.settings['decimal mark'] === 'comma' ? 'comma' : 'point';
  const typed: Record<string, TypedQuantity> = {};
  for (const given of activity.givens) {
    const cell = setup.givens[given.name];
    if (isBlank(cell)) {
      if (given.optional) continue;
      return failure({ code: 'numbers-start', argument: given.name, ...startTexts.missing(given.about) });
    }
    const kind = kindOf(given);
    if (kind === undefined) continue;
    const read = readQuantity(cell, kind, given.name, { decimalMark });
    if (!read.ok) return read;
    if (!(read.value.value > 0)) {
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
  if (numbers.ion !== undefined) {
    const counts = ionCounts(formula.value, setup.givens[numbers.ion]);
    if (!counts.ok) return failure({ ...counts.error, argument: numbers.ion });
  }
  const values = Object.fromEntries(Object.entries(typed).map(([name, { value }]) => [name, value]));
  const purity = numbers.solid?.purity;
  return success({
    typed,
    substance: {
      formula: formulaText.trim(),
      molarMass: mass.value,
      purityPercent: (purity === undefined ? undefined : values[purity]) ?? 100,
      solubleMolarity: solubleMolarity(formulaText),
    },
    lesson: lessonNumbers(activity, values),
  });
}
