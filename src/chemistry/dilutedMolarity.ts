import { failure, type Result } from '../errors/result.ts';
import { notAboveZero } from '../measurement/aboveZero.ts';
import { finite } from '../measurement/finite.ts';
import { type Millilitres, type MolesPerLitre, molesPerLitre } from '../measurement/quantity.ts';
import { portionError } from './portionError.ts';

export interface PortionFilledUp {
  readonly stock: MolesPerLitre;
  readonly stockVolume: Millilitres;
  readonly finalVolume: Millilitres;
}

/**
 * Concentration after a portion of stock was filled up.
 *
 * @returns mol/L, not rounded. Fails with `not-above-zero` or `final-below-stock-volume`.
 * Source: definition of amount concentration, IUPAC Gold Book.
 */
export function dilutedMolarity({ stock, stockVolume, finalVolume }: PortionFilledUp): Result<MolesPerLitre> {
  const error =
    notAboveZero(
      { value: stock, argument: 'stock_molarity', unit: 'mol/L' },
      { value: stockVolume, argument: 'stock_volume', unit: 'mL' },
      { value: finalVolume, argument: 'final_volume', unit: 'mL' },
    ) ?? portionError({ stockVolume, finalVolume });
  if (error) return failure(error);
  return finite(molesPerLitre((stock * stockVolume) / finalVolume), 'stock_molarity');
}
