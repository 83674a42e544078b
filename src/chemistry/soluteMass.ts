import { failure, type Result } from '../errors/result.ts';
import { notAboveZero } from '../measurement/aboveZero.ts';
import { finite } from '../measurement/finite.ts';
import {
  type Grams,
  type GramsPerMole,
  grams,
  type Millilitres,
  type MolesPerLitre,
  type Percent,
} from '../measurement/quantity.ts';
import { pureShare } from './purity.ts';

export interface SolutionWanted {
  readonly molarMass: GramsPerMole;
  readonly molarity: MolesPerLitre;
  readonly volume: Millilitres;
  /** Percent by mass of the solid that is the substance; 100 where left out. */
  readonly purity?: Percent | undefined;
}

/**
 * Mass of solid to weigh out: amount times molar mass, more where the solid is not pure.
 *
 * @returns g, not rounded. Fails with `not-above-zero` or `purity-out-of-range`.
 * Source: definition of amount concentration, IUPAC Gold Book.
 */
export function soluteMass({ molarMass, molarity, volume, purity }: SolutionWanted): Result<Grams> {
  const error = notAboveZero(
    { value: molarity, argument: 'molarity', unit: 'mol/L' },
    { value: volume, argument: 'volume', unit: 'mL' },
  );
  if (error) return failure(error);
  const share = pureShare(purity);
  if (!share.ok) return share;
  return finite(grams((molarity * (volume / 1000) * molarMass) / share.value), 'molarity');
}
