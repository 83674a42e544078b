import { isListedIon } from './listedIons.ts';

/** A text without its charge, and the charge. */
export interface ChargeReading {
  readonly base: string;
  readonly charge: number;
}

const signOf = (mark: string) => (/[+＋⁺]/.test(mark) ? 1 : -1);
/** Plain or raised digits as a number; 1 where there are none. */
const size = (digits = ''): number => Number(digits.normalize('NFKC') || 1);

/** Longest tail that can be a charge, so that looking for one takes the same time for any text. */
const tailLength = 14;

/** Charges whose digit cannot be a subscript: after ^, in brackets, as superscripts, after a space or a subscript digit. */
const clearShapes: readonly { readonly shape: RegExp; readonly size: number; readonly sign: number }[] = [
  { shape: /\^\s*[({]?\s*(\d{0,2})\s*([+＋−–-])\s*[)}]?$/, size: 1, sign: 2 },
  { shape: /\^\s*[({]?\s*([+＋−–-])\s*(\d{1,2})\s*[)}]?$/, size: 2, sign: 1 },
  { shape: /\((\d{0,2})([+＋−–-])\)$/, size: 1, sign: 2 },
  { shape: /\(([+＋−–-])(\d{1,2})\)$/, size: 2, sign: 1 },
  { shape: /([⁰¹²³⁴⁵⁶⁷⁸⁹]{0,2})([⁺⁻])$/, size: 1, sign: 2 },
  { shape: /([⁺⁻])([¹²³⁴⁵⁶⁷⁸⁹]{1,2})$/, size: 2, sign: 1 },
  { shape: /(?<=[₀-₉\s])(\d)([+＋−–-])$/, size: 1, sign: 2 },
  { shape: /([+＋−–-])(\d{1,2})$/, size: 2, sign: 1 },
];

/**
 * The readings of a charge at the end of a formula: one, or two where a bare digit before the sign may be either the
 * subscript or the charge. A listed ion decides between two for anything but a single element.
 */
export function splitCharge(text: string): readonly [ChargeReading] | readonly [ChargeReading, ChargeReading] {
  const tail = text.slice(-tailLength);
  const before = (end: string) => text.slice(0, text.length - end.length);
  for (const { shape, size: sizeAt, sign: signAt } of clearShapes) {
    const match = shape.exec(tail);
    if (match) {
      return [{ base: before(match[0]).trimEnd(), charge: size(match[sizeAt]) * signOf(match[signAt] ?? '') }];
    }
  }
  const bare = /(\d*)([+＋]+|[−–-]+)$/.exec(tail);
  if (!bare) return [{ base: text, charge: 0 }];
  const [whole, digits = '', signs = ''] = bare;
  const body = before(whole);
  const sign = signOf(signs);
  // Several signs are the charge by themselves, so the digits before them count atoms.
  if (signs.length > 1) return [{ base: body + digits, charge: sign * signs.length }];
  const asSubscript = { base: body + digits, charge: sign };
  const asCharge = { base: body + digits.slice(0, -1), charge: sign * Number(digits.slice(-1)) };
  // Neither a 0 nor no digit at all is the size of a charge.
  if (asCharge.charge === 0) return [asSubscript];
  if (!/^[A-Z][a-z]?$/.test(body.trim())) {
    for (const reading of [asSubscript, asCharge]) {
      if (isListedIon({ body: reading.base.replace(/\s/g, ''), charge: reading.charge })) return [reading];
    }
  }
  return [asCharge, asSubscript];
}

/** A reading as text that can be read one way only: `Ca^2+`. */
export const chargeText = ({ base, charge }: ChargeReading): string => {
  const digits = Math.abs(charge) === 1 ? '' : String(Math.abs(charge));
  return `${base}^${digits}${charge < 0 ? '-' : '+'}`;
};
