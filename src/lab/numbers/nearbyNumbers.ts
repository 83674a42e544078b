import type { TypedQuantity } from '../../measurement/readQuantity.ts';
import { isSame } from './isSame.ts';
import type { Reach } from './recipe.ts';

/** A number with exactly so many significant figures, in plain digits; undefined where that would change it. */
export function plainText(value: number, figures: number): string | undefined {
  const shown = Number(value.toPrecision(figures));
  if (!isSame(shown, value)) return undefined;
  const places = figures - 1 - Math.floor(Math.log10(shown) + 1e-12);
  return places < 0 ? shown.toFixed(0) : shown.toFixed(Math.min(places, 100));
}

/** How far from the start numbers go, as shares of it: near enough to be as hard, wide enough for many teams. */
const within = { least: 0.5, most: 1 } as const;
/** The same where nothing up to the start can be made. */
const beyond = { least: 0.6, most: 1.6 } as const;

/** Figures that numbers differ in at the most. */
export const mostFigures = 3;

/**
 * Numbers near a typed one with as many figures. With three figures or more the third is 0 or 5, as on a label, or any
 * where the reach is fine; with fewer, every last figure is used.
 */
export function nearbyNumbers({ value, figures }: TypedQuantity, reach: Reach): readonly number[] {
  const { least, most } = reach.beyond ? beyond : within;
  const resolved = Math.min(figures, mostFigures);
  const place = Math.floor(Math.log10(value) + 1e-12) - resolved + 1;
  const step = resolved === mostFigures && !reach.fine ? 5 : 1;
  // Dividing by a power of ten keeps decimals exact where multiplying by a tenth would not.
  const scaled = (count: number): number => (place < 0 ? count / 10 ** -place : count * 10 ** place);
  const first = Math.ceil((least * value) / scaled(1) / step);
  const last = Math.floor((most * value) / scaled(1) / step + 1e-9);
  const found: number[] = [];
  for (let count = first; count <= last; count += 1) {
    const near = scaled(count * step);
    if (near > 0 && plainText(near, figures) !== undefined) found.push(near);
  }
  // What was typed is a number of the lesson even where its third figure is another.
  if (plainText(value, figures) !== undefined && !found.some((near) => isSame(near, value))) found.push(value);
  return found;
}
