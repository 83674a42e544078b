import { withDecimalMark } from '../../measurement/withDecimalMark.ts';

export type DecimalMark = 'point' | 'comma';

/** A number that can be read two ways, as typed. */
export interface TwoReadings {
  readonly typed: string;
  readonly readings: readonly [string, string];
}

const spacesInNumbers = /(\d)[\u00a0\u2009\u202f](?=\d{3})/g;
const numberText = /\d[\d.,]*\d|\d/g;

/** Rewrites every number of a text with a decimal point and no thousands marks, or names the one that can be read two ways. */
export function pointNumbers(
  text: string,
  mark: DecimalMark,
): { readonly text: string } | { readonly twoWays: TwoReadings } {
  let twoWays: TwoReadings | undefined;
  const rewritten = text.replace(spacesInNumbers, '$1').replace(numberText, (typed) => {
    const marks = typed.replace(/\d/g, '');
    const last = marks[marks.length - 1];
    if (last === undefined) return typed;
    const both = marks.includes('.') && marks.includes(',');
    const plain = typed.replace(/[.,]/g, '');
    if (both) {
      const at = typed.lastIndexOf(last);
      return `${typed.slice(0, at).replace(/[.,]/g, '')}.${typed.slice(at + 1)}`;
    }
    if (marks.length > 1) return plain;
    const pointed = typed.replace(',', '.');
    const ownMark = mark === 'comma' ? ',' : '.';
    if (last !== ownMark && /^[1-9]\d{0,2}[.,]\d{3}$/.test(typed)) {
      twoWays ??= { typed, readings: [plain, withDecimalMark(pointed, mark)] };
    }
    return pointed;
  });
  return twoWays ? { twoWays } : { text: rewritten };
}
