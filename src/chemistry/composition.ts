import { type Result, success } from '../errors/result.ts';
import type { Formula } from './formula.ts';
import { atomicMass } from './molarMass.ts';

/** What one element adds to a formula unit. */
export interface ElementShare {
  /** Symbol, or label of an isotope such as `[13C]`. */
  readonly element: string;
  readonly atoms: number;
  /** atoms × atomic weight, g/mol. */
  readonly mass: number;
  /** Percent by mass; all of them make 100. */
  readonly percent: number;
}

/** Elements of a formula in the order of first appearance. Fails with `atomic-weight-none`. */
export function composition(formula: Formula): Result<readonly ElementShare[]> {
  const masses: Omit<ElementShare, 'percent'>[] = [];
  for (const { element, count } of formula.atoms) {
    const one = atomicMass(element);
    if (!one.ok) return one;
    masses.push({ element, atoms: count, mass: count * one.value });
  }
  const whole = masses.reduce((sum, { mass }) => sum + mass, 0);
  return success(masses.map((share) => ({ ...share, percent: (100 * share.mass) / whole })));
}
