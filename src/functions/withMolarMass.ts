import type { Formula } from '../chemistry/formula.ts';
import { molarMass } from '../chemistry/molarMass.ts';
import type { Result } from '../errors/result.ts';
import type { GramsPerMole } from '../measurement/quantity.ts';

/** Goes on with the molar mass of a formula, or stops with what is wrong with it. */
export function withMolarMass<T>(formula: Formula, goOn: (molarMass: GramsPerMole) => Result<T>): Result<T> {
  const mass = molarMass(formula);
  return mass.ok ? goOn(mass.value) : mass;
}
