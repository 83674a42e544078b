import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { errorText, shortErrorText } from '../../src/errors/errorText.ts';
import { quoted } from '../../src/errors/quoted.ts';
import { readNumber } from '../../src/measurement/readNumber.ts';
import { significantFigures } from '../../src/measurement/significantFigures.ts';
import { cases } from '../depth.ts';

describe('readNumber', () => {
  it.each([
    { typed: 0.5, value: 0.5, figures: 1, lastPlace: -1 },
    { typed: '0.50', value: 0.5, figures: 2, lastPlace: -2 },
    { typed: ' 7.3 ', value: 7.3, figures: 2, lastPlace: -1 },
    { typed: '\u200b7.3', value: 7.3, figures: 2, lastPlace: -1 },
    { typed: '7.3\u200b', value: 7.3, figures: 2, lastPlace: -1 },
    { typed: '7.3 \u2060 ', value: 7.3, figures: 2, lastPlace: -1 },
    { typed: '1.5e-3', value: 0.0015, figures: 2, lastPlace: -4 },
    { typed: '5.55e+4', value: 55500, figures: 3, lastPlace: 2 },
    { typed: '1.5E-3', value: 0.0015, figures: 2, lastPlace: -4 },
    { typed: '2.05 × 10^8', value: 2.05e8, figures: 3, lastPlace: 6 },
    { typed: '2.05x10^8', value: 2.05e8, figures: 3, lastPlace: 6 },
    { typed: '2.05*10^8', value: 2.05e8, figures: 3, lastPlace: 6 },
    { typed: '2.05 · 10⁻⁸', value: 2.05e-8, figures: 3, lastPlace: -10 },
    { typed: '6.00x10-2', value: 0.06, figures: 3, lastPlace: -4 },
    { typed: '6.00×10⁻²', value: 0.06, figures: 3, lastPlace: -4 },
    { typed: '6.00 e-2', value: 0.06, figures: 3, lastPlace: -4 },
    { typed: '6,00 x 10−2', value: 0.06, figures: 3, lastPlace: -4 },
    { typed: '1,234.', value: 1234, figures: 4, lastPlace: 0 },
    { typed: '10^-3', value: 0.001, figures: 1, lastPlace: -3 },
    { typed: '−3.0', value: -3, figures: 2, lastPlace: -1 },
    { typed: '+3', value: 3, figures: 1, lastPlace: 0 },
    { typed: '1 234.5', value: 1234.5, figures: 5, lastPlace: -1 },
    { typed: '1\u202f234\u202f567', value: 1234567, figures: 7, lastPlace: 0 },
    { typed: '1\u00a0234,5', value: 1234.5, figures: 5, lastPlace: -1 },
    { typed: "1'234.5", value: 1234.5, figures: 5, lastPlace: -1 },
    { typed: '0.123 456', value: 0.123456, figures: 6, lastPlace: -6 },
    { typed: '0,5', value: 0.5, figures: 1, lastPlace: -1 },
    { typed: '0,123', value: 0.123, figures: 3, lastPlace: -3 },
    { typed: '1234,567', value: 1234.567, figures: 7, lastPlace: -3 },
    { typed: '1,23', value: 1.23, figures: 3, lastPlace: -2 },
    { typed: '1,234,567', value: 1234567, figures: 7, lastPlace: 0 },
    { typed: '1.234.567', value: 1234567, figures: 7, lastPlace: 0 },
    { typed: '1,234.5', value: 1234.5, figures: 5, lastPlace: -1 },
    { typed: '1.234,5', value: 1234.5, figures: 5, lastPlace: -1 },
    { typed: '1.234', value: 1.234, figures: 4, lastPlace: -3 },
    { typed: '.5', value: 0.5, figures: 1, lastPlace: -1 },
    { typed: '1270.', value: 1270, figures: 4, lastPlace: 0 },
  ])('reads $typed as $value', ({ typed, value, figures, lastPlace }) => {
    expect(readNumber(typed, 'value')).toMatchObject({
      ok: true,
      value: { value, figures, lastPlace, isText: typeof typed === 'string' },
    });
  });

  it.each([
    true,
    false,
    new Date(0),
    '',
    '   ',
    undefined,
    null,
    Number.NaN,
    Number.POSITIVE_INFINITY,
    'abc',
    '1 2',
    '1.2.3',
    '1,2,3',
    '12,34.5',
    '0,123.4',
    '1e5 5',
    '5e',
    '½',
    '١٢',
    '１２',
    '0x10',
    '1_000',
    '#N/A',
    '2 × 3',
    '5²',
    '--3',
    '1e1.5',
    'Infinity',
    '9'.repeat(200),
  ])('refuses %s, which is no number', (typed) => {
    expect(readNumber(typed, 'value')).toEqual({
      ok: false,
      error: {
        code: 'number-expected',
        argument: 'value',
        received: quoted(typed),
        advice: 'Type digits with at most one decimal mark, such as 0.25.',
      },
    });
  });
  it('reads text of 60 characters and no longer', () => {
    const digits = `0.${'3'.repeat(58)}`;
    expect(readNumber(digits, 'value')).toMatchObject({ ok: true, value: { figures: 58, lastPlace: -58 } });
    expect(readNumber(`${digits}3`, 'value')).toMatchObject({ ok: false });
  });
  it.each([
    ['1270', 4, 1],
    ['1200', 4, 2],
    ['10200', 5, 2],
    ['1270.', 4, 0],
    ['1200.0', 5, 0],
    ['1.20e3', 3, 0],
    ['120 × 10^3', 3, 0],
    ['1 000', 4, 3],
    ['0', 1, 0],
    ['000', 1, 0],
    ['0.00', 1, 0],
    ['007', 1, 0],
    ['0.0750', 3, 0],
    ['406', 3, 0],
  ])('counts %s as %d figures, of which %d zeros at the end may not count', (typed, figures, ambiguousZeros) => {
    expect(readNumber(typed, 'value')).toMatchObject({ ok: true, value: { figures, ambiguousZeros } });
  });
  it.each([
    [1200, '1200', 4, 2, 0],
    [0.1, '0.1', 1, 0, -1],
    [-2.5, '-2.5', 2, 0, -1],
    [1.234, '1.234', 4, 0, -3],
    [1e21, '1000000000000000000000', 1, 0, 21],
    [1.5e-7, '0.00000015', 2, 0, -8],
    [Number.MIN_VALUE, '5e-324', 1, 0, -324],
    [0, '0', 1, 0, 0],
  ])(
    'reads a cell that holds the number %d by its shortest decimal, whatever the marks of the sheet',
    (cell, decimal, figures, ambiguousZeros, lastPlace) => {
      for (const decimalMark of [undefined, 'point', 'comma'] as const) {
        expect(readNumber(cell, 'value', { decimalMark })).toEqual({
          ok: true,
          value: { value: cell, decimal, figures, lastPlace, ambiguousZeros, isText: false, typed: String(cell) },
        });
      }
    },
  );
  it.each(['1e400', '-1e400', '1e-400', '1 × 10^99999'])('refuses %s, which no number can hold', (typed) => {
    const read = readNumber(typed, 'value');
    expect(!read.ok && errorText(read.error)).toBe(
      `“${typed}” can’t be used for the value: it must be between 10^-300 and 10^300. Check its power of ten.`,
    );
    expect(!read.ok && shortErrorText(read.error)).toBe('⚠ value: power of ten?');
  });
  it('reads zero with any power of ten', () => {
    expect(readNumber('0e-400', 'value')).toMatchObject({ ok: true, value: { value: 0 } });
    expect(readNumber('0.000 000', 'value')).toMatchObject({ ok: true, value: { value: 0, decimal: '0.000000' } });
    expect(readNumber('-0.000', 'value')).toMatchObject({
      ok: true,
      value: { value: 0, decimal: '0.000', lastPlace: -3 },
    });
  });

  it.each(['1,234', '86,002', '-1,234', '1,234e3', ' 12,345 '])('shows both readings of %s', (typed) => {
    const [whole = '', part = ''] = typed
      .trim()
      .replace(/^-|e3$/g, '')
      .split(',');
    const both = `${whole}${part} or ${whole}.${part}`;
    expect(readNumber(typed, 'measured')).toEqual({
      ok: false,
      error: {
        code: 'number-two-readings',
        argument: 'measured',
        expected: both,
        received: `“${typed}”`,
        advice: 'Type the one you mean.',
        brief: both,
      },
    });
  });
  it('takes a comma that can be read two ways where both give the same', () => {
    expect(readNumber('86,002', 'n', { sameEitherWay: significantFigures })).toMatchObject({ ok: true });
    expect(readNumber('86,000', 'n', { sameEitherWay: significantFigures })).toMatchObject({ ok: false });
  });

  it.each([
    { typed: '1,234', point: 1234, comma: 1.234 },
    { typed: '1.234', point: 1.234, comma: 1234 },
    { typed: '1,5', point: 1.5, comma: 1.5 },
    { typed: '0,500', point: 0.5, comma: 0.5 },
    { typed: '0.300', point: 0.3, comma: 0.3 },
    { typed: '1.234,5', point: 1234.5, comma: 1234.5 },
    { typed: '1,234.5', point: 1234.5, comma: 1234.5 },
    { typed: '1234.567', point: 1234.567, comma: 1234.567 },
    { typed: '12,345', point: 12345, comma: 12.345 },
  ])('reads $typed by the decimal mark of the settings and never refuses it', ({ typed, point, comma }) => {
    expect(readNumber(typed, 'entry', { decimalMark: 'point' })).toMatchObject({ ok: true, value: { value: point } });
    expect(readNumber(typed, 'entry', { decimalMark: 'comma' })).toMatchObject({ ok: true, value: { value: comma } });
  });

  it('reads back every number as a sheet would write it', () => {
    fc.assert(
      fc.property(fc.double({ noNaN: true, noDefaultInfinity: true }), (value) => {
        const read = readNumber(String(value), 'value');
        expect(read.ok && read.value.value).toBe(value === 0 ? 0 : value);
        expect(readNumber(value, 'value')).toMatchObject({ ok: true, value: { isText: false } });
      }),
      { numRuns: cases({ short: 400, deep: 10_000 }) },
    );
  });
  it('counts the figures that were typed', () => {
    const digits = fc.integer({ min: 1, max: 999_999 }).map(String);
    fc.assert(
      fc.property(digits, digits, fc.integer({ min: -20, max: 20 }), (whole, part, power) => {
        const read = readNumber(`${whole}.${part} × 10^${power}`, 'value');
        expect(read).toMatchObject({
          ok: true,
          value: { figures: whole.length + part.length, lastPlace: power - part.length, ambiguousZeros: 0 },
        });
      }),
      { numRuns: cases({ short: 200, deep: 5000 }) },
    );
  });
  it('gives a result for any text, finite where it gives a number', () => {
    fc.assert(
      fc.property(fc.string({ unit: 'binary', maxLength: 80 }), (text) => {
        const read = readNumber(text, 'value');
        if (read.ok) expect(Number.isFinite(read.value.value)).toBe(true);
        else expect(read.error.received?.length).toBeGreaterThan(0);
      }),
      { numRuns: cases({ short: 400, deep: 10_000 }) },
    );
  });
});

describe('significantFigures', () => {
  it.each([
    { typed: '0.0750', figures: 3, source: 'OpenStax Chemistry 2e, section 1.5' },
    { typed: '1.40 × 10^5', figures: 3, source: 'OpenStax Chemistry 2e, section 1.5' },
    { typed: '1270.', figures: 4, source: 'ASTM E29-02, 3.1' },
    { typed: '1270', figures: 3, source: 'OpenStax Chemistry 2e, section 1.5: zeros that may not count' },
    { typed: '100.0', figures: 4, source: 'OpenStax Chemistry 2e, section 1.5' },
    { typed: '0.00387', figures: 3, source: 'OpenStax Chemistry 2e, section 1.5' },
    { typed: '406', figures: 3, source: 'OpenStax Chemistry 2e, section 1.5' },
    { typed: '0', figures: 1, source: 'common practice, no source' },
  ])('gives $figures for $typed [$source]', ({ typed, figures }) => {
    const read = readNumber(typed, 'number');
    expect(read.ok && significantFigures(read.value)).toBe(figures);
  });
});
