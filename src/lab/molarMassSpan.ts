import { elementOf, elements, relativeMass } from '../chemistry/elements.ts';
import type { WrongMolarMass } from './quantities/quantityEntry.ts';
import { roundedWeight } from './roundedWeight.ts';
import type { Span } from './span.ts';

/**
 * Least, unrounded and greatest molar mass where each atomic weight, independently, is left alone or rounded to
 * `decimals` or more decimals. Atomic numbers have nothing to round.
 */
export function molarMassSpan({ atoms, byAtomicNumber }: WrongMolarMass, decimals: number): Span {
  let low = 0;
  let middle = 0;
  let high = 0;
  for (const { element, count } of atoms) {
    const weight = byAtomicNumber ? elements().get(elementOf(element))?.atomicNumber : relativeMass(element);
    if (weight === undefined) throw new Error(`${element} has no atomic weight, which is found before this`);
    const rounded = byAtomicNumber ? { low: weight, high: weight } : roundedWeight(weight, decimals);
    low += count * rounded.low;
    middle += count * weight;
    high += count * rounded.high;
  }
  return { low, middle, high };
}
