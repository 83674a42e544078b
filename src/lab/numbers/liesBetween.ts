import type { LinePair } from './linePair.ts';

/** Whether a density in g/mL is one of the two of a pair, or between them. */
export const liesBetween = (density: number, { lighterDensity, heavierDensity }: LinePair): boolean =>
  density >= Math.min(lighterDensity, heavierDensity) && density <= Math.max(lighterDensity, heavierDensity);
