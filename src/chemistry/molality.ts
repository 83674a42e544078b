import { failure, type Result } from '../errors/result.ts';
import { notAboveZero } from '../measurement/aboveZero.ts';
import { finite } from '../measurement/finite.ts';
import type { Grams, GramsPerMole, Quantity } from '../measurement/quantity.ts';

export interface SoluteInSolvent {
  readonly molarMass: GramsPerMole;
  readonly mass: Grams;
  readonly solventMass: Grams;
}

/**
 * Amount of solute in a kilogram of solvent.
 *
 * @returns mol/kg, not rounded. Fails with `not-above-zero`.
 * Source: definition of molality, IUPAC Gold Book.
 */
export function molality({ molarMass, mass, solventMass }: SoluteInSolvent): Result<Quantity<'mol/kg'>> {
  const error = notAboveZero(
    { value: mass, argument: 'grams', unit: 'g' },
    { value: solventMass, argument: 'solvent_grams', unit: 'g' },
  );
  if (error) return failure(error);
  return finite(((1000 * (mass / molarMass)) / solventMass) as Quantity<'mol/kg'>, 'grams');
}
