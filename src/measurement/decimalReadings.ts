/** Whole digits and digits after the mark; `fraction` is undefined where no decimal mark was typed. */
export interface DecimalReading {
  readonly whole: string;
  readonly fraction: string | undefined;
}

/** Digits in threes with one mark between them, the first group not beginning with 0. */
const grouped = (text: string, mark: string): string | undefined => {
  const groups = text.split(mark);
  const [first = '', ...others] = groups;
  if (others.length === 0) return text;
  if (!/^[1-9][0-9]{0,2}$/.test(first) || others.some((group) => !/^[0-9]{3}$/.test(group))) return undefined;
  return groups.join('');
};

const decimal = (whole: string, fraction: string | undefined): DecimalReading[] =>
  /^[0-9]*$/.test(whole) && (fraction === undefined || /^[0-9]*$/.test(fraction)) && whole + (fraction ?? '') !== ''
    ? [{ whole, fraction }]
    : [];

const thousands = (text: string, mark: string): DecimalReading[] => {
  const whole = grouped(text, mark);
  return whole === undefined ? [] : decimal(whole, undefined);
};

/**
 * What the marks of a number can mean: no reading, one, or two (one comma and three digits after it).
 *
 * @param body - Digits, points, commas, and a space wherever a space or an apostrophe stood between digits.
 * @param decimalMark - The mark that the sheet's settings name; with it there are never two readings.
 */
export function decimalReadings(body: string, decimalMark?: 'point' | 'comma'): readonly DecimalReading[] {
  const points = body.split('.').length - 1;
  const commas = body.split(',').length - 1;
  if (body.includes(' ')) {
    // Spaces group the digits in threes, before the mark and perhaps behind it; one mark at most is left for decimals.
    if (points + commas > 1) return [];
    const [before = '', after] = body.split(/[.,]/);
    const whole = before.includes(' ') ? grouped(before, ' ') : before;
    const behind = after?.includes(' ') ? (/^([0-9]{3} )*[0-9]{1,3}$/.test(after) ? after : undefined) : after;
    if (whole === undefined || (after !== undefined && behind === undefined)) return [];
    return decimal(whole, behind?.replace(/ /g, ''));
  }
  if (points + commas === 0) return decimal(body, undefined);
  if (points > 0 && commas > 0) {
    // The later mark is the decimal one, and stands once; the other groups.
    const last = Math.max(body.lastIndexOf('.'), body.lastIndexOf(','));
    const group = body.charAt(last) === '.' ? ',' : '.';
    const whole = grouped(body.slice(0, last), group);
    return whole === undefined ? [] : decimal(whole, body.slice(last + 1));
  }
  const mark = points > 0 ? '.' : ',';
  if (points + commas > 1) return thousands(body, mark);
  const [before = '', after = ''] = body.split(mark);
  const asDecimal = decimal(before, after);
  const asThousands = thousands(body, mark);
  if (decimalMark !== undefined) {
    const isOther = mark !== (decimalMark === 'point' ? '.' : ',');
    return isOther && asThousands.length > 0 ? asThousands : asDecimal;
  }
  return mark === ',' ? [...asThousands, ...asDecimal] : asDecimal;
}
