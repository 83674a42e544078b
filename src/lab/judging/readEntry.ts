import { type CellValue, isBlank } from '../../measurement/cellValue.ts';
import { withPower } from '../../measurement/readMeasure.ts';
import { numberFromScan, numberOfOtherMark, readNumber, type TypedNumber } from '../../measurement/readNumber.ts';
import { scanNumber } from '../../measurement/scanNumber.ts';
import type { NamedUnit, UnitKind } from '../../measurement/unit.ts';
import { behindNumber } from './behindNumber.ts';
import type { TypedEntry } from './typedEntry.ts';

export type EntryKind = UnitKind | 'ratio';

/** Why no number is taken from an entry; `calculation` is one that is not worked out, `more than a number` a mark beside one. */
export type Unreadable =
  | 'two ways'
  | 'not a number'
  | 'other kind'
  | 'calculation'
  | 'more than a number'
  | 'two numbers'
  | 'ratio'
  | 'too long';

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
      /** The unit that was typed, where it is one of the trade's. */
      readonly named?: NamedUnit;
      /** In the unit asked, by the other reading of a decimal mark that the settings decide. */
      readonly otherMark?: TypedEntry;
    };

/** Longest entry that is read, in characters: an answer with a remark, not a page. */
export const longestEntry = 200;

const typedEntry = ({ value, figures, ambiguousZeros, lastPlace, isText }: TypedNumber): TypedEntry => ({
  value,
  figuresMin: figures - ambiguousZeros,
  figuresMax: figures,
  lastPlace,
  isText,
});

/** Words and signs before a number that say it is rough. */
const roughly =
  /^(?:(?:about|around|approx(?:imately)?|roughly|nearly|almost|circa|ca|c)\b\.?|[~≈≃≅∼∽])\s*(?=[\d.,~≈≃≅∼∽+−–-]|about|ca)/iu;
/** A times sign before a pure number. */
const timesBefore = /^[×x✕✖*]\s*(?=[\d.,])/iu;

/** What keyboards for Chinese and Japanese write: letters, digits and marks in plain width, and a plain point. */
const inPlainWidth = (text: string): string =>
  text
    .replace(/[\uff01-\uff5e]/g, (one) => String.fromCharCode(one.charCodeAt(0) - 0xfee0))
    .replace(/\u3000/g, ' ')
    .replace(/[\u3002\uff61]/g, '.');

function withoutRough(text: string): string {
  const once = text.trim().replace(roughly, '');
  return once.replace(roughly, '');
}

/** What to ask of a text that begins with no number. */
function unreadableText(text: string): Unreadable {
  const plain = text.normalize('NFKC');
  if (!/\d/.test(plain)) return 'not a number';
  const isWorkedInSheet = plain.startsWith('=') && /[-+*/^÷×(]/.test(plain);
  return isWorkedInSheet || /[\d)]\s*[-+−*/^÷×x·⋅]\s*[\d(]/u.test(plain) ? 'calculation' : 'more than a number';
}

function readText(typed: string, kind: EntryKind, decimalMark: 'point' | 'comma' | undefined): ReadEntry {
  if (typed.length > longestEntry) return { kind: 'unreadable', because: 'too long' };
  const cell = inPlainWidth(typed);
  const rough = withoutRough(cell);
  const text = kind === 'ratio' ? rough.replace(timesBefore, '') : rough;
  // Two hyphens between digits make a date.
  if (/^\d+-\d+-\d/.test(text)) return { kind: 'unreadable', because: 'not a number' };
  const scanned = scanNumber(text);
  if (scanned === undefined) return { kind: 'unreadable', because: unreadableText(text) };
  const from = { cell: text, argument: 'entry', options: { decimalMark } };
  const number = numberFromScan(scanned, from);
  if (!number.ok) {
    if (number.error.code === 'number-two-readings') return { kind: 'unreadable', because: 'two ways' };
    return { kind: 'unreadable', because: scanned.body.includes(' ') ? 'two numbers' : 'not a number' };
  }
  const behind = behindNumber(text.slice(scanned.end), kind);
  if ('unreadable' in behind) return { kind: 'unreadable', because: behind.unreadable };
  const bare = typedEntry(number.value);
  const power = 'unit' in behind && behind.unit.kind === kind ? behind.unit.power : 0;
  const converted = numberFromScan(withPower(scanned, power), from);
  const other = decimalMark && numberOfOtherMark(withPower(scanned, power), { cell: text, decimalMark });
  const mark = other ? { otherMark: typedEntry(other) } : {};
  if ('unit' in behind) {
    const fits = behind.unit.kind === kind && converted.ok;
    const entry = fits ? typedEntry(converted.value) : bare;
    return { kind: 'number', entry, bare, unit: fits ? 'fits' : 'other kind', named: behind.unit, ...mark };
  }
  const unit = { nothing: 'none', times: 'fits', 'another unit': 'other kind' } as const;
  return { kind: 'number', entry: bare, bare, unit: unit[behind.says], ...mark };
}

/**
 * Reads an entry of a kind; never fails. People write to a teacher: words before the number that say it is rough, and any
 * remark behind number and unit that holds no second number, are passed over. A Boolean, a date, plain words, a
 * calculation, two numbers or more than 200 characters are `unreadable`; a number with any unit, known or not, is a number.
 */
export function readEntry(
  cell: CellValue,
  kind: EntryKind,
  options: { readonly decimalMark?: 'point' | 'comma' | undefined } = {},
): ReadEntry {
  if (isBlank(cell)) return { kind: 'blank' };
  if (typeof cell === 'string') return readText(cell, kind, options.decimalMark);
  if (typeof cell !== 'number') return { kind: 'unreadable', because: 'other kind' };
  const number = readNumber(cell, 'entry');
  if (!number.ok) return { kind: 'unreadable', because: 'not a number' };
  const bare = typedEntry(number.value);
  return { kind: 'number', entry: bare, bare, unit: 'none' };
}
