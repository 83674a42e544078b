import { failure, type Result } from '../errors/result.ts';
import { notAboveZero } from '../measurement/aboveZero.ts';
import { finite } from '../measurement/finite.ts';
import {
  type Grams,
  type GramsPerMole,
  type Millilitres,
  type MolesPerLitre,
  millilitres,
  type Percent,
} from '../measurement/quantity.ts';
import { pureShare } from './purity.ts';

export interface SolidAtHand {
  readonly molarMass: GramsPerMole;
  readonly mass: Grams;
  readonly molarity: MolesPerLitre;
  /** Percent by mass of the solid that is the substance; 100 where left out. */
  readonly purity?: Percent | undefined;
}

/**
 * Volume of solution that a weighed solid makes.
 *
 * @returns mL, not rounded. Fails with `not-above-zero` or `purity-out-of-range`.
 * Source: definition of amount concentration, IUPAC Gold Book.
 */
export function solutionVolume({ molarMass, mass, molarity, purity }: SolidAtHand): Result<Millilitres> {
  const error = notAboveZero(
    { value: mass, argument: 'grams', unit: 'g' },
    { value: molarity, argument: 'molarity', unit: 'mol/L' },
  );
  if (error) return failure(error);
  const share = pureShare(purity);
  if (!share.ok) return share;
  return finite(millilitres((1000 * ((mass * share.value) / molarMass)) / molarity), 'grams');
}
