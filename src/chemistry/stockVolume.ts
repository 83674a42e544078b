import { failure, type Result } from '../errors/result.ts';
import { notAboveZero } from '../measurement/aboveZero.ts';
import { finite } from '../measurement/finite.ts';
import { type Millilitres, millilitres } from '../measurement/quantity.ts';
import { type Dilution, dilutionError } from './dilution.ts';

/**
 * Volume of stock to measure out: the amount of solute is the same before and after.
 *
 * @returns mL, not rounded. Fails with `not-above-zero` or `target-not-below-stock`.
 * Source: definition of amount concentration, IUPAC Gold Book.
 * @example
 * stockVolume({ stock: molesPerLitre(2), target: molesPerLitre(0.5), finalVolume: millilitres(100) }) // 25 mL
 */
export function stockVolume({ stock, target, finalVolume }: Dilution): Result<Millilitres> {
  const error =
    dilutionError({ stock, target }) ?? notAboveZero({ value: finalVolume, argument: 'target_volume', unit: 'mL' });
  if (error) return failure(error);
  return finite(millilitres((target * finalVolume) / stock), 'target_volume');
}
