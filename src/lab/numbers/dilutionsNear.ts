import { plainText } from './nearbyNumbers.ts';
import type { NumberText } from './nearTexts.ts';
import type { Bench, NearSet, RecipeStart } from './recipe.ts';

type Diluted = 'stock' | 'target' | 'volume';

/** How far from the start the dilution factor goes, as a share of it: near, and at the most. */
const factorRange = { near: 2.5, most: 4 } as const;
/** A factor near 1 is hardly a dilution. */
const leastFactor = 1.2;

/**
 * Dilutions near the start: stocks, flasks and portions of a pipette whose target comes out in the figures of the start's
 * target.
 */
export function dilutionsNear(
  { numbers: from, typed }: RecipeStart<Diluted>,
  {
    stocks,
    volumes,
    deliverable,
  }: {
    readonly stocks: readonly NumberText[];
    readonly volumes: readonly number[];
    readonly deliverable: Bench['deliverable'];
  },
): readonly NearSet<Diluted>[] {
  const figures = typed.target?.figures;
  if (figures === undefined) return [];
  const factor = from.stock / from.target;
  const found: NearSet<Diluted>[] = [];
  for (const volume of volumes) {
    for (const { volume: portion, fillings } of deliverable) {
      const here = volume / portion;
      const away = Math.max(here / factor, factor / here);
      if (away > factorRange.most * (1 + 1e-9) || here < leastFactor) continue;
      for (const { value: stock, text } of stocks) {
        const targetText = plainText(Number(((stock * portion) / volume).toPrecision(15)), figures);
        if (targetText === undefined) continue;
        const target = Number(targetText);
        found.push({
          numbers: { stock, target, volume },
          texts: { stock: text, target: targetText, volume: String(volume) },
          fillings,
          away: away <= factorRange.near * (1 + 1e-9) ? 0 : 1,
          withinTarget: target <= from.target * (1 + 1e-9),
        });
      }
    }
  }
  return found;
}
