import { type Cautions, cautions } from './cautions.ts';
import type { Formula } from './formula.ts';
import { type Strength, strengthPercent } from './strengthPercent.ts';

/**
 * Cautions at any strength. Never fails: for an element without an atomic weight, and for a strength that is no share of
 * a whole, they are those of the substance itself, which is the stricter side.
 */
export function cautionsAt(formula: Formula, strength: Strength): Cautions {
  const found = cautions(formula, strengthPercent(formula, strength));
  if (found.ok) return found.value;
  const undiluted = cautions(formula);
  if (!undiluted.ok) throw new Error(`cautions for ${formula.text}: ${undiluted.error.code}`);
  return undiluted.value;
}
