import { type GramsPerMillilitre, gramsPerMillilitre } from '../measurement/quantity.ts';
import { densities } from './densities.generated.ts';
import type { Formula } from './formula.ts';

export interface SolutionDensity {
  readonly density: GramsPerMillilitre;
  /** False where the figures beside it come from memory. */
  readonly isConfirmed: boolean;
}

interface Point {
  readonly percent: number;
  readonly density: number;
  readonly isConfirmed: boolean;
}

const pointsOf = (line: string): readonly Point[] =>
  line.split(' ').map((point) => {
    const [percent, density, mark] = point.split(':');
    return { percent: Number(percent), density: Number(density), isConfirmed: mark === undefined };
  });

const plain = (text: string): string => text.normalize('NFKC').replace(/\s/g, '');

/**
 * Density of a solution in water at 20 °C, straight between the two nearest figures of the table; undefined for a
 * substance or a strength that the table does not reach.
 *
 * @param massPercent - Grams of the substance, as written, in 100 g of solution.
 * Source: Poradnik fizykochemiczny 1974 and the CRC values of engineeringtoolbox.com; water by Tanaka et al. 2001;
 * glucose from memory.
 */
export function solutionDensity(formula: Formula, massPercent: number): SolutionDensity | undefined {
  const line = densities
    .trim()
    .split('\n')
    .find((one) => one.startsWith(`${plain(formula.text)} `));
  if (line === undefined) return undefined;
  const points = pointsOf(line.slice(line.indexOf(' ') + 1));
  const above = points.findIndex(({ percent }) => percent >= massPercent);
  const [low, high] = [points[Math.max(above - 1, 0)], points[above]];
  if (low === undefined || high === undefined || !(massPercent >= 0)) return undefined;
  const share = high.percent === low.percent ? 0 : (massPercent - low.percent) / (high.percent - low.percent);
  return {
    density: gramsPerMillilitre(low.density + share * (high.density - low.density)),
    isConfirmed: low.isConfirmed && high.isConfirmed,
  };
}
