import { relativeMass } from '../../chemistry/elements.ts';
import type { Formula } from '../../chemistry/formula.ts';
import { shortenedWeight } from './roundedWeight.ts';
import { isWithin, tenTo } from './span.ts';
import type { TypedEntry } from './typedEntry.ts';

/** Weights that tables of whole numbers print with a half, since whole ones would be too far off. */
const printedWithHalf: Readonly<Record<string, number>> = { Cl: 35.5, Cu: 63.5 };

/**
 * Molar masses from the short tables of atomic weights that schools use: every weight rounded to one decimal, ties up or
 * ties to even, or to a whole number with Cl 35.5 and Cu 63.5 (common practice, no source).
 *
 * @returns g/mol, one for each such table.
 */
export function schoolMolarMasses({ atoms }: Formula): readonly number[] {
  const sum = (weightIn: (weight: number, element: string) => number): number =>
    atoms.reduce(
      (mass, { element, count }) => mass + count * weightIn(relativeMass(element) ?? Number.NaN, element),
      0,
    );
  return [
    sum((weight) => shortenedWeight(weight, 1).halfUp),
    sum((weight) => shortenedWeight(weight, 1).halfEven),
    sum((weight, element) => printedWithHalf[element] ?? shortenedWeight(weight, 0).halfUp),
  ];
}

/** Whether an entry is what a short table gives, to half a unit of its last figure; one figure alone has to be all of it. */
export function isOfSchoolTable({ value, figuresMax, lastPlace }: TypedEntry, formula: Formula): boolean {
  const room = figuresMax > 1 ? tenTo(lastPlace) / 2 : 0;
  return schoolMolarMasses(formula).some((mass) => isWithin(value, { low: mass, high: mass }, room));
}
