import { readFormula } from '../../chemistry/readFormula.ts';
import { patternOnUse } from '../../measurement/patternOnUse.ts';
import { type NamedUnit, unitNamed } from '../../measurement/unit.ts';
import type { EntryKind, Unreadable } from './readEntry.ts';

/** What stands behind the number of an entry. */
export type BehindNumber =
  | { readonly unreadable: Unreadable }
  | { readonly unit: NamedUnit }
  /** Nothing that is a unit; or, of a pure number, a word such as “times”. */
  | { readonly says: 'nothing' | 'times' | 'another unit' };

/** `CuSO4 · 5 H2O` in one piece, so that it is one word. */
const joinedHydrates = (text: string): string =>
  text.replace(/\s*(?:[·•*×]|\sx\s)\s*([\d½.,/]{0,6})\s*(?=H[2₂]O)/gu, '·$1');

/** A word without the marks of the sentence around it. */
const bare = (word: string): string => word.replace(/^["'“‘]+/u, '').replace(/[.,;:!?"'”’]+$/u, '');

/** A word as it stands, and without a bracket that the sentence opened before it or closes behind it. */
const unbracketed = (word: string): readonly string[] =>
  [word, word.replace(/^[([]/, '')].flatMap((one) => [one, one.replace(/[)\]]$/, '')]);

/** Without a capital it is none, and what else it may be meant for is a long search. */
const isFormula = (word: string): boolean =>
  /[A-Z]/.test(word) && unbracketed(bare(word)).some((plain) => readFormula(plain).ok);

const numberApart = patternOnUse(String.raw`(?<![\p{L}\d]\^?\(?[-−–]?)\d`, 'u');

/** The end of a span that has its unit at both ends, as in `5 g–7 g`, where no power of the unit is meant. */
const endOfSpan = patternOnUse(String.raw`(?<!\p{L})(\p{L}+)\s?[-−–]\s?\d+\s?\1(?!\p{L})`, 'u');

/** Whether a number stands in a text; digits of a formula, and those joined to a letter as in `s-1`, are none. */
function holdsNumber(text: string): boolean {
  const words = joinedHydrates(text)
    .split(/\s/)
    .filter((word) => !isFormula(word));
  const plain = words.join(' ').normalize('NFKC');
  return numberApart().test(plain) || endOfSpan().test(plain);
}

/** A sign of arithmetic between two numbers; a hyphen only where it comes first. */
const calculation = /[*÷^+√=]|^[×x·⋅−–-]|[/×x·⋅]\s*[\d(]/u;
const ratio = /^(?::|to\b)/i;
const timesWord = /^(?:[×x✕✖]|times\b|-?\s?fold\b)/iu;
/** What may close a word; a unit ends there at the latest. */
const endOfWord = /[\s(,;:!?]/;
/** Marks behind which people go on with a remark. */
const remark = /^[([{,;:.!?"'“‘]/u;

/** The longest unit at the start of a text, and what follows it. */
function unitAtStart(text: string): { readonly unit: NamedUnit; readonly tail: string } | undefined {
  for (let end = text.length; end > 0; end -= 1) {
    if (end < text.length && !endOfWord.test(text.charAt(end))) continue;
    const unit = unitNamed(text.slice(0, end));
    if (unit) return { unit, tail: text.slice(end).trim() };
  }
  return undefined;
}

/**
 * A slash, a `per`, a dot or a symbol that follows belongs to the unit, which then is none that we know. A longer word for
 * a unit, such as “molar”, rather begins a remark.
 */
function goesOn(tail: string): boolean {
  if (/^(?:[/*·⋅]|per\b)/i.test(tail)) return true;
  const next = tail.slice(0, tail.search(/[\s(,;:!?]|$/));
  const symbol = unitNamed(next)?.symbol;
  return symbol !== undefined && (next.length <= 3 || symbol.normalize('NFKC') === next.normalize('NFKC'));
}

/** Reads what stands behind the number of an entry; every text has an answer. */
export function behindNumber(typed: string, kind: EntryKind): BehindNumber {
  const text = typed.replace(/[\u200b\u2060]/g, '').trim();
  if (text === '') return { says: 'nothing' };
  if (holdsNumber(text)) {
    if (kind === 'ratio' && ratio.test(text)) return { unreadable: 'ratio' };
    return { unreadable: calculation.test(text.normalize('NFKC')) ? 'calculation' : 'two numbers' };
  }
  if (/=/.test(text)) return { unreadable: 'more than a number' };
  if (kind === 'ratio' && timesWord.test(text)) return { says: 'times' };
  const found = unitAtStart(text);
  if (found) return goesOn(found.tail) ? { says: 'another unit' } : { unit: found.unit };
  if (remark.test(text)) return { says: 'nothing' };
  const joined = joinedHydrates(text);
  const word = joined.slice(0, joined.search(/\s|$/));
  // One letter alone is rather a unit such as N or K than an element.
  return { says: word.length > 1 && isFormula(word) ? 'nothing' : 'another unit' };
}
