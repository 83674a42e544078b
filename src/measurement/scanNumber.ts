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

interface Signs {
  readonly digit: RegExp;
  readonly minus: RegExp;
  readonly plus: RegExp;
}

const space = /[\s\u200b\u2060]/;
const digit = /[0-9]/;
const markOrDigit = /[0-9.,]/;
const apostrophe = /['’]/;
const times = /[×xX*·⋅∙✕✖]/;
const onTheLine: Signs = { digit, minus: /[-−–‐‑﹣－]/, plus: /[+＋]/ };
const raised: Signs = { digit: /[⁰¹²³⁴-⁹]/, minus: /⁻/, plus: /⁺/ };

/** Digits that an exponent may have; more could only be out of range. */
const exponentDigits = 5;

/**
 * Reads the longest number at the start of a text; undefined where there is none. Goes through the text once.
 * A power of ten is `e-3`, `E-3`, ` e-3`, `× 10^-3`, `x10^(-3)`, `*10^-3`, `× 10⁻³` or, with its minus sign only, `x10-3`;
 * `10^-3` alone is one of it.
 */
export function scanNumber(text: string): ScannedNumber | undefined {
  let at = 0;
  const isAt = (kind: RegExp): boolean => kind.test(text.charAt(at));
  const skip = (kind: RegExp) => {
    while (isAt(kind)) at += 1;
  };
  const took = (kind: RegExp): boolean => {
    const isHere = isAt(kind);
    if (isHere) at += 1;
    return isHere;
  };
  /** What a reader finds; one that finds nothing has read nothing. */
  const attempt = <Found>(read: () => Found | undefined): Found | undefined => {
    const before = at;
    const found = read();
    if (found === undefined) at = before;
    return found;
  };
  const tookMinus = ({ minus, plus }: Signs): boolean => {
    const negative = took(minus);
    if (!negative) took(plus);
    return negative;
  };
  const exponentIn = (signs: Signs): number | undefined => {
    const negative = tookMinus(signs);
    const from = at;
    skip(signs.digit);
    if (at === from || at - from > exponentDigits) return undefined;
    const size = Number(text.slice(from, at).normalize('NFKC'));
    return negative ? -size : size;
  };
  const raisedExponent = () => exponentIn(raised);
  const afterCaret = () => {
    skip(space);
    if (!took(/\^/)) return undefined;
    skip(space);
    const isOpen = took(/[({]/);
    const found = exponentIn(onTheLine);
    return isOpen && !took(/[)}]/) ? undefined : found;
  };
  const afterLetter = () => (took(/[eE]/) ? exponentIn(onTheLine) : undefined);
  /** Behind a space a letter e begins an exponent only with a sign: `5 e3` could be anything. */
  const afterSpacedLetter = () => {
    if (!took(space)) return undefined;
    skip(space);
    return took(/[eE]/) && (isAt(onTheLine.minus) || isAt(onTheLine.plus)) ? exponentIn(onTheLine) : undefined;
  };
  /** `x10-3`, as people type it who find no raised digits. */
  const minusAlone = () => (isAt(onTheLine.minus) ? exponentIn(onTheLine) : undefined);
  /** What follows the ten of a power of ten. */
  const powerOfTen = () => attempt(raisedExponent) ?? attempt(afterCaret);
  const timesPowerOfTen = () => {
    skip(space);
    const isTimes = took(times);
    skip(space);
    return isTimes && took(/1/) && took(/0/) ? (powerOfTen() ?? attempt(minusAlone)) : undefined;
  };
  const gapBeforeDigit = () => {
    if (!took(apostrophe)) skip(space);
    return isAt(digit) || undefined;
  };

  skip(space);
  const negative = tookMinus(onTheLine);
  skip(space);
  let body = '';
  for (;;) {
    const from = at;
    if (took(markOrDigit)) body += text.charAt(from);
    else if (digit.test(body) && attempt(gapBeforeDigit)) body += ' ';
    else break;
  }
  if (!digit.test(body)) return undefined;
  // A second mark at the very end is punctuation, as in “7.14.” or “7.14, rounded”; but 1,234. is 1234 with its point.
  if (/[.,].*[.,]$/.test(body) && !/^\d{1,3}(?:,\d{3})+\.$/.test(body)) {
    body = body.slice(0, -1);
    at -= 1;
  }
  const ofOne = body === '10' ? attempt(powerOfTen) : undefined;
  if (ofOne !== undefined) return { negative, body: '1', exponent: ofOne, hasExponent: true, end: at };
  const exponent = attempt(afterLetter) ?? attempt(afterSpacedLetter) ?? attempt(timesPowerOfTen);
  return { negative, body, exponent: exponent ?? 0, hasExponent: exponent !== undefined, end: at };
}
