import { failure, type Result } from '../errors/result.ts';
import { belowZero } from '../measurement/aboveZero.ts';
import { finite } from '../measurement/finite.ts';
import { type MolesPerLitre, molesPerLitre } from '../measurement/quantity.ts';
import type { Formula } from './formula.ts';
import { namedIon } from './namedIon.ts';

/**
 * Concentration of one ion in a solution of a substance that dissociates completely.
 *
 * @param ion - One of the ions that the substance gives, in any usual spelling.
 * @returns mol/L, not rounded. Fails with `below-zero` and with what `namedIon` fails with.
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
  const named = namedIon(formula, ion);
  if (!named.ok) return named;
  const negative = belowZero({ value: molarity, argument: 'molarity', unit: 'mol/L' });
  return negative ? failure(negative) : finite(molesPerLitre(molarity * named.value.ion.count), 'molarity');
}
