import { failure, type Result } from '../errors/result.ts';
import { belowZero } from '../measurement/aboveZero.ts';
import { finite } from '../measurement/finite.ts';
import { type Grams, type GramsPerMole, grams, type Moles } from '../measurement/quantity.ts';

/**
 * Mass of an amount of a substance.
 *
 * @returns g, not rounded. Fails with `below-zero`.
 * Source: definition of molar mass, IUPAC Gold Book.
 */
export function massOf({
  molarMass,
  amount,
}: {
  readonly molarMass: GramsPerMole;
  readonly amount: Moles;
}): Result<Grams> {
  const error = belowZero({ value: amount, argument: 'moles', unit: 'mol' });
  return error ? failure(error) : finite(grams(amount * molarMass), 'moles');
}
