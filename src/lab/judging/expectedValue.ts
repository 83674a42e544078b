import { densityOfMolarity } from '../../chemistry/densityOfMolarity.ts';
import { molarMass } from '../../chemistry/molarMass.ts';
import { readFormula } from '../../chemistry/readFormula.ts';
import { type ChemError, failure, type Result, success } from '../../errors/result.ts';
import type { CellValue } from '../../measurement/cellValue.ts';
import { gramsPerMillilitre, molesPerLitre, percent } from '../../measurement/quantity.ts';
import { type QuantityKind, readQuantity } from '../../measurement/readQuantity.ts';
import type { ExpectedValue } from '../lesson/activity.ts';

/**
 * What a reading is expected to be, where no row asks for it. The mass of a portion is its volume times the density that a
 * solution of the label's molarity has on the straight line through the team's two lines of the table.
 *
 * @param givens - Cells by the name of the given.
 * @returns g. Fails as reading a cell does, or as `densityOfMolarity` does; `argument` is the given's name.
 */
export function expectedValue(
  { takes }: ExpectedValue,
  {
    givens,
    decimalMark,
  }: { readonly givens: Readonly<Record<string, CellValue>>; readonly decimalMark: 'point' | 'comma' },
): Result<number> {
  const named = (argument: string): string => takes[argument]?.given ?? argument;
  let trouble: ChemError | undefined;
  const read = (argument: string, kind: QuantityKind): number => {
    const name = named(argument);
    const quantity = readQuantity(givens[name], kind, name, { decimalMark });
    if (quantity.ok) return quantity.value.value;
    trouble ??= quantity.error;
    return Number.NaN;
  };
  const formula = readFormula(givens[named('formula')], named('formula'));
  if (!formula.ok) return formula;
  const mass = molarMass(formula.value);
  if (!mass.ok) return mass;
  const volume = read('volume', 'volume');
  const numbers = {
    molarMass: mass.value,
    molarity: molesPerLitre(read('molarity', 'concentration')),
    lighterPercent: percent(read('lighter percent', 'percent')),
    lighterDensity: gramsPerMillilitre(read('lighter density', 'density')),
    heavierPercent: percent(read('heavier percent', 'percent')),
    heavierDensity: gramsPerMillilitre(read('heavier density', 'density')),
  };
  if (trouble) return failure(trouble);
  const density = densityOfMolarity(numbers);
  if (!density.ok) return failure({ ...density.error, argument: named(density.error.argument.replace(/_/g, ' ')) });
  return success(density.value * volume);
}
