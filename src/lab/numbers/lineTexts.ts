import type { LinePair } from './linePair.ts';

/** Decimals that tables of densities have. */
const densityDecimals = 4;

/** Two lines of the table, as the table prints them. */
export const lineTexts = (pair: LinePair): Readonly<Record<keyof LinePair, string>> => ({
  lighterPercent: String(pair.lighterPercent),
  lighterDensity: pair.lighterDensity.toFixed(densityDecimals),
  heavierPercent: String(pair.heavierPercent),
  heavierDensity: pair.heavierDensity.toFixed(densityDecimals),
});
