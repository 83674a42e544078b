import { quoted } from '../errors/quoted.ts';
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
 * @returns mol/L, not rounded. Fails with `below-zero`, with `molarity-above-saturated` where that much does not dissolve,
 * and with what `namedIon` fails with.
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
  if (negative) return failure(negative);
  const { saturated } = named.value.ion;
  if (saturated !== undefined && molarity > saturated) {
    return failure({
      code: 'molarity-above-saturated',
      argument: 'molarity',
      expected: `about ${saturated} mol/L of ${formula.text} is the most`,
      received: `${quoted(molarity)} mol/L`,
      advice: 'The rest stays solid and gives no ions: use a lower molarity.',
    });
  }
  return finite(molesPerLitre(molarity * named.value.ion.count), 'molarity');
}
