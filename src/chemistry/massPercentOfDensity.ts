import { quoted } from '../errors/quoted.ts';
import { failure, type Result, success } from '../errors/result.ts';
import { notAboveZero } from '../measurement/aboveZero.ts';
import { type GramsPerMillilitre, type Percent, percent } from '../measurement/quantity.ts';
import { notALine, type StraightLine } from './straightLine.ts';

/**
 * Mass percent that goes with a density, on the straight line through two lines of a table. A density beside the two is
 * read on the same line, which goes on.
 *
 * @returns %, not rounded. Fails with `not-above-zero`, `percent-of-line`, `lines-alike`, or `percent-beyond-line` where
 * the line would lead below 0 % or above 100 %.
 * Source: linear interpolation, common practice with tables of densities.
 */
export function massPercentOfDensity({
  density,
  ...line
}: StraightLine & { readonly density: GramsPerMillilitre }): Result<Percent> {
  const error = notALine(line) ?? notAboveZero({ value: density, argument: 'density', unit: 'g/mL' });
  if (error) return failure(error);
  const { lighterPercent, lighterDensity, heavierPercent, heavierDensity } = line;
  const share = (density - lighterDensity) / (heavierDensity - lighterDensity);
  const found = lighterPercent + share * (heavierPercent - lighterPercent);
  if (found >= 0 && found <= 100) return success(percent(found));
  return failure({
    code: 'percent-beyond-line',
    argument: 'density',
    received: `${quoted(density)} g/mL`,
    advice: 'On their straight line it would mean less than 0 % or more than 100 %. Check the mass and the volume.',
  });
}
