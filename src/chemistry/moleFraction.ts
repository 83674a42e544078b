import { failure, type Result } from '../errors/result.ts';
import { belowZero, notAboveZero } from '../measurement/aboveZero.ts';
import { finite } from '../measurement/finite.ts';
import type { Grams, GramsPerMole } from '../measurement/quantity.ts';

export interface Component {
  readonly molarMass: GramsPerMole;
  readonly mass: Grams;
}

/**
 * Share of the first of two components in the amount of both.
 *
 * @returns A pure number from 0 to 1. Fails with `below-zero`, or `not-above-zero` where both masses are 0.
 * Source: definition of amount fraction, IUPAC Gold Book.
 */
export function moleFraction({
  first,
  second,
}: {
  readonly first: Component;
  readonly second: Component;
}): Result<number> {
  const error =
    belowZero(
      { value: first.mass, argument: 'grams_1', unit: 'g' },
      { value: second.mass, argument: 'grams_2', unit: 'g' },
    ) ?? notAboveZero({ value: first.mass + second.mass, argument: 'grams_1', unit: 'g' });
  if (error) return failure(error);
  const amount = first.mass / first.molarMass;
  return finite(amount / (amount + second.mass / second.molarMass), 'grams_1');
}
