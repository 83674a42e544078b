import type { NumberText } from './nearTexts.ts';
import type { Bench, NearSet, Reach } from './recipe.ts';

/** How far from the start a portion that is weighed may lie, as a share of it. */
const portionRoom = 0.25;

/**
 * Portions that are weighed about as well as the start's: those up to it and no less than three quarters of it, or, where
 * nothing gives one or the reach goes beyond, the one that comes nearest.
 */
export function weighedPortions(
  from: number,
  { deliverable }: Pick<Bench, 'deliverable'>,
  { beyond }: Reach,
): Bench['deliverable'] {
  const away = ({ volume }: Bench['deliverable'][number]): number => Math.abs(volume - from);
  const near = deliverable.filter((portion) => away(portion) <= portionRoom * from * (1 + 1e-9));
  const upTo = near.filter(({ volume }) => volume <= from * (1 + 1e-9));
  if (upTo.length > 0 && !beyond) return upTo;
  return [...near].sort((one, other) => away(one) - away(other) || one.fillings - other.fillings).slice(0, 1);
}

/** Portions of a labelled solution, each molarity with each portion. */
export const weighedPortionNear = (
  molarities: readonly NumberText[],
  portions: Bench['deliverable'],
): readonly NearSet<'molarity' | 'portion'>[] =>
  molarities.flatMap(({ value, text }) =>
    portions.map(({ volume, fillings }) => ({
      numbers: { molarity: value, portion: volume },
      texts: { molarity: text, portion: String(volume) },
      fillings,
      away: 0 as const,
      withinTarget: true,
    })),
  );
