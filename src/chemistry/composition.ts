import { type Result, success } from '../errors/result.ts';
import type { Formula } from './formula.ts';
import { atomicMass, molarMass } from './molarMass.ts';

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
  const whole = molarMass(formula);
  if (!whole.ok) return whole;
  const shares: ElementShare[] = [];
  for (const { element, count } of formula.atoms) {
    const one = atomicMass(element);
    if (!one.ok) return one;
    const mass = count * one.value;
    shares.push({ element, atoms: count, mass, percent: (100 * mass) / whole.value });
  }
  return success(shares);
}
