import { quoted } from '../errors/quoted.ts';
import { failure, type Result } from '../errors/result.ts';
import { belowZero } from '../measurement/aboveZero.ts';
import { finite } from '../measurement/finite.ts';
import { type MolesPerLitre, molesPerLitre } from '../measurement/quantity.ts';
import type { Formula } from './formula.ts';
import { ions } from './ions.ts';
import { matchIon } from './matchIon.ts';

/**
 * Concentration of one ion in a solution of a substance that dissociates completely.
 *
 * @param ion - One of the ions that the substance gives, in any usual spelling.
 * @returns mol/L, not rounded. Fails with what `ions` and `matchIon` fail with, and with `ion-none` for a molecular solute.
 */
export function ionMolarity({
  formula,
  molarity,
  ion,
}: {
  readonly formula: Formula;
  readonly molarity: MolesPerLitre;
  readonly ion: string;
}): Result<MolesPerLitre> {
  const present = ions(formula);
  if (!present.ok) return present;
  if (present.value.every(({ charge }) => charge === 0)) {
    return failure({
      code: 'ion-none',
      argument: 'formula',
      expected: 'a substance that gives ions in water',
      received: `${quoted(formula.text)}, which stays whole`,
      advice: 'Its molecules are the particles: their molarity is that of the solution.',
    });
  }
  const negative = belowZero({ value: molarity, argument: 'molarity', unit: 'mol/L' });
  if (negative) return failure(negative);
  const matched = matchIon(ion, present.value);
  if (!matched.ok) return matched;
  return finite(molesPerLitre(molarity * matched.value.count), 'molarity');
}
