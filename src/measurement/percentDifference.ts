import { failure, type Result } from '../errors/result.ts';
import { finite } from './finite.ts';
import { type Percent, percent } from './quantity.ts';

/**
 * Difference of two values of equal standing, as a share of their mean.
 *
 * @returns %, never negative. Fails with `mean-zero`.
 * Source: common practice, no source.
 */
export function percentDifference({
  first,
  second,
}: {
  readonly first: number;
  readonly second: number;
}): Result<Percent> {
  const mean = Math.abs(first / 2 + second / 2);
  if (mean === 0) {
    return failure({
      code: 'mean-zero',
      argument: 'second',
      received: `${first} and ${second}`,
      advice: 'Compare the plain difference instead.',
    });
  }
  return finite(percent((100 * Math.abs(first - second)) / mean), 'first');
}
