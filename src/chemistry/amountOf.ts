import { failure, type Result } from '../errors/result.ts';
import { belowZero } from '../measurement/aboveZero.ts';
import { finite } from '../measurement/finite.ts';
import { type Grams, type GramsPerMole, type Moles, moles } from '../measurement/quantity.ts';

/**
 * Amount of a substance from its mass.
 *
 * @returns mol, not rounded. Fails with `below-zero`.
 * Source: definition of molar mass, IUPAC Gold Book.
 */
export function amountOf({
  molarMass,
  mass,
}: {
  readonly molarMass: GramsPerMole;
  readonly mass: Grams;
}): Result<Moles> {
  const error = belowZero({ value: mass, argument: 'grams', unit: 'g' });
  return error ? failure(error) : finite(moles(mass / molarMass), 'grams');
}
