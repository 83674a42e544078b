export interface DecimalDigits {
  /** One at least. */
  readonly digits: string;
  /** Exponent of ten of the last digit. */
  readonly lastPlace: number;
  readonly negative: boolean;
}

/** Places up to which a decimal is written without a power of ten. */
const plainPlaces = 25;

/** A decimal with exactly these digits, in plain figures unless very large or very small. */
export function shiftedDecimal({ digits, lastPlace, negative }: DecimalDigits): string {
  const sign = negative && /[1-9]/.test(digits) ? '-' : '';
  const plain = digits.replace(/^0+(?=\d)/, '');
  if (Math.abs(lastPlace) > plainPlaces) return `${sign}${plain}e${lastPlace}`;
  if (lastPlace >= 0) return plain === '0' ? '0' : sign + plain + '0'.repeat(lastPlace);
  const padded = plain.padStart(1 - lastPlace, '0');
  return `${sign}${padded.slice(0, lastPlace)}.${padded.slice(lastPlace)}`;
}
