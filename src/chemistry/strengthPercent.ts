import type { MolesPerLitre, Percent } from '../measurement/quantity.ts';
import type { Formula } from './formula.ts';
import { massPercentOf } from './solutionStrength.ts';

/** How strong what is handled is: the substance itself, or a solution by share of mass or by molarity. */
export type Strength = 'undiluted' | { readonly massPercent: Percent } | { readonly molarity: MolesPerLitre };

/** Grams of the substance in 100 g; undefined for the substance itself, and where no molar mass is known. */
export function strengthPercent(formula: Formula, strength: Strength): Percent | undefined {
  if (strength === 'undiluted') return undefined;
  if ('massPercent' in strength) return strength.massPercent;
  const found = massPercentOf(formula, strength.molarity);
  return found.ok ? found.value : undefined;
}
