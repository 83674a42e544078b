import { stockVolume } from '../../chemistry/stockVolume.ts';
import { type Result, success } from '../../errors/result.ts';
import { millilitres, molesPerLitre } from '../../measurement/quantity.ts';
import type { Solutions } from '../particles/solutions.ts';

/** The portion of stock and what it becomes, from mol/L and mL. Fails as `stockVolume` does. */
export function dilutionPicture(numbers: {
  readonly stock: number;
  readonly target: number;
  readonly volume: number;
}): Result<Required<Pick<Solutions, 'first' | 'diluted'>>> {
  const dilution = {
    stock: molesPerLitre(numbers.stock),
    target: molesPerLitre(numbers.target),
    finalVolume: millilitres(numbers.volume),
  };
  const portion = stockVolume(dilution);
  if (!portion.ok) return portion;
  return success({
    first: { molarity: dilution.stock, volume: portion.value },
    diluted: { molarity: dilution.target, volume: dilution.finalVolume },
  });
}
