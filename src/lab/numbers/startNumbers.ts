import { atomsKey } from '../../chemistry/atomsKey.ts';
import { type DensityLine, densityFormulas } from '../../chemistry/densityLines.ts';
import type { Formula } from '../../chemistry/formula.ts';
import { listedFormula } from '../../chemistry/listedFormula.ts';
import { molarMass } from '../../chemistry/molarMass.ts';
import { readFormula } from '../../chemistry/readFormula.ts';
import { quoted } from '../../errors/quoted.ts';
import { failure, type Result, success } from '../../errors/result.ts';
import { isBlank } from '../../measurement/cellValue.ts';
import { readQuantity, type TypedQuantity } from '../../measurement/readQuantity.ts';
import type { Activity, Given } from '../activity.ts';
import { concentratedReagents } from '../concentratedReagents.ts';
import { ionCounts } from '../ionCounts.ts';
import type { Setup } from '../setup.ts';
import { solubleMolarity } from '../solutes.ts';
import { numbersRemarks, startTexts } from '../texts/numbers.ts';
import type { LessonNumbers, Substance } from './lessonNumbers.ts';
import { readTableLines } from './readTableLines.ts';

/** The numbers that a teacher starts from, read. */
export interface StartNumbers {
  readonly substance: Substance;
  /** By name of the given, for each that holds a number. */
  readonly typed: Readonly<Record<string, TypedQuantity>>;
  readonly lesson: LessonNumbers;
  /** The table of densities, where the plan leaves its lines to us. */
  readonly table: readonly DensityLine[] | undefined;
  /** What to know about the substance, in plain words. */
  readonly remarks: readonly string[];
}

const kinds = { 'mol/L': 'concentration', mL: 'volume', g: 'mass', 'g/mL': 'density', '%': 'percent' } as const;
const kindOf = ({ unit }: Given) => (unit in kinds ? kinds[unit as keyof typeof kinds] : undefined);

/** The lesson's numbers by their places in the recipe, from values by name of the given. */
export function lessonNumbers(
  { numbers }: Activity,
  { values, molarMass }: { readonly values: Readonly<Record<string, number>>; readonly molarMass: number },
): LessonNumbers {
  const value = (name: string): number => values[name] ?? Number.NaN;
  const { solid, dilution, reagent, serial, residue, density } = numbers;
  return {
    ...(solid ? { solid: { molarity: value(solid.molarity), flask: value(solid.flask) } } : {}),
    ...(dilution
      ? { dilution: { stock: value(dilution.stock), target: value(dilution.target), volume: value(dilution.volume) } }
      : {}),
    ...(reagent
      ? {
          reagent: {
            stock: (10 * value(reagent.massPercent) * value(reagent.density)) / molarMass,
            target: value(reagent.target),
            volume: value(reagent.volume),
          },
        }
      : {}),
    ...(serial
      ? { serial: { stock: value(serial.stock), portion: value(serial.portion), flask: value(serial.flask) } }
      : {}),
    ...(residue ? { residue: { molarity: value(residue.molarity), portion: value(residue.portion) } } : {}),
    ...(density
      ? {
          density: {
            molarity: value(density.molarity),
            portion: value(density.portion),
            lighterPercent: value(density.lighterPercent),
            lighterDensity: value(density.lighterDensity),
            heavierPercent: value(density.heavierPercent),
            heavierDensity: value(density.heavierDensity),
          },
        }
      : {}),
  };
}

/** Salts that stay what they are when a portion is heated to dryness (common practice, no source). */
const dryingSalts = ['NaCl', 'KCl', 'KBr', 'Na2SO4', 'K2SO4'];

/** Hydrates of school laboratories to name where one is asked for. */
const someHydrates = ['CuSO4·5H2O', 'MgSO4·7H2O', 'CaCl2·2H2O'];

/** Whether a formula has the atoms of one of a list. */
const isAmong = (formula: Formula, list: readonly string[]): boolean =>
  list.some((written) => {
    const known = readFormula(written);
    return known.ok && atomsKey(known.value) === atomsKey(formula);
  });

/** What a lesson asks of its substance, where this one does not fit. */
function unfitSubstance(
  { residue, hydrate, reagent, density }: Activity['numbers'],
  { formula, received }: { readonly formula: Formula; readonly received: string },
) {
  if (residue && !isAmong(formula, dryingSalts)) return startTexts.dryingSalt(received, dryingSalts);
  if (density && listedFormula(formula) === undefined) return startTexts.densityTable(received, densityFormulas());
  if (hydrate && !formula.hydrate) return startTexts.hydrate(received, someHydrates);
  if (reagent) {
    const listed = concentratedReagents();
    if (
      !isAmong(
        formula,
        listed.map((one) => one.formula),
      )
    ) {
      return startTexts.concentratedReagent(
        received,
        listed.filter(({ forStaff }) => forStaff).map((one) => one.formula),
      );
    }
  }
  return undefined;
}

/**
 * Reads what a plan starts from. Fails with `numbers-start` for a blank, `numbers-solute` for a substance that the lesson
 * cannot be done with, or as reading the number, the formula or the ion does; `argument` is the given's name.
 */
export function readStartNumbers(activity: Activity, setup: Setup): Result<StartNumbers> {
  const decimalMark = setup.settings['decimal mark'] === 'comma' ? 'comma' : 'point';
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
  const unfit = unfitSubstance(numbers, { formula: formula.value, received: quoted(formulaText) });
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
  const lines = readTableLines(activity, { typed, formula: formula.value, molarMass: mass.value });
  if (!lines.ok) return lines;
  const values = Object.fromEntries(
    Object.entries({ ...typed, ...lines.value.filled }).map(([name, { value }]) => [name, value]),
  );
  const purity = numbers.solid?.purity;
  return success({
    typed: { ...typed, ...lines.value.filled },
    table: lines.value.table,
    remarks,
    substance: {
      formula: formulaText.trim(),
      molarMass: mass.value,
      purityPercent: (purity === undefined ? undefined : values[purity]) ?? 100,
      solubleMolarity: solubleMolarity(formulaText),
    },
    lesson: lessonNumbers(activity, { values, molarMass: mass.value }),
  });
}
