import { failure, type Result } from '../errors/result.ts';
import { notAboveZero } from '../measurement/aboveZero.ts';
import { finite } from '../measurement/finite.ts';
import { type Grams, type GramsPerMillilitre, gramsPerMillilitre, type Millilitres } from '../measurement/quantity.ts';

/**
 * Density of a portion that was measured by volume and weighed.
 *
 * @returns g/mL, not rounded. Fails with `not-above-zero`.
 * Source: definition of mass density, IUPAC Gold Book.
 */
export function density({
  mass,
  volume,
}: {
  readonly mass: Grams;
  readonly volume: Millilitres;
}): Result<GramsPerMillilitre> {
  const error = notAboveZero(
    { value: mass, argument: 'mass', unit: 'g' },
    { value: volume, argument: 'volume', unit: 'mL' },
  );
  return error ? failure(error) : finite(gramsPerMillilitre(mass / volume), 'mass');
}
