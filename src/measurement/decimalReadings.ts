/** Whole digits and digits after the mark; `fraction` is undefined where no decimal mark was typed. */
export interface DecimalReading {
  readonly whole: string;
  readonly fraction: string | undefined;
}

/** The text without its grouping mark: digits in threes, the first group not beginning with 0; undefined where they are not. */
const ungrouped = (text: string, mark: string): string | undefined => {
  if (!text.includes(mark)) return text;
  const groups = text.split(mark);
  return /^[1-9][0-9]{0,2}( [0-9]{3})+$/.test(groups.join(' ')) ? groups.join('') : undefined;
};

const reading = (whole: string | undefined, fraction?: string): readonly DecimalReading[] =>
  whole === undefined ? [] : [{ whole, fraction }];

/**
 * What the marks of a number can mean: no reading, one, or two (one comma and three digits after it).
 *
 * @param body - Digits, points, commas, and a space wherever a space or an apostrophe stood between digits; one digit at
 * least.
 * @param decimalMark - The mark that the sheet's settings name; with it there are never two readings.
 */
export function decimalReadings(body: string, decimalMark?: 'point' | 'comma'): readonly DecimalReading[] {
  const points = body.split('.').length - 1;
  const commas = body.split(',').length - 1;
  if (body.includes(' ')) {
    // Spaces group the digits in threes, before the mark and perhaps behind it; one mark at most is left for decimals.
    if (points + commas > 1) return [];
    const at = body.search(/[.,]/);
    if (at < 0) return reading(ungrouped(body, ' '));
    const behind = body.slice(at + 1);
    if (behind.includes(' ') && !/^([0-9]{3} )+[0-9]{1,3}$/.test(behind)) return [];
    return reading(ungrouped(body.slice(0, at), ' '), behind.replace(/ /g, ''));
  }
  if (points + commas === 0) return reading(body);
  if (points > 0 && commas > 0) {
    // The later mark is the decimal one, and stands once; the other groups.
    const last = Math.max(body.lastIndexOf('.'), body.lastIndexOf(','));
    const group = body.charAt(last) === '.' ? ',' : '.';
    return reading(ungrouped(body.slice(0, last), group), body.slice(last + 1));
  }
  const mark = points > 0 ? '.' : ',';
  const asThousands = reading(ungrouped(body, mark));
  if (points + commas > 1) return asThousands;
  const at = body.indexOf(mark);
  const asDecimal = reading(body.slice(0, at), body.slice(at + 1));
  if (decimalMark !== undefined) {
    const isOther = mark !== (decimalMark === 'point' ? '.' : ',');
    return isOther && asThousands.length > 0 ? asThousands : asDecimal;
  }
  return mark === ',' ? [...asThousands, ...asDecimal] : asDecimal;
}

/**
 * The reading of a lone mark that the sheet's settings do not take: 7.140 is 7140 where the mark is a comma, and this
 * gives 7.140. Undefined where the mark can be read in one way only.
 */
export function otherReading(body: string, decimalMark: 'point' | 'comma'): DecimalReading | undefined {
  if (!/^[1-9][0-9]{0,2}[.,][0-9]{3}$/.test(body)) return undefined;
  const [taken] = decimalReadings(body, decimalMark);
  const [whole = '', fraction = ''] = body.split(/[.,]/);
  return taken?.fraction === undefined ? { whole, fraction } : { whole: whole + fraction, fraction: undefined };
}
