import type { Activity } from '../activity.ts';
import type { LinePair } from './linePair.ts';

/** Decimals that tables of densities have. */
const densityDecimals = 4;

/** The givens of two lines of the table, as the table prints them, by name of the given. */
export const lineTexts = (
  names: NonNullable<Activity['numbers']['density']>,
  pair: LinePair,
): Readonly<Record<string, string>> => ({
  [names.lighterPercent]: String(pair.lighterPercent),
  [names.lighterDensity]: pair.lighterDensity.toFixed(densityDecimals),
  [names.heavierPercent]: String(pair.heavierPercent),
  [names.heavierDensity]: pair.heavierDensity.toFixed(densityDecimals),
});
