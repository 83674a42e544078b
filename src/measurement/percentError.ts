import { failure, type Result } from '../errors/result.ts';
import { finite } from './finite.ts';
import { type Percent, percent } from './quantity.ts';

export interface Comparison {
  readonly measured: number;
  readonly accepted: number;
  /** Keeps the sign of measured − accepted. */
  readonly signed?: boolean | undefined;
}

/**
 * Difference from the accepted value as a share of that value.
 *
 * @returns %, absolute unless signed. Fails with `accepted-zero`.
 * Source: relative error, IUPAC Gold Book (from memory); the sign as in published classroom examples.
 */
export function percentError({ measured, accepted, signed = false }: Comparison): Result<Percent> {
  if (accepted === 0) {
    return failure({
      code: 'accepted-zero',
      argument: 'accepted',
      received: '0',
      advice: 'Compare the plain difference instead.',
    });
  }
  const difference = (100 * (measured - accepted)) / Math.abs(accepted);
  return finite(percent(signed ? difference : Math.abs(difference)), 'measured');
}
