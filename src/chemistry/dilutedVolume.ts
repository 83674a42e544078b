import { failure, type Result } from '../errors/result.ts';
import { notAboveZero } from '../measurement/aboveZero.ts';
import { finite } from '../measurement/finite.ts';
import { type Millilitres, type MolesPerLitre, millilitres } from '../measurement/quantity.ts';
import { dilutionError } from './dilution.ts';

export interface PortionToDilute {
  readonly stock: MolesPerLitre;
  readonly stockVolume: Millilitres;
  readonly target: MolesPerLitre;
}

/**
 * Volume to which a portion of stock is filled up.
 *
 * @returns mL, not rounded. Fails with `not-above-zero` or `target-not-below-stock`.
 * Source: definition of amount concentration, IUPAC Gold Book.
 */
export function dilutedVolume({ stock, stockVolume, target }: PortionToDilute): Result<Millilitres> {
  const error =
    dilutionError({ stock, target }) ?? notAboveZero({ value: stockVolume, argument: 'stock_volume', unit: 'mL' });
  if (error) return failure(error);
  return finite(millilitres((stock * stockVolume) / target), 'stock_volume');
}
