import Big from 'big.js';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { errorText } from '../../src/errors/errorText.ts';
import { readNumber } from '../../src/measurement/readNumber.ts';
import { roundToFigures } from '../../src/measurement/roundToFigures.ts';
import { significantFigures } from '../../src/measurement/significantFigures.ts';
import { cases } from '../depth.ts';

const rounded = (typed: string | number, figures: number, ties?: 'even' | 'up') => {
  const read = readNumber(typed, 'value', { decimalMark: 'point' });
  if (!read.ok) throw new Error(`${typed} was refused`);
  const result = roundToFigures(read.value, { figures, ties });
  if (!result.ok) throw new Error(`${typed} was not rounded`);
  return result.value;
};
const openStax = 'OpenStax Chemistry 2e, section 1.5';
const annexB = 'ISO 80000-1:2009 Annex B, from memory';
const databook = 'CICC number-rounding data book';

describe('roundToFigures', () => {
  it.each([
    { typed: '31.57', figures: 2, even: '32', up: '32', source: openStax },
    { typed: '8.1649', figures: 3, even: '8.16', up: '8.16', source: openStax },
    { typed: '0.051065', figures: 4, even: '0.05106', up: '0.05107', source: openStax },
    { typed: '0.90275', figures: 4, even: '0.9028', up: '0.9028', source: openStax },
    { typed: '0.424', figures: 2, even: '0.42', up: '0.42', source: openStax },
    { typed: '0.0038661', figures: 3, even: '0.00387', up: '0.00387', source: openStax },
    { typed: '421.25', figures: 4, even: '421.2', up: '421.3', source: openStax },
    { typed: '28,683.5', figures: 5, even: '28684', up: '28684', source: openStax },
    { typed: '12.25', figures: 3, even: '12.2', up: '12.3', source: annexB },
    { typed: '12.35', figures: 3, even: '12.4', up: '12.4', source: annexB },
    { typed: '12.223', figures: 3, even: '12.2', up: '12.2', source: annexB },
    { typed: '12.251', figures: 3, even: '12.3', up: '12.3', source: annexB },
    { typed: '12.275', figures: 3, even: '12.3', up: '12.3', source: annexB },
    { typed: '123.454', figures: 5, even: '123.45', up: '123.45', source: databook },
    { typed: '123.455', figures: 5, even: '123.46', up: '123.46', source: databook },
  ])('rounds $typed to $figures figures: $even, or $up with ties up [$source]', ({ typed, figures, even, up }) => {
    expect(rounded(typed, figures)).toBe(even);
    expect(rounded(typed, figures, 'up')).toBe(up);
  });
  it.each([
    ['2.675', 3, '2.68'],
    [2.675, 3, '2.68'],
    [0.125, 2, '0.12'],
    [1.005, 3, '1.00'],
    ['1.015', 3, '1.02'],
    ['-2.665', 3, '-2.66'],
  ] as const)('breaks the tie of %s on the decimal that was typed', (typed, figures, gives) => {
    expect(rounded(typed, figures)).toBe(gives);
  });
  it.each([
    [1250, 2, '1.2 × 10^3'],
    ['120', 3, '1.20 × 10^2'],
    ['9.996', 3, '10.0'],
    ['99.96', 3, '1.00 × 10^2'],
    [123456, 3, '1.23 × 10^5'],
    ['1e-12', 3, '1.00 × 10^-12'],
    ['0.00001', 2, '0.000010'],
    ['6.02214076e23', 4, '6.022 × 10^23'],
    [0, 3, '0'],
    ['105', 3, '105'],
    ['-1250', 2, '-1.2 × 10^3'],
    ['0.000', 3, '0'],
    ['0.0000001', 2, '0.00000010'],
    ['0.00000001', 2, '1.0 × 10^-8'],
    ['0.000000999', 2, '0.0000010'],
    ['5', 1, '5'],
    ['50', 1, '5 × 10^1'],
    ['12', 2, '12'],
    ['12', 3, '12.0'],
    ['1.5', 30, `1.5${'0'.repeat(28)}`],
  ] as const)('writes %s to %d figures as %s, where nobody can mistake a zero', (typed, figures, gives) => {
    expect(rounded(typed, figures)).toBe(gives);
  });
  it.each([0, -1, 1.5, 31, Number.NaN])('refuses %s figures', (figures) => {
    const read = readNumber('1.5', 'value');
    const refused = read.ok ? roundToFigures(read.value, { figures }) : read;
    expect(!refused.ok && errorText(refused.error)).toBe(
      `${figures} can’t be the number of significant figures. Type a whole number from 1 to 30, such as 3.`,
    );
  });

  const number = fc
    .double({ noNaN: true, noDefaultInfinity: true, min: -1e30, max: 1e30 })
    .filter((value) => value !== 0 && Math.abs(value) > 1e-30);
  const figures = fc.integer({ min: 1, max: 15 });
  it('gives exactly the figures asked, within half a unit of the last', () => {
    fc.assert(
      fc.property(number, figures, (value, asked) => {
        const text = rounded(value, asked);
        const again = readNumber(text, 'again');
        if (!again.ok) throw new Error(`${text} cannot be read again`);
        expect(significantFigures(again.value)).toBe(asked);
        const away = new Big(again.value.decimal).minus(String(value)).abs();
        expect(away.times(2).lte(`1e${again.value.lastPlace}`)).toBe(true);
      }),
      { numRuns: cases({ short: 400, deep: 10_000 }) },
    );
  });
  // Few different digits, so that ties, nines to carry over and zeros at either end are frequent.
  const written = fc
    .tuple(
      fc.constantFrom('', '-'),
      fc.array(fc.constantFrom('0', '4', '5', '9', '2'), { minLength: 1, maxLength: 12 }),
      fc.array(fc.constantFrom('0', '5', '9', '1'), { maxLength: 12 }),
      fc.integer({ min: -40, max: 40 }),
    )
    .map(
      ([sign, whole, part, power]) => `${sign}${whole.join('')}${part.length > 0 ? '.' : ''}${part.join('')}e${power}`,
    );
  it('gives the decimal that big.js gives', () => {
    fc.assert(
      fc.property(written, fc.integer({ min: 1, max: 30 }), fc.constantFrom('even', 'up'), (typed, asked, ties) => {
        const exact = new Big(typed).prec(asked, ties === 'up' ? Big.roundHalfUp : Big.roundHalfEven);
        const text = rounded(typed, asked, ties);
        expect(new Big(text.replace(' × 10^', 'e')).eq(exact)).toBe(true);
        if (exact.eq(0)) expect(text).toBe('0');
        else expect(text.replace(/ .*|\D/g, '').replace(/^0+/, '')).toHaveLength(asked);
      }),
      { numRuns: cases({ short: 600, deep: 50_000 }) },
    );
  });
  it('changes nothing when asked twice', () => {
    fc.assert(
      fc.property(number, figures, (value, asked) => {
        expect(rounded(rounded(value, asked), asked)).toBe(rounded(value, asked));
      }),
      { numRuns: cases({ short: 200, deep: 5000 }) },
    );
  });
});
