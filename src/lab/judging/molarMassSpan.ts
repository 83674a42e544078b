import { elementBySymbol, elementOf, relativeMass } from '../../chemistry/elements.ts';
import type { Formula } from '../../chemistry/formula.ts';
import type { WrongMolarMass } from '../quantities/quantityEntry.ts';
import { roundedWeight } from './roundedWeight.ts';
import type { Span } from './span.ts';

interface SumOf {
  readonly atoms: Formula['atoms'];
  readonly byAtomicNumber: boolean;
  readonly decimals: number;
}

function sumOf({ atoms, byAtomicNumber, decimals }: SumOf): Span {
  let low = 0;
  let middle = 0;
  let high = 0;
  for (const { element, count } of atoms) {
    const weight = byAtomicNumber ? elementBySymbol(elementOf(element))?.atomicNumber : relativeMass(element);
    if (weight === undefined) throw new Error(`${element} has no atomic weight, which is found before this`);
    const rounded = byAtomicNumber ? { low: weight, high: weight } : roundedWeight(weight, decimals);
    low += count * rounded.low;
    middle += count * weight;
    high += count * rounded.high;
  }
  return { low, middle, high };
}

/**
 * Least, unrounded and greatest molar mass where each atomic weight, independently, is left alone or rounded to
 * `decimals` or more decimals. Atomic numbers have nothing to round.
 */
export function molarMassSpan({ atoms, byAtomicNumber: numbers, times }: WrongMolarMass, decimals: number): Span {
  const byAtomicNumber = numbers === true;
  const span = sumOf({ atoms, byAtomicNumber, decimals });
  if (!times) return span;
  const other = sumOf({ atoms: times, byAtomicNumber, decimals });
  return { low: span.low * other.low, middle: span.middle * other.middle, high: span.high * other.high };
}
