import Big from 'big.js';
import { failure, type Result, success } from '../errors/result.ts';
import type { TypedNumber } from './typedNumber.ts';

export interface Rounding {
  /** Significant figures, 1 to 30. */
  readonly figures: number;
  /** Where a number lies half way: to the even digit (unless `up` is asked) or away from zero. */
  readonly ties?: 'even' | 'up' | undefined;
}

const mostFigures = 30;
/** Below this place a plain decimal has so many zeros that nobody counts them. */
const smallestPlain = -7;

/**
 * A number with exactly so many significant figures, as text: plain digits where they are unambiguous, otherwise
 * `1.2 × 10^3`. Ties are ties of the decimal that was typed, not of the binary number.
 *
 * @returns Fails with `figures-out-of-range`.
 * Source: ASTM E29-02 and ISO 80000-1:2009 Annex B for ties to even (the latter from memory).
 */
export function roundToFigures(number: TypedNumber, { figures, ties }: Rounding): Result<string> {
  if (!Number.isInteger(figures) || figures < 1 || figures > mostFigures) {
    return failure({
      code: 'figures-out-of-range',
      argument: 'figures',
      received: String(figures),
      advice: `Type a whole number from 1 to ${mostFigures}, such as 3.`,
    });
  }
  const exact = new Big(number.decimal);
  if (exact.eq(0)) return success('0');
  const rounded = exact.prec(figures, ties === 'up' ? 1 : 2);
  const place = rounded.e;
  const decimals = figures - 1 - place;
  const plain = rounded.toFixed(Math.max(decimals, 0));
  // A zero at the end of a whole number may or may not be a figure.
  const isClear = place >= smallestPlain && (decimals > 0 || !plain.endsWith('0'));
  return success(isClear ? plain : rounded.toExponential(figures - 1).replace(/e\+?/, ' × 10^'));
}
