import { failure, type Result } from '../errors/result.ts';
import { notAboveZero } from '../measurement/aboveZero.ts';
import { finite } from '../measurement/finite.ts';
import {
  type Grams,
  type GramsPerMole,
  type Millilitres,
  type MolesPerLitre,
  molesPerLitre,
  type Percent,
} from '../measurement/quantity.ts';
import { pureShare } from './purity.ts';

export interface SolutionMade {
  readonly molarMass: GramsPerMole;
  readonly mass: Grams;
  readonly volume: Millilitres;
  /** Percent by mass of the solid that is the substance; 100 where left out. */
  readonly purity?: Percent | undefined;
}

/**
 * Amount concentration of a solution made from a weighed solid.
 *
 * @returns mol/L, not rounded. Fails with `not-above-zero` or `purity-out-of-range`.
 * Source: definition of amount concentration, IUPAC Gold Book.
 */
export function molarity({ molarMass, mass, volume, purity }: SolutionMade): Result<MolesPerLitre> {
  const error = notAboveZero(
    { value: mass, argument: 'grams', unit: 'g' },
    { value: volume, argument: 'volume', unit: 'mL' },
  );
  if (error) return failure(error);
  const share = pureShare(purity);
  if (!share.ok) return share;
  return finite(molesPerLitre((mass * share.value) / molarMass / (volume / 1000)), 'grams');
}
