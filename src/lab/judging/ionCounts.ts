import { namedIon } from '../../chemistry/namedIon.ts';
import type { Formula } from '../../chemistry/readFormula.ts';
import { type Result, success } from '../../errors/result.ts';
import type { CellValue } from '../../measurement/cellValue.ts';

/** How many of one ion, and of each other kind, a formula unit gives in water, and its charge; fails as `namedIon` does. */
export function ionCounts(
  formula: Formula,
  ion: CellValue,
): Result<{ readonly ionCount: number; readonly ionCharge: number; readonly otherIonCounts: readonly number[] }> {
  const named = namedIon(formula, String(ion));
  if (!named.ok) return named;
  const { ion: asked, others } = named.value;
  return success({
    ionCount: asked.count,
    ionCharge: Math.abs(asked.charge),
    otherIonCounts: others.map(({ count }) => count),
  });
}
