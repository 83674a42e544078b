import { quoted } from '../errors/quoted.ts';
import { failure, type Result, success } from '../errors/result.ts';
import type { CellValue } from './cellValue.ts';
import { type DecimalReading, decimalReadings, otherReading } from './decimalReadings.ts';
import { restAfter } from './restAfter.ts';
import { type ScannedNumber, scanNumber } from './scanNumber.ts';
import { shiftedDecimal } from './shiftedDecimal.ts';
import type { TypedNumber } from './typedNumber.ts';

export type { TypedNumber } from './typedNumber.ts';

export interface NumberOptions {
  /** The sheet's own decimal mark: with it no number is refused because its comma can be read two ways. */
  readonly decimalMark?: 'point' | 'comma' | undefined;
  /** Where a comma can be read two ways, both are fine if this gives the same for both. */
  readonly sameEitherWay?: ((reading: TypedNumber) => unknown) | undefined;
}

/** Longest text that can be a number. */
const longestNumber = 60;

/**
 * Reads a number as people type it: decimal point or comma, digits in threes, `1.5e-3`, `2.05 × 10^8`, a true minus
 * sign, narrow and non-breaking spaces.
 *
 * @returns Fails with `number-expected` for Booleans, dates, blanks and other text, `number-two-readings` for a comma that
 * can be either mark, `number-out-of-range` for what no double holds.
 */
export function readNumber(cell: CellValue, argument: string, options: NumberOptions = {}): Result<TypedNumber> {
  // A cell that holds a number has lost its trailing zeros; its digits are those of the shortest decimal.
  const text = typeof cell === 'number' ? String(cell) : cell;
  if (typeof text !== 'string' || text.length > longestNumber) return notANumber(cell, argument);
  const scanned = scanNumber(text);
  if (scanned === undefined || restAfter(text, scanned) !== '') return notANumber(cell, argument);
  if (typeof cell === 'string') return numberFromScan(scanned, { cell, argument, options });
  const number = numberFromScan(scanned, { cell: text, argument, options: {} });
  return number.ok ? success({ ...number.value, isText: false }) : number;
}

/** The number of a text that may go on with a unit. Fails like `readNumber`. */
export function numberFromScan(
  scanned: ScannedNumber,
  { cell, argument, options }: { readonly cell: string; readonly argument: string; readonly options: NumberOptions },
): Result<TypedNumber> {
  const readings = decimalReadings(scanned.body, options.decimalMark);
  const [first, second] = readings.map((reading) => typedNumber(reading, scanned, cell));
  if (first === undefined) return notANumber(cell, argument);
  if (second !== undefined) {
    const same = options.sameEitherWay;
    if (same === undefined || same(first) !== same(second)) {
      return twoReadings(cell, argument, readings.map(shownReading).join(' or '));
    }
  }
  const isZero = !/[1-9]/.test(scanned.body);
  if (!Number.isFinite(first.value) || (first.value === 0 && !isZero)) return outOfRange(cell, argument);
  return success(first);
}

/** The number that the other reading of its mark gives, where a sheet's settings decide; undefined where there is none. */
export function numberOfOtherMark(
  scanned: ScannedNumber,
  { cell, decimalMark }: { readonly cell: string; readonly decimalMark: 'point' | 'comma' },
): TypedNumber | undefined {
  const reading = otherReading(scanned.body, decimalMark);
  return reading && typedNumber(reading, scanned, cell);
}

const shownReading = ({ whole, fraction }: DecimalReading): string =>
  fraction === undefined ? whole : `${whole}.${fraction}`;

function typedNumber({ whole, fraction }: DecimalReading, scanned: ScannedNumber, typed: string): TypedNumber {
  const { exponent, hasExponent, negative } = scanned;
  const digits = whole + (fraction ?? '');
  const significant = digits.replace(/^0+/, '');
  const isWhole = fraction === undefined && !hasExponent;
  const lastPlace = exponent - (fraction?.length ?? 0);
  // An exact decimal, shifted in decimal: binary arithmetic would lose the digit that a tie hangs on.
  const decimal = shiftedDecimal({ digits, lastPlace, negative });
  return {
    value: Number(decimal),
    decimal,
    figures: Math.max(significant.length, 1),
    lastPlace,
    ambiguousZeros: isWhole ? significant.length - significant.replace(/0+$/, '').length : 0,
    isText: true,
    typed,
  };
}

const notANumber = (cell: CellValue, argument: string): Result<never> =>
  failure({
    code: 'number-expected',
    argument,
    received: quoted(cell),
    advice: 'Type digits with at most one decimal mark, such as 0.25.',
  });

const twoReadings = (cell: string, argument: string, both: string): Result<never> =>
  failure({
    code: 'number-two-readings',
    argument,
    expected: both,
    received: quoted(cell),
    advice: 'Type the one you mean.',
    brief: both,
  });

const outOfRange = (cell: string, argument: string): Result<never> =>
  failure({
    code: 'number-out-of-range',
    argument,
    expected: 'between 10^-300 and 10^300',
    received: quoted(cell),
    advice: 'Check its power of ten.',
  });
