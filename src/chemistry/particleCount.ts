import { failure, type Result } from '../errors/result.ts';
import { belowZero } from '../measurement/aboveZero.ts';
import { finite } from '../measurement/finite.ts';
import type { Moles } from '../measurement/quantity.ts';

/** Particles in one mole, exact since 20 May 2019 (26th CGPM, Resolution 1; value in OpenStax Chemistry 2e, appendix). */
export const avogadroConstant = 6.02214076e23;

/** Number of particles in an amount of substance. Fails with `below-zero`. */
export function particleCount(amount: Moles): Result<number> {
  const error = belowZero({ value: amount, argument: 'moles', unit: 'mol' });
  return error ? failure(error) : finite(amount * avogadroConstant, 'moles');
}
