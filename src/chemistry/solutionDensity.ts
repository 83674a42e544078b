import { quoted } from '../errors/quoted.ts';
import type { ChemError } from '../errors/result.ts';
import { type NamedNumber, notAboveZero } from '../measurement/aboveZero.ts';

/** No solution at a bench is lighter or heavier, in g/mL; common practice, no source. */
const lightest = 0.5;
const heaviest = 5;

/**
 * The first of some densities in g/mL that no solution has, as an error `not-above-zero` or `density-unlikely`; undefined
 * where all are likely. A table in kg/m³ copied without its unit is the usual cause.
 */
export function notASolutionDensity(...densities: readonly Omit<NamedNumber, 'unit'>[]): ChemError | undefined {
  const error = notAboveZero(...densities.map((density) => ({ ...density, unit: 'g/mL' })));
  if (error) return error;
  const found = densities.find(({ value }) => value < lightest || value > heaviest);
  if (found === undefined) return undefined;
  const isLikelyPerCubicMetre = found.value >= 1000 * lightest && found.value <= 1000 * heaviest;
  return {
    code: 'density-unlikely',
    argument: found.argument,
    expected: `${lightest} to ${heaviest} g/mL`,
    received: `${quoted(found.value)} g/mL`,
    advice: isLikelyPerCubicMetre
      ? `Is it in kg/m³? Then type it with its unit, as in "${found.value} kg/m³".`
      : 'Is it in kg/m³ or g/L? Then type it with its unit, as in "1190 kg/m³".',
  };
}
