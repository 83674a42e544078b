import type { Formula } from '../../chemistry/formula.ts';
import { molarMass } from '../../chemistry/molarMass.ts';
import { readFormula } from '../../chemistry/readFormula.ts';
import { failure, type Result, success } from '../../errors/result.ts';
import { type CellValue, isBlank } from '../../measurement/cellValue.ts';
import { readNumber } from '../../measurement/readNumber.ts';
import { readQuantity } from '../../measurement/readQuantity.ts';
import { type GivenCells, namesTaken } from '../lesson/givenCells.ts';
import type { IonNumbers, QuantityArgument, QuantityEntry } from '../quantities/quantityEntry.ts';
import type { FilledQuantity } from './filledQuantity.ts';
import { ionCounts } from './ionCounts.ts';
import { molarMassSpan } from './molarMassSpan.ts';
import type { Asked } from './tolerance.ts';

export interface Preparation {
  /** Significant figures asked; left out, the quantity's own. */
  readonly figures?: number | undefined;
  /** To how many decimals atomic weights may be rounded; 2 where left out. */
  readonly decimals?: number | undefined;
  readonly decimalMark?: 'point' | 'comma' | undefined;
  /** Numbers that stand ready, such as a team's own entries; they need no cell. */
  readonly numbers?: Partial<Record<string, number>> | undefined;
  /** What the sheet calls an argument, where not by its own name. */
  readonly names?: Readonly<Record<string, string>> | undefined;
}

/** What a quantity takes and builds on before anything is read: not a number, unless it may be left out. */
const nothingRead = ({ takes, buildsOn }: QuantityEntry): Readonly<Record<string, number>> =>
  Object.fromEntries([
    ...buildsOn.map(({ name }) => [name, Number.NaN]),
    ...takes.flatMap(({ name, kind, leftOut = Number.NaN }) =>
      kind === 'formula' || kind === 'ion' ? [] : [[name, leftOut]],
    ),
  ]);
const noIons = { ionCount: Number.NaN, ionCharge: Number.NaN, otherIonCounts: [] } as const;

function askedOf(quantity: QuantityEntry, { figures, decimals = 2 }: Preparation): Asked {
  if (figures !== undefined) return { figures };
  return quantity.figures === 'decimals' ? { decimals } : { figures: quantity.figures };
}

const comparedKinds = ['concentration', 'mass', 'volume', 'density', 'amount', 'percent'] as const;
type ComparedKind = (typeof comparedKinds)[number];

/**
 * A pure number, or one with a unit; two values that are compared have units of one kind, and the second, where the
 * first had one, is read as that kind.
 */
function readAnyNumber(
  cell: CellValue,
  name: string,
  { marks, kind }: { marks: { decimalMark?: 'point' | 'comma' }; kind: ComparedKind | undefined },
): Result<{ value: number; kind: ComparedKind | undefined }> {
  const plain = readNumber(cell, name, marks);
  if (plain.ok) return success({ value: plain.value.value, kind });
  for (const tried of kind ? [kind] : comparedKinds) {
    const quantity = readQuantity(cell, tried, name, marks);
    if (quantity.ok) return success({ value: quantity.value.value, kind: tried });
    if (kind) return quantity;
  }
  return plain;
}

/**
 * A quantity with its numbers in place.
 *
 * @returns Fails with `given-missing`, with what reading a cell fails with, or with what the relation itself refuses,
 * such as a target that is not below the stock; `argument` is always the given's name in the sheet.
 */
export function fillQuantity(
  quantity: QuantityEntry,
  cells: GivenCells,
  preparation: Preparation = {},
): Result<FilledQuantity> {
  const { decimals = 2, numbers: ready = {}, names = {} } = preparation;
  const marks = preparation.decimalMark ? { decimalMark: preparation.decimalMark } : {};
  const called = ({ name }: QuantityArgument) => names[name] ?? name;
  const numbers: Record<string, number> = {};
  let formula: Formula | undefined;
  let compared: ComparedKind | undefined;
  let ions: IonNumbers | undefined;
  for (const argument of quantity.takes) {
    const cell = cells[argument.name];
    if (argument.name in ready) continue;
    if (isBlank(cell)) {
      if (argument.optional) continue;
      return failure({
        code: 'given-missing',
        argument: called(argument),
        advice: `For ${quantity.name}, give ${namesTaken(quantity)}.`,
        brief: called(argument),
      });
    }
    if (argument.kind === 'formula') {
      const read = readFormula(cell, called(argument));
      if (!read.ok) return read;
      formula = read.value;
    } else if (argument.kind === 'ion') {
      if (!formula) throw new Error(`${quantity.name}: the ion comes after its formula`);
      const counts = ionCounts(formula, cell);
      if (!counts.ok) return failure({ ...counts.error, argument: sheetName(counts.error.argument, names) });
      ions = counts.value;
    } else if (argument.kind === 'number') {
      const read = readAnyNumber(cell, called(argument), { marks, kind: compared });
      if (!read.ok) return read;
      numbers[argument.name] = read.value.value;
      compared = read.value.kind;
    } else {
      const read = readQuantity(cell, argument.kind, called(argument), marks);
      if (!read.ok) return read;
      numbers[argument.name] = read.value.value;
    }
  }
  const weighed = ions ? undefined : formula;
  if (weighed) {
    const mass = molarMass(weighed);
    if (!mass.ok) return failure({ ...mass.error, argument: sheetName(mass.error.argument, names) });
  }
  const span = weighed ? molarMassSpan(weighed, decimals) : undefined;
  const step: FilledQuantity = {
    quantity,
    formula: weighed,
    molarMass: span,
    numbers: { ...nothingRead(quantity), ...noIons, ...ions, ...numbers, ...ready },
    asked: askedOf(quantity, preparation),
    decimals,
  };
  // A number that is still to come, NaN, is nothing to refuse.
  if (Object.values(ready).some(Number.isNaN)) return success(step);
  const refused = quantity.chemistry({ ...step.numbers, 'molar mass': span?.middle ?? Number.NaN });
  return refused.ok ? success(step) : failure({ ...refused.error, argument: sheetName(refused.error.argument, names) });
}

/** What chemistry calls its arguments, where a given has another name. */
const givenNames: Readonly<Record<string, string>> = { grams: 'mass', 'purity percent': 'purity' };

/** `target_molarity` of a chemistry function is the given `target molarity`, or what the sheet calls it. */
const sheetName = (argument: string, names: Readonly<Record<string, string>>): string => {
  const spaced = argument.replace(/_/g, ' ');
  const name = givenNames[spaced] ?? spaced;
  return names[name] ?? name;
};
