import { elementOf, elements, relativeMass } from '../chemistry/elements.ts';
import type { WrongMolarMass } from './quantities/quantityEntry.ts';
import { roundedWeight, shortenedWeight } from './roundedWeight.ts';
import type { Span } from './span.ts';

/**
 * Least, unrounded and greatest molar mass where each atomic weight, independently, is left alone or rounded to
 * `decimals` or more decimals. Atomic numbers have nothing to round, and weights that a slip has shortened stay as they are.
 */
export function molarMassSpan({ atoms, byAtomicNumber, shortened }: WrongMolarMass, decimals: number): Span {
  let low = 0;
  let middle = 0;
  let high = 0;
  for (const { element, count } of atoms) {
    const weight = byAtomicNumber ? elements().get(elementOf(element))?.atomicNumber : relativeMass(element);
    if (weight === undefined) throw new Error(`${element} has no atomic weight, which is found before this`);
    const own = shortened ? shortenedWeight(weight, shortened.decimals)[shortened.way] : weight;
    const rounded = byAtomicNumber || shortened ? { low: own, high: own } : roundedWeight(weight, decimals);
    low += count * rounded.low;
    middle += count * own;
    high += count * rounded.high;
  }
  return { low, middle, high };
}
