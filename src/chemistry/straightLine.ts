import { quoted } from '../errors/quoted.ts';
import type { ChemError } from '../errors/result.ts';
import type { GramsPerMillilitre, Percent } from '../measurement/quantity.ts';
import { notASolutionDensity } from './solutionDensity.ts';

/** Two lines of a table of densities, between which density and mass percent go along a straight line. */
export interface StraightLine {
  readonly lighterPercent: Percent;
  readonly lighterDensity: GramsPerMillilitre;
  readonly heavierPercent: Percent;
  readonly heavierDensity: GramsPerMillilitre;
}

/** Why no straight line goes through two lines of a table; undefined where one does. */
export function notALine({
  lighterPercent,
  lighterDensity,
  heavierPercent,
  heavierDensity,
}: StraightLine): ChemError | undefined {
  const error = notASolutionDensity(
    { value: lighterDensity, argument: 'lighter_density' },
    { value: heavierDensity, argument: 'heavier_density' },
  );
  if (error) return error;
  for (const [value, argument] of [
    [lighterPercent, 'lighter_percent'],
    [heavierPercent, 'heavier_percent'],
  ] as const) {
    if (!(value >= 0 && value <= 100)) {
      return {
        code: 'percent-of-line',
        argument,
        expected: 'from 0 % to 100 %',
        received: `${quoted(value)} %`,
        advice: 'Copy it again from the table of densities.',
      };
    }
  }
  if (lighterDensity !== heavierDensity && lighterPercent !== heavierPercent) return undefined;
  const isDensity = lighterDensity === heavierDensity;
  return {
    code: 'lines-alike',
    argument: isDensity ? 'heavier_density' : 'heavier_percent',
    received: isDensity ? `the density ${quoted(heavierDensity)} g/mL` : `the mass percent ${quoted(heavierPercent)} %`,
    advice: 'Take two different lines of the table.',
  };
}
