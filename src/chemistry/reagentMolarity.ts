import { failure, type Result } from '../errors/result.ts';
import { finite } from '../measurement/finite.ts';
import {
  type GramsPerMillilitre,
  type GramsPerMole,
  type MolesPerLitre,
  molesPerLitre,
  type Percent,
} from '../measurement/quantity.ts';
import { notAShare } from './purity.ts';
import { notASolutionDensity } from './solutionDensity.ts';

export interface Reagent {
  readonly molarMass: GramsPerMole;
  /** Grams of the substance in 100 g of reagent, as printed on the bottle. */
  readonly massPercent: Percent;
  readonly density: GramsPerMillilitre;
}

/**
 * Amount concentration of a concentrated reagent from what its label prints.
 *
 * @returns mol/L, not rounded. Fails with `purity-out-of-range`, `not-above-zero` or `density-unlikely`.
 * Source: definitions of mass fraction, density and amount concentration, IUPAC Gold Book.
 */
export function reagentMolarity({ molarMass, massPercent, density }: Reagent): Result<MolesPerLitre> {
  const error = notAShare(massPercent, 'mass_percent') ?? notASolutionDensity({ value: density, argument: 'density' });
  if (error) return failure(error);
  return finite(molesPerLitre((10 * massPercent * density) / molarMass), 'density');
}
