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
  const exact = digitsOf(number.decimal);
  if (exact === undefined) return success('0');
  const { digits, place } = keptDigits(exact, { figures, ties });
  const sign = number.decimal.startsWith('-') ? '-' : '';
  const decimals = figures - 1 - place;
  // A zero at the end of a whole number may or may not be a figure.
  if (place >= smallestPlain && (decimals > 0 || (decimals === 0 && !digits.endsWith('0'))))
    return success(sign + withPoint(digits.padStart(decimals + 1, '0'), decimals));
  return success(`${sign}${withPoint(digits, figures - 1)} × 10^${place}`);
}

/** Digits from the first that counts, and the exponent of ten of that one. */
interface Significant {
  readonly digits: string;
  readonly place: number;
}

/** Undefined for zero. */
function digitsOf(decimal: string): Significant | undefined {
  const [, whole = '', part = '', exponent = '0'] = /^-?(\d*)\.?(\d*)(?:e(.*))?$/i.exec(decimal) ?? [];
  const leading = (whole + part).search(/[1-9]/);
  if (leading < 0) return undefined;
  return { digits: (whole + part).slice(leading), place: whole.length - 1 - leading + Number(exponent) };
}

function keptDigits({ digits, place }: Significant, { figures, ties }: Rounding): Significant {
  const kept = digits.slice(0, figures).padEnd(figures, '0');
  const dropped = digits.slice(figures);
  const isTie = /^50*$/.test(dropped);
  const goesUp = isTie ? ties === 'up' || /[13579]$/.test(kept) : dropped >= '5';
  if (!goesUp) return { digits: kept, place };
  const nines = kept.search(/9*$/);
  if (nines === 0) return { digits: `1${'0'.repeat(figures - 1)}`, place: place + 1 };
  const raised = `${kept.slice(0, nines - 1)}${Number(kept[nines - 1]) + 1}`;
  return { digits: raised.padEnd(figures, '0'), place };
}

const withPoint = (digits: string, decimals: number): string =>
  decimals === 0 ? digits : `${digits.slice(0, -decimals)}.${digits.slice(-decimals)}`;
