import { failure, type Result } from '../errors/result.ts';
import { notAboveZero } from '../measurement/aboveZero.ts';
import { finite } from '../measurement/finite.ts';
import {
  type GramsPerMillilitre,
  type GramsPerMole,
  gramsPerMillilitre,
  type MolesPerLitre,
} from '../measurement/quantity.ts';
import { notALine, type StraightLine } from './straightLine.ts';

/**
 * Density of a solution of a molarity, on the straight line through two lines of a table: the density ρ at which
 * 10·w·ρ = c·M with the mass percent w that the line gives for it.
 *
 * @returns g/mL, not rounded. Fails with `not-above-zero`, `percent-of-line` or `lines-alike`.
 * Source: definitions of mass fraction, density and amount concentration, IUPAC Gold Book.
 */
export function densityOfMolarity({
  molarMass,
  molarity,
  ...line
}: StraightLine & { readonly molarMass: GramsPerMole; readonly molarity: MolesPerLitre }): Result<GramsPerMillilitre> {
  const error = notALine(line) ?? notAboveZero({ value: molarity, argument: 'molarity', unit: 'mol/L' });
  if (error) return failure(error);
  const { lighterPercent, lighterDensity, heavierPercent, heavierDensity } = line;
  // ρ = a + b·w and 10·w·ρ = c·M make a quadratic in w; the root in this form loses no figures where b is small.
  const b = (heavierDensity - lighterDensity) / (heavierPercent - lighterPercent);
  const a = lighterDensity - b * lighterPercent;
  const grams = (molarity * molarMass) / 10;
  const massPercent = (2 * grams) / (a + Math.sqrt(a * a + 4 * b * grams));
  return finite(gramsPerMillilitre(a + b * massPercent), 'molarity');
}
