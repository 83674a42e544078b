import type { MolesPerLitre } from '../measurement/quantity.ts';
import { acidOrBase } from './acidOrBase.ts';
import { cautionsAt } from './cautionsAt.ts';
import type { Formula } from './formula.ts';

/** From this molarity an acid counts as strong enough to be run into water whatever its label says: house choice. */
const strongAcidFrom = 2;

/**
 * Whether a stock is diluted with water in the vessel first: an acid or a base that burns the skin (H314) at its strength,
 * or an acid of 2 mol/L or more. A strength that nobody knows counts as undiluted, and a burn that is not ruled out counts
 * as one.
 */
export function needsWaterFirst(formula: Formula, molarity: MolesPerLitre | undefined): boolean {
  const isStrong = molarity === undefined || molarity >= strongAcidFrom;
  const { statements } = cautionsAt(formula, molarity === undefined ? 'undiluted' : { molarity });
  const burns = statements.some(({ code, text }) => code === 'H314' || text.includes('H314'));
  // The lists of acids take long to read, and most stocks are neither strong nor burn.
  if (!isStrong && !burns) return false;
  const kind = acidOrBase(formula);
  return kind === 'acid' ? isStrong || burns : kind === 'base' && burns;
}
