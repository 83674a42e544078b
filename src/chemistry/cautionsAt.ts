import type { MolesPerLitre, Percent } from '../measurement/quantity.ts';
import { type Cautions, cautions } from './cautions.ts';
import type { Formula } from './formula.ts';
import { massPercentOf } from './solutionStrength.ts';

/** How strong what is handled is: the substance itself, or a solution by share of mass or by molarity. */
export type Strength = 'undiluted' | { readonly massPercent: Percent } | { readonly molarity: MolesPerLitre };

/** Grams of the substance in 100 g; undefined for the substance itself, and where no molar mass is known. */
export function percentOf(formula: Formula, strength: Strength): Percent | undefined {
  if (strength === 'undiluted') return undefined;
  if ('massPercent' in strength) return strength.massPercent;
  const found = massPercentOf(formula, strength.molarity);
  return found.ok ? found.value : undefined;
}

/**
 * Cautions at any strength. Never fails: for an element without an atomic weight, and for a strength that is no share of
 * a whole, they are those of the substance itself, which is the stricter side.
 */
export function cautionsAt(formula: Formula, strength: Strength): Cautions {
  const found = cautions(formula, percentOf(formula, strength));
  if (found.ok) return found.value;
  const undiluted = cautions(formula);
  if (!undiluted.ok) throw new Error(`cautions for ${formula.text}: ${undiluted.error.code}`);
  return undiluted.value;
}
