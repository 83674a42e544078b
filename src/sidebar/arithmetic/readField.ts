import { withDecimalMark } from '../../measurement/withDecimalMark.ts';
import { texts } from '../texts.ts';
import { evaluate, type Worked } from './evaluate.ts';
import { type DecimalMark, pointNumbers } from './pointNumbers.ts';
import { arithmetic } from './units.ts';

/** What a numeric field says. */
export type FieldReading =
  | { readonly kind: 'blank' }
  /** `text` is sent: a number in the field's unit. `meaning` stands beside the field, empty where it would repeat what was typed. */
  | { readonly kind: 'value'; readonly text: string; readonly value: number; readonly meaning: string }
  | { readonly kind: 'problem'; readonly message: string };

export interface FieldText {
  readonly typed: string;
  /** Unit that a bare number is read in; `%` and the empty text are pure numbers. */
  readonly unit: string;
  readonly mark: DecimalMark;
}

const plainNumber = /^\d+(?:\.\d+)?$|^\.\d+$/;
/** One number, perhaps with a unit, such as `0.250 L`, `300 mmol/L` or `2.50e-3`: its figures are kept. */
const oneNumber = /^(\d*\.?\d+)(?:e[+-]?\d+)?(?:\s*[A-Za-z][A-Za-z/^0-9]*)?$/i;
const longest = 200;

/**
 * Reads a number, a number with a unit, or arithmetic with units, as a teacher types it. A plain number keeps every
 * figure typed; a result is shown to 12 figures, beyond which binary arithmetic leaves only noise.
 */
export function readField({ typed, unit, mark }: FieldText): FieldReading {
  const trimmed = typed.trim();
  if (trimmed === '') return { kind: 'blank' };
  if (trimmed.length > longest) return problem(texts.field.tooLong(longest));
  const numbers = pointNumbers(trimmed, mark);
  if ('twoWays' in numbers) return problem(texts.field.twoWays(numbers.twoWays));
  const spelled = mathSpelling(numbers.text, unit);
  const marked = (text: string) => withDecimalMark(text, mark);

  if (plainNumber.test(spelled)) {
    const text = spelled.startsWith('.') ? `0${spelled}` : spelled;
    if (Number(text) === 0) return problem(texts.field.notAboveZero(trimmed));
    return { kind: 'value', text: marked(text), value: Number(text), meaning: '' };
  }
  // A percentage of nothing in particular would be read as a hundredth.
  if (spelled.includes('%')) return problem(texts.field.unread(trimmed, unit));
  const outcome = evaluate(spelled);
  if ('obstacle' in outcome) {
    if (outcome.obstacle.kind === 'unknown name') return problem(texts.field.unknownUnit(outcome.obstacle.part, unit));
    if (outcome.obstacle.kind === 'millions') return problem(texts.field.millions(outcome.obstacle));
    if (outcome.obstacle.kind === 'unlike kinds') return problem(texts.field.unlikeKinds(trimmed, unit));
    return problem(texts.field.unread(trimmed, unit));
  }
  const value = inUnit(outcome.value, unit);
  if (value === undefined) return problem(texts.field.wrongKind({ typed: trimmed, unit, kind: kindOf(outcome.value) }));
  if (!Number.isFinite(value)) return problem(texts.field.notFinite(trimmed));
  if (value <= 0) return problem(texts.field.notAboveZero(trimmed));
  const text = marked(resultText(value, oneNumber.exec(spelled)?.[1]));
  return { kind: 'value', text, value: Number(text.replace(',', '.')), meaning: texts.field.meaning(text, unit) };
}

const problem = (message: string): FieldReading => ({ kind: 'problem', message });

/** The signs that people type, as the parser spells them. */
function mathSpelling(text: string, unit: string): string {
  const spelled = text
    .replace(/[−–]/g, '-')
    .replace(/[×·⋅∙*]/g, '*')
    .replace(/([\d)])\s*[xX]\s*(?=[\d(])/g, '$1*')
    .replace(/[÷∕:]/g, '/')
    .replace(/[µμ]/g, 'u')
    .replace(/²/g, '^2')
    .replace(/³/g, '^3')
    .replace(/½/g, '(1/2)')
    .replace(/¼/g, '(1/4)')
    .replace(/¾/g, '(3/4)')
    .replace(/\b(cc|cm3)\b/g, 'cm^3')
    .replace(/\bdm3\b/g, 'dm^3')
    .replace(/\s+/g, ' ')
    .trim();
  // Percentages keep the printed number: the parser would divide by 100.
  return unit === '%' ? spelled.replace(/\s*%$/, '') : spelled;
}

const isPure = (unit: string) => unit === '' || unit === '%';

/** The number in the field's unit; a pure number counts as already in it; undefined where the kinds differ. */
function inUnit(worked: Worked, unit: string): number | undefined {
  if (typeof worked === 'number') return worked;
  if (isPure(unit)) return undefined;
  const target = evaluate(unit);
  if ('obstacle' in target || typeof target.value === 'number') return undefined;
  return worked.equalBase(target.value) ? worked.toNumber(unit) : undefined;
}

/** Units whose kind has a name that people know. */
const kinds = ['mL', 'g', 'mol', 'mol/L', 'g/mL', 'g/mol', 'cm', 's', 'K'] as const;

function kindOf(worked: Worked): string {
  if (typeof worked === 'number') return texts.field.kinds.number;
  const { Unit } = arithmetic();
  const found = kinds.find((unit) => worked.equalBase(new Unit(1, unit)));
  return found ? texts.field.kinds[found] : texts.field.kinds.other;
}

function resultText(value: number, literal: string | undefined): string {
  const clean = Number(value.toPrecision(12));
  if (literal !== undefined) {
    const figures = literal.replace(/^0*\.?0*/, '').replace('.', '').length;
    const decimals = figures - 1 - Math.floor(Math.log10(clean));
    if (decimals > 0 && decimals <= 15) return clean.toFixed(decimals);
  }
  return String(clean);
}
