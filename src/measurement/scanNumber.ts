/** The number at the start of a text, in pieces that were typed; its marks are not judged yet. */
export interface ScannedNumber {
  readonly negative: boolean;
  /** Digits with points, commas and what else stands between digits. */
  readonly body: string;
  readonly exponent: number;
  /** Whether a power of ten was typed, which settles that every digit before it counts. */
  readonly hasExponent: boolean;
  /** Where the rest of the text begins. */
  readonly end: number;
}

const space = /[\s\u00a0\u2000-\u200b\u202f\u205f\u2060\u3000\ufeff]/;
const digit = /[0-9]/;
const minus = '-−–‐‑﹣－';
const plus = '+＋';
const times = '×xX*·⋅∙✕✖';
const superscripts = '⁰¹²³⁴⁵⁶⁷⁸⁹';
const apostrophes = "'’";

/** Digits that an exponent may have; more could only be out of range. */
const exponentDigits = 5;

/**
 * Reads the longest number at the start of a text; undefined where there is none. Goes through the text once.
 * A power of ten is `e-3`, `E-3`, `× 10^-3`, `x10^-3`, `*10^-3` or `× 10⁻³`; `10^-3` alone is one of it.
 */
export function scanNumber(text: string): ScannedNumber | undefined {
  let at = 0;
  const character = () => text.charAt(at);
  const skipSpaces = () => {
    while (at < text.length && space.test(character())) at += 1;
  };
  const signHere = (): number => {
    const sign = character() === '' ? 0 : minus.includes(character()) ? -1 : plus.includes(character()) ? 1 : 0;
    if (sign !== 0) at += 1;
    return sign;
  };
  /** An exponent of plain digits; undefined and nothing read where there is none. */
  const plainExponent = (): number | undefined => {
    const before = at;
    const sign = signHere() || 1;
    const from = at;
    while (digit.test(character())) at += 1;
    if (at > from && at - from <= exponentDigits) return sign * Number(text.slice(from, at));
    at = before;
    return undefined;
  };
  const raisedExponent = (): number | undefined => {
    const before = at;
    const sign = character() === '⁻' ? -1 : 1;
    if (character() === '⁻' || character() === '⁺') at += 1;
    let value = 0;
    const from = at;
    while (character() !== '' && superscripts.includes(character())) {
      value = value * 10 + superscripts.indexOf(character());
      at += 1;
    }
    if (at > from && at - from <= exponentDigits) return sign * value;
    at = before;
    return undefined;
  };
  /** What follows the ten of a power of ten. */
  const powerOfTen = (): number | undefined => {
    const raised = raisedExponent();
    if (raised !== undefined) return raised;
    const before = at;
    skipSpaces();
    if (character() === '^') {
      at += 1;
      skipSpaces();
      const exponent = plainExponent();
      if (exponent !== undefined) return exponent;
    }
    at = before;
    return undefined;
  };
  const readExponent = (): number | undefined => {
    const before = at;
    if (character() === 'e' || character() === 'E') {
      at += 1;
      const exponent = plainExponent();
      if (exponent !== undefined) return exponent;
      at = before;
    }
    skipSpaces();
    if (character() !== '' && times.includes(character())) {
      at += 1;
      skipSpaces();
      if (text.startsWith('10', at)) {
        at += 2;
        const exponent = powerOfTen();
        if (exponent !== undefined) return exponent;
      }
    }
    at = before;
    return undefined;
  };

  skipSpaces();
  const negative = signHere() < 0;
  skipSpaces();
  const from = at;
  let body = '';
  let digits = 0;
  while (at < text.length) {
    if (digit.test(character())) {
      digits += 1;
      body += character();
      at += 1;
    } else if (character() === '.' || character() === ',') {
      body += character();
      at += 1;
    } else if (apostrophes.includes(character()) && digits > 0 && digit.test(text.charAt(at + 1))) {
      body += ' ';
      at += 1;
    } else if (space.test(character()) && digits > 0) {
      const before = at;
      skipSpaces();
      if (!digit.test(character())) {
        at = before;
        break;
      }
      body += ' ';
    } else break;
  }
  if (digits === 0) return undefined;
  const afterBody = at;
  if (body === '10') {
    const exponent = powerOfTen();
    if (exponent !== undefined) return { negative, body: '1', exponent, hasExponent: true, end: at };
    at = afterBody;
  }
  const exponent = readExponent();
  if (from === at) return undefined;
  return { negative, body, exponent: exponent ?? 0, hasExponent: exponent !== undefined, end: at };
}
