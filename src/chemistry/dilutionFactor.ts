import { failure, type Result } from '../errors/result.ts';
import { finite } from '../measurement/finite.ts';
import { type Dilution, dilutionError } from './dilution.ts';

/**
 * How many times a stock is diluted: final over initial volume, which is stock over target concentration.
 *
 * @returns A pure number above 1. Fails with `not-above-zero` or `target-not-below-stock`.
 * Source: definition of amount concentration, IUPAC Gold Book.
 */
export function dilutionFactor({ stock, target }: Pick<Dilution, 'stock' | 'target'>): Result<number> {
  const error = dilutionError({ stock, target });
  return error ? failure(error) : finite(stock / target, 'stock_molarity');
}
