import type { Shelf } from '../lesson/setup.ts';
import type { Reach } from './recipe.ts';

const digitsOf = (volume: number): number => String(Math.trunc(volume)).length;

/**
 * Flasks on the shelf from a quarter of a size up to it, or up to four times where the reach goes beyond; those with as
 * many digits where there are some.
 */
export function flasksNear(
  size: number,
  { flasksMl }: Pick<Shelf, 'flasksMl'>,
  { beyond }: Reach,
): { readonly sizes: readonly number[]; readonly otherDigits: boolean } {
  const near = flasksMl.filter((flask) => flask >= size / 4 && flask <= (beyond ? size * 4 : size * (1 + 1e-9)));
  const alike = near.filter((flask) => digitsOf(flask) === digitsOf(size));
  return alike.length > 0 ? { sizes: alike, otherDigits: false } : { sizes: near, otherDigits: near.length > 0 };
}
