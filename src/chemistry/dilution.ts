import { quoted } from '../errors/quoted.ts';
import type { ChemError } from '../errors/result.ts';
import { notAboveZero } from '../measurement/aboveZero.ts';
import type { Millilitres, MolesPerLitre } from '../measurement/quantity.ts';

/** A dilution by what is wanted. */
export interface Dilution {
  readonly stock: MolesPerLitre;
  readonly target: MolesPerLitre;
  readonly finalVolume: Millilitres;
}

/** Why a stock cannot be diluted to a target: one of them is not above zero, or the target is not below the stock. */
export function dilutionError({ stock, target }: Pick<Dilution, 'stock' | 'target'>): ChemError | undefined {
  const error = notAboveZero(
    { value: stock, argument: 'stock_molarity', unit: 'mol/L' },
    { value: target, argument: 'target_molarity', unit: 'mol/L' },
  );
  if (error || target < stock) return error;
  return {
    code: 'target-not-below-stock',
    argument: 'target_molarity',
    expected: `${quoted(stock)} mol/L`,
    received: `${quoted(target)} mol/L`,
    advice: 'Use a stronger stock, or swap the two cells.',
  };
}
