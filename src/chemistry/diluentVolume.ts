import { type Result, success } from '../errors/result.ts';
import { type Millilitres, millilitres } from '../measurement/quantity.ts';
import type { Dilution } from './dilution.ts';
import { stockVolume } from './stockVolume.ts';

/**
 * Volume of solvent that makes up a dilution, volumes taken as additive.
 *
 * @returns mL, not rounded. Fails as `stockVolume` does.
 * Source: definition of amount concentration, IUPAC Gold Book; that volumes add up is an approximation.
 */
export function diluentVolume(dilution: Dilution): Result<Millilitres> {
  const stock = stockVolume(dilution);
  return stock.ok ? success(millilitres(dilution.finalVolume - stock.value)) : stock;
}
