import { type CellValue, isBlank } from '../measurement/cellValue.ts';
import { readNumber, type TypedNumber } from '../measurement/readNumber.ts';
import { readQuantity } from '../measurement/readQuantity.ts';
import { unitNamed } from '../measurement/unit.ts';
import type { QuantityEntry } from './quantities/quantityEntry.ts';
import type { TypedEntry } from './typedEntry.ts';

export type EntryKind = QuantityEntry['entryKind'];

/** Why no number is taken from an entry; `calculation` is one that is not worked out, `more than a number` a mark beside one. */
export type Unreadable = 'two ways' | 'not a number' | 'other kind' | 'calculation' | 'more than a number';

/** What stands in an entry cell. A number with a unit that does not fit is a number still, with a question to ask. */
export type ReadEntry =
  | { readonly kind: 'blank' }
  | { readonly kind: 'unreadable'; readonly because: Unreadable }
  | {
      readonly kind: 'number';
      /** In the unit asked; the number as it stands where the unit is of another kind. */
      readonly entry: TypedEntry;
      /** The number as it stands, without its unit. */
      readonly bare: TypedEntry;
      readonly unit: 'none' | 'fits' | 'other kind';
    };

const measurementKinds = ['volume', 'mass', 'amount', 'concentration', 'density', 'percent'] as const;

/** Spellings of units that only an entry has; the number is the factor to the unit asked. */
const ownUnits: Readonly<Record<'molar mass' | 'ratio' | 'percent', Readonly<Record<string, number>>>> = {
  'molar mass': { 'g/mol': 1, 'gmol-1': 1, 'g*mol-1': 1, 'kg/mol': 1000, 'kg/kmol': 1, 'mg/mmol': 1 },
  ratio: { x: 1, times: 1, fold: 1, '-fold': 1 },
  percent: { '%': 1, percent: 1, percenterror: 1 },
};

const plainUnit = (unit: string): string =>
  unit
    .normalize('NFKC')
    .replace(/[\s^]/gu, '')
    .replace(/[−–⁻]/gu, '-')
    .replace(/[·⋅×.]/gu, '*')
    .replace(/^\*$/, 'x');

const typedEntry = (typed: TypedNumber, value = typed.value): TypedEntry => {
  // Units of one kind differ by a power of ten, so that a digit keeps its meaning and only moves.
  const shift = typed.value === 0 ? 0 : Math.round(Math.log10(value / typed.value));
  return {
    value,
    figuresMin: typed.figures - typed.ambiguousZeros,
    figuresMax: typed.figures,
    lastPlace: typed.lastPlace + shift,
    isText: typed.isText,
  };
};

/** One comma before exactly three digits: 1,234 is 1234 to some and 1.234 to others. */
const thousandsOrDecimals = /^[^\d]*[1-9]\d{0,2},\d{3}(?:\D|$)/;

/** The number at the start of a text and what follows it. */
function splitAtUnit(text: string): { readonly number: string; readonly unit: string } | undefined {
  const match =
    /^(.*?\d[\d\s.,'’]*(?:(?:[eE]|\s*[×x*·]\s*10\s*\^?)\s*[-+−]?\d+|\s*[×x*·]\s*10[⁻⁺⁰¹²³⁴⁵⁶⁷⁸⁹]+)?)\s*(-?[^\d\s.,;:'’+−-].*)$/su.exec(
      text.trim(),
    );
  return match?.[1] !== undefined && match[2] !== undefined
    ? { number: match[1].trim(), unit: match[2].trim() }
    : undefined;
}

/** What is no arithmetic though it has its signs: mol/L, g*mol, mol^-1, L-1, and the water of a formula. */
const signsOfSpellings = /(?<=\p{L})\s*[/*]\s*\(?(?=\p{L})|(?<=\p{L})\^?[-−–]?\d+|(?<=[\p{L}\d])[*.·]\d*H2O/gu;

/** Whether what stands behind a number goes on with the work, or holds a mark that no unit has. */
function unreadableBehind(unit: string): Unreadable | undefined {
  const rest = unit.normalize('NFKC').replace(signsOfSpellings, '');
  if (/[/*÷^+√]|^[×x·⋅−–-]\s*[\d(.]|=\s*\S/u.test(rest)) return 'calculation';
  return /[=?]/.test(rest) ? 'more than a number' : undefined;
}

/** What to ask of a text that begins with no number, or that is no number and a unit. */
function unreadableText(text: string): Unreadable {
  const plain = text.normalize('NFKC');
  if (/^\s*=.*\d.*[-+*/^÷×(]|^\s*=.*[-+*/^÷×(].*\d|[\d)]\s*[-+−*/^÷×x·⋅]\s*[\d(]/su.test(plain)) {
    // Two hyphens between digits make a date.
    return /\d-\d+-\d/.test(plain) ? 'not a number' : 'calculation';
  }
  if (thousandsOrDecimals.test(text)) return 'two ways';
  return /\d/.test(plain) && /[=?]/.test(plain) ? 'more than a number' : 'not a number';
}

/**
 * Reads an entry of a kind; never fails. A Boolean, a date, plain words or a calculation are `unreadable`; a number with
 * any unit, known or not, is a number.
 */
export function readEntry(
  cell: CellValue,
  kind: EntryKind,
  options: { readonly decimalMark?: 'point' | 'comma' | undefined } = {},
): ReadEntry {
  if (isBlank(cell)) return { kind: 'blank' };
  if (typeof cell !== 'string' && typeof cell !== 'number') return { kind: 'unreadable', because: 'other kind' };
  const marks = options.decimalMark ? { decimalMark: options.decimalMark } : {};
  const plain = readNumber(cell, 'entry', marks);
  if (plain.ok) return { kind: 'number', entry: typedEntry(plain.value), bare: typedEntry(plain.value), unit: 'none' };
  const split = typeof cell === 'string' ? splitAtUnit(cell) : undefined;
  const number = split && readNumber(split.number, 'entry', marks);
  if (!split || !number?.ok) {
    return { kind: 'unreadable', because: typeof cell === 'string' ? unreadableText(cell) : 'not a number' };
  }
  const bare = typedEntry(number.value);
  const own = kind === 'molar mass' || kind === 'ratio' || kind === 'percent' ? ownUnits[kind] : undefined;
  const factor = own?.[plainUnit(split.unit)];
  if (factor !== undefined) {
    return { kind: 'number', entry: typedEntry(number.value, number.value.value * factor), bare, unit: 'fits' };
  }
  const measured = measurementKinds.find((known) => known === kind);
  const quantity = measured && readQuantity(cell, measured, 'entry', marks);
  if (quantity?.ok)
    return { kind: 'number', entry: typedEntry(number.value, quantity.value.value), bare, unit: 'fits' };
  const because = unitNamed(split.unit) ? undefined : unreadableBehind(split.unit);
  return because ? { kind: 'unreadable', because } : { kind: 'number', entry: bare, bare, unit: 'other kind' };
}
