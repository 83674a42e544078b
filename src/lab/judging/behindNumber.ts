import { readFormula } from '../../chemistry/readFormula.ts';
import { patternOnUse } from '../../measurement/patternOnUse.ts';
import { longestUnit, type NamedUnit, unitNamed } from '../../measurement/unit.ts';
import type { EntryKind, Unreadable } from './readEntry.ts';

/** What stands behind the number of an entry. */
export type BehindNumber =
  | { readonly unreadable: Unreadable }
  | { readonly unit: NamedUnit }
  /** Nothing that is a unit; or, of a pure number, a word such as “times”. */
  | { readonly says: 'nothing' | 'times' | 'another unit' };

/** `CuSO4 · 5 H2O` in one piece, so that it is one word. */
const joinedHydrates = (text: string): string =>
  text
    .replace(/\s?(?:[·•*×]|\s[x]\s)\s?(?=[\d½.,/]{0,6}\s?H[2₂]O)/gu, '·')
    .replace(/(·[\d½.,/]{1,6})\s(?=H[2₂]O)/gu, '$1');

/** A word without the marks of the sentence around it. */
const bare = (word: string): string => word.replace(/^["'“‘]+/u, '').replace(/[.,;:!?"'”’]+$/u, '');
/** A bracket that the sentence opened before the word, or closes behind it. */
const unbracketed = (word: string): string =>
  bare(word)
    .replace(/^[([]/, '')
    .replace(/[)\]]$/, '');

const isFormula = (word: string): boolean =>
  /[A-Z]/.test(word) &&
  [bare(word), bare(word).replace(/^[([]|[)\]]$/, ''), unbracketed(word)].some((plain) => readFormula(plain).ok);

const numberApart = patternOnUse(String.raw`(?<![\p{L}\d]\^?\(?[-−–]?)\d`, 'u');

/** Whether a number stands in a text; digits of a formula, and those joined to a letter as in `s-1`, are none. */
function holdsNumber(text: string): boolean {
  const words = joinedHydrates(text)
    .split(/\s+/)
    .filter((word) => !(/[\d½¼¾]/.test(word) && isFormula(word)));
  return numberApart().test(words.join(' ').normalize('NFKC'));
}

/** A sign of arithmetic between two numbers; a hyphen only where it comes first. */
const calculation = /[*÷^+√=]|^\s*[×x·⋅−–-]|[/×x·⋅]\s*[\d(]/u;
const ratio = /^\s*(?::|to\b)/i;
const timesWord = /^(?:[×x✕✖]|times\b|-?\s?fold\b)/iu;
/** What may close a word; a unit ends there at the latest. */
const endOfWord = /[\s(,;:!?]/;
/** Marks behind which people go on with a remark. */
const remark = /^[([{,;:.!?"'“‘]/u;

/** The longest unit at the start of a text, and what follows it. */
function unitAtStart(text: string): { readonly unit: NamedUnit; readonly tail: string } | undefined {
  for (let end = Math.min(text.length, longestUnit); end > 0; end -= 1) {
    if (end < text.length && !endOfWord.test(text.charAt(end))) continue;
    const unit = unitNamed(text.slice(0, end).trim());
    if (unit) return { unit, tail: text.slice(end).trim() };
  }
  return undefined;
}

/** A slash, a `per`, a dot or a symbol that follows belongs to the unit, which then is none that we know. */
function goesOn(tail: string): boolean {
  if (/^(?:[/*·⋅]|per\b)/i.test(tail)) return true;
  const [next = ''] = tail.split(/[\s(,;:!?]/);
  return next !== '' && next.length <= 3 && unitNamed(next) !== undefined;
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
  const [word = ''] = joinedHydrates(text).split(/\s/);
  // One letter alone is rather a unit such as N or K than an element.
  return { says: word.length > 1 && isFormula(word) ? 'nothing' : 'another unit' };
}
