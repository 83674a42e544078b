import type { StraightLine } from '../../chemistry/straightLine.ts';
import { gramsPerMillilitre, percent } from '../../measurement/quantity.ts';

/** Two lines of a table with the values of the givens as they are read. */
export interface LinePair {
  readonly lighterPercent: number;
  readonly lighterDensity: number;
  readonly heavierPercent: number;
  readonly heavierDensity: number;
}

/** The pair as chemistry takes it. */
export const straightLineOf = (pair: LinePair): StraightLine => ({
  lighterPercent: percent(pair.lighterPercent),
  lighterDensity: gramsPerMillilitre(pair.lighterDensity),
  heavierPercent: percent(pair.heavierPercent),
  heavierDensity: gramsPerMillilitre(pair.heavierDensity),
});
