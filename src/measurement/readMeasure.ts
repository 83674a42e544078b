import { quoted } from '../errors/quoted.ts';
import { failure, type Result, success } from '../errors/result.ts';
import type { CellValue } from './cellValue.ts';
import { type NumberOptions, numberFromScan, readNumber, type TypedNumber } from './readNumber.ts';
import { longestQuantity } from './readQuantity.ts';
import { restAfter } from './restAfter.ts';
import { type ScannedNumber, scanNumber } from './scanNumber.ts';
import { type NamedUnit, unitNamed } from './unit.ts';

/** A number with what was typed behind it, of any kind. */
export interface Measure {
  /** As it stands, whatever its unit. */
  readonly number: TypedNumber;
  /** In the default unit of its kind; the same number where no unit of the trade was typed. */
  readonly converted: TypedNumber;
  /** Undefined for a bare number, and where no unit of the trade has that name. */
  readonly unit: NamedUnit | undefined;
  /** Empty for a bare number. */
  readonly unitTyped: string;
}

/** The units of a kind differ by powers of ten, so the unit's power joins the one that was typed. */
export const withPower = (scanned: ScannedNumber, power: number): ScannedNumber => ({
  ...scanned,
  exponent: scanned.exponent + power,
});

/**
 * A number with or without a unit of any kind. Fails like `readNumber`; a unit that is not known is no failure here, since
 * not everybody needs one.
 */
export function readMeasure(cell: CellValue, argument: string, options: NumberOptions = {}): Result<Measure> {
  const scanned = typeof cell === 'string' && cell.length <= longestQuantity ? scanNumber(cell) : undefined;
  if (typeof cell !== 'string' || scanned === undefined) {
    const number = readNumber(cell, argument, options);
    if (!number.ok) return number;
    return success({ number: number.value, converted: number.value, unit: undefined, unitTyped: '' });
  }
  const number = numberFromScan(scanned, { cell, argument, options });
  if (!number.ok) return number;
  const unitTyped = restAfter(cell, scanned);
  const unit = unitNamed(unitTyped);
  const converted = numberFromScan(withPower(scanned, unit?.power ?? 0), { cell, argument, options });
  return converted.ok ? success({ number: number.value, converted: converted.value, unit, unitTyped }) : converted;
}

/** The error for a unit that none of the trade's is called, where any kind would do. */
export const unitNotKnown = ({ number, unitTyped }: Measure, argument: string): Result<never> =>
  failure({
    code: 'unit-unknown',
    argument,
    received: quoted(number.typed),
    advice: 'Type the number alone, or with a unit such as g, mL or mol/L.',
    brief: shortUnit(unitTyped),
  });

/** Long texts are no units, and would fill a message. */
const shortUnit = (unit: string): string => (unit.length > 12 ? `${unit.slice(0, 12)}…` : unit);
