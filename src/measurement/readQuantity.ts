import { quoted } from '../errors/quoted.ts';
import { failure, type Result, success } from '../errors/result.ts';
import type { CellValue } from './cellValue.ts';
import { type NumberOptions, numberFromScan, readNumber } from './readNumber.ts';
import { restAfter } from './restAfter.ts';
import { scanNumber } from './scanNumber.ts';
import type { TypedNumber } from './typedNumber.ts';
import { type NamedUnit, type QuantityKind, type UnitKind, unitNamed, unitsOfKind } from './unit.ts';

export type { QuantityKind } from './unit.ts';

/** A number in the default unit of its kind (mL, g, mol, mol/L, g/mL, percent as printed). */
export interface TypedQuantity extends TypedNumber {
  /** Unit as typed; empty for a bare number. */
  readonly unit: string;
}

/** Longest text that can be a number with its unit. */
export const longestQuantity = 100;

/** How each kind is called in messages. */
const called: Readonly<Record<QuantityKind, { readonly one: string; readonly example: string }>> = {
  volume: { one: 'a volume', example: '200 mL' },
  mass: { one: 'a mass', example: '2.5 g' },
  amount: { one: 'an amount', example: '0.25 mol' },
  concentration: { one: 'a concentration', example: '0.3 mol/L' },
  density: { one: 'a density', example: '1.05 g/mL' },
  percent: { one: 'a percentage', example: '98 %' },
};

/** A kind in words, with its article. */
export const nameOfKind = (kind: UnitKind): string =>
  kind === 'molar mass' || kind === 'molality' ? `a ${kind}` : called[kind].one;

/** What a unit of another kind measures: grams in litres are said of a solute, grams in millilitres of a whole. */
const nameOfUnit = ({ kind, symbol }: NamedUnit): string =>
  kind === 'density' && !/^(?:g\/mL|g\/cm³|kg\/m³)$/.test(symbol) ? 'a mass concentration' : nameOfKind(kind);

const wanted = (kind: QuantityKind): string => `${called[kind].one} such as ${called[kind].example}`;
const bareName = (kind: QuantityKind): string => called[kind].one.replace(/an? /, '');

/**
 * A quantity as people type it: a bare number in the default unit of its kind, or text with a unit of the trade, which is
 * converted in decimal, so that no digit changes.
 *
 * @returns Fails with `quantity-expected` where there is no number, `number-two-readings`, `number-out-of-range`,
 * `percent-two-readings` for a bare percentage of 1 or less, `unit-other-kind` naming both kinds, or `unit-unknown`
 * listing the units of the kind.
 */
export function readQuantity(
  cell: CellValue,
  kind: QuantityKind,
  argument: string,
  options: NumberOptions = {},
): Result<TypedQuantity> {
  const refused = () =>
    failure({
      code: 'quantity-expected',
      argument,
      received: quoted(cell),
      advice: `Give ${wanted(kind)}.`,
      brief: called[kind].one,
    });
  if (typeof cell === 'number') return withoutUnit(readNumber(cell, argument), kind, { cell, argument });
  if (typeof cell !== 'string' || cell.length > longestQuantity) return refused();
  const scanned = scanNumber(cell);
  if (scanned === undefined) return refused();
  const unitTyped = restAfter(cell, scanned);
  const unit = unitNamed(unitTyped);
  // The units differ by powers of ten, so the unit's power joins the one that was typed.
  const inDefaultUnit = { ...scanned, exponent: scanned.exponent + (unit?.power ?? 0) };
  const number = numberFromScan(inDefaultUnit, { cell, argument, options });
  if (!number.ok) return number.error.code === 'number-expected' ? refused() : number;
  if (unitTyped === '') return withoutUnit(number, kind, { cell, argument });
  if (unit === undefined) {
    return failure({
      code: 'unit-unknown',
      argument,
      received: quoted(cell),
      advice: `Give ${called[kind].one} in ${unitsOfKind(kind)}.`,
      brief: unitTyped.length > 12 ? `${unitTyped.slice(0, 12)}…` : unitTyped,
    });
  }
  if (unit.kind !== kind) {
    return failure({
      code: 'unit-other-kind',
      argument,
      received: `${quoted(cell)}, ${nameOfUnit(unit)},`,
      advice:
        kind === 'concentration' && unit.kind === 'density'
          ? `Give ${wanted(kind)}; CONVERTCONCENTRATION works it out.`
          : `Give ${wanted(kind)}.`,
      brief: `${bareName(kind)}, not ${unitTyped}`,
    });
  }
  return success({ ...number.value, unit: unitTyped });
}

function withoutUnit(
  number: Result<TypedNumber>,
  kind: QuantityKind,
  { cell, argument }: { readonly cell: CellValue; readonly argument: string },
): Result<TypedQuantity> {
  if (!number.ok) return number;
  if (kind === 'percent' && number.value.value <= 1 && number.value.value !== 0) {
    return percentTwoReadings(number.value, { cell, argument });
  }
  return success({ ...number.value, unit: '' });
}

/** A cell formatted as a percentage hands over a fraction, which looks like a small percentage: neither is guessed. */
function percentTwoReadings(
  number: TypedNumber,
  { cell, argument }: { readonly cell: CellValue; readonly argument: string },
): Result<never> {
  // Fifteen digits, which drops the tail of binary arithmetic: every quantity is read here, so no library for one product.
  const asPercent = Number((number.value * 100).toPrecision(15));
  const both = `${number.value} % or ${asPercent} %`;
  return failure({
    code: 'percent-two-readings',
    argument,
    expected: both,
    received: quoted(cell),
    advice: 'Type it as text with its sign, such as "98 %".',
    brief: both,
  });
}
