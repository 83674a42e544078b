import { describe, expect, it } from 'vitest';
import { scanNumber } from '../../src/measurement/scanNumber.ts';

const scanned = (text: string) => {
  const found = scanNumber(text);
  return found && { ...found, rest: text.slice(found.end) };
};

describe('scanNumber', () => {
  it.each([
    ['0.50', '0.50', ''],
    ['  7 mL', '7', ' mL'],
    ['7mL', '7', 'mL'],
    ['\u200b7', '7', ''],
    ['\u20607', '7', ''],
    ['\ufeff7', '7', ''],
    ['1 234', '1 234', ''],
    ['1  234', '1 234', ''],
    ['1\u202f234', '1 234', ''],
    ['1\u200b234', '1 234', ''],
    ["1'234'567", '1 234 567', ''],
    ['1’234', '1 234', ''],
    ["1' 234", '1', "' 234"],
    ["5' mL", '5', "' mL"],
    ['1.234,5', '1.234,5', ''],
    ['.5', '.5', ''],
    ['5.', '5.', ''],
    ['10', '10', ''],
    ['10 mL', '10', ' mL'],
    ['5 x', '5', ' x'],
    ['5 x10 mL', '5', ' x10 mL'],
    ['5 x 20', '5', ' x 20'],
    ['5 × 1', '5', ' × 1'],
    ['5e', '5', 'e'],
    ['5 e3', '5', ' e3'],
    ['5e × 10^3', '5', 'e × 10^3'],
    ['5 ^3', '5', ' ^3'],
    ['5 × ^3', '5', ' × ^3'],
    ['2 × 100^3', '2', ' × 100^3'],
    ['2^3', '2', '^3'],
    ['2³', '2', '³'],
    ['10^', '10', '^'],
    ['10^x', '10', '^x'],
    ['10⁻', '10', '⁻'],
    ['10⁻^5', '10', '⁻^5'],
    ['10-³', '10', '-³'],
    ['10^⁻3', '10', '^⁻3'],
    ['1e000005', '1', 'e000005'],
    ['10⁰⁰⁰⁰⁰⁵', '10', '⁰⁰⁰⁰⁰⁵'],
    ['1e-', '1', 'e-'],
    ['2x103', '2', 'x103'],
    ['5 × 10 - 3', '5', ' × 10 - 3'],
    ['5 × 10+3', '5', ' × 10+3'],
    ['2 × 10^(3', '2', ' × 10^(3'],
    ['5 e', '5', ' e'],
    ['5 e-mail', '5', ' e-mail'],
    ['7.14.', '7.14', '.'],
    ['7,14.', '7,14', '.'],
    ['7.14, rounded', '7.14', ', rounded'],
    ['1,234.', '1,234.', ''],
  ])('reads of %j the digits %s, no power of ten, and leaves %j', (text, body, rest) => {
    expect(scanned(text)).toMatchObject({ negative: false, body, exponent: 0, hasExponent: false, rest });
  });

  it.each([
    ['1.5e3', '1.5', 3],
    ['1.5E3', '1.5', 3],
    ['1.5e+3', '1.5', 3],
    ['1.5e＋3', '1.5', 3],
    ['1.5e-3', '1.5', -3],
    ['1.5e−3', '1.5', -3],
    ['1e00005', '1', 5],
    ['1e12345', '1', 12345],
    ['2 × 10^3', '2', 3],
    ['2×10^3', '2', 3],
    ['2 × 10 ^ 3', '2', 3],
    ['2 × 10^-12', '2', -12],
    ['2x10^3', '2', 3],
    ['2X10^3', '2', 3],
    ['2*10^3', '2', 3],
    ['2·10^3', '2', 3],
    ['2⋅10^3', '2', 3],
    ['2∙10^3', '2', 3],
    ['2✕10^3', '2', 3],
    ['2✖10^3', '2', 3],
    ['2 × 10³', '2', 3],
    ['2 × 10⁺³', '2', 3],
    ['2 × 10⁻¹²', '2', -12],
    ['2 × 10⁴⁵⁶', '2', 456],
    ['2 × 10⁷⁸⁹', '2', 789],
    ['2 × 10⁰⁰⁰⁰³', '2', 3],
    ['2x10-3', '2', -3],
    ['2 x 10−3', '2', -3],
    ['2·10–12', '2', -12],
    ['2 × 10^(-3)', '2', -3],
    ['2 × 10^{−3}', '2', -3],
    ['2 × 10^(3)', '2', 3],
    ['2 e-3', '2', -3],
    ['2  E+3', '2', 3],
    ['2\u202fe−3', '2', -3],
    ['10^3', '1', 3],
    ['10 ^ 3', '1', 3],
    ['10^-3', '1', -3],
    ['10⁻³', '1', -3],
    ['10e3', '10', 3],
    ['10 × 10^3', '10', 3],
  ])('reads of %s the digits %s times ten to the %d', (text, body, exponent) => {
    expect(scanned(text)).toEqual({
      negative: false,
      body,
      exponent,
      hasExponent: true,
      end: text.length,
      rest: '',
    });
    expect(scanned(`${text} mL`)).toMatchObject({ exponent, hasExponent: true, rest: ' mL' });
  });

  it.each(['-', '−', '–', '‐', '‑', '﹣', '－'])(
    'takes %s for a minus sign, before the number and its exponent',
    (sign) => {
      expect(scanned(`${sign}3`)).toMatchObject({ negative: true, body: '3', rest: '' });
      expect(scanned(` ${sign} 3`)).toMatchObject({ negative: true, body: '3', rest: '' });
      expect(scanned(`${sign}10^${sign}3`)).toMatchObject({ negative: true, body: '1', exponent: -3, rest: '' });
    },
  );
  it.each(['+', '＋'])('passes over the plus sign %s', (sign) => {
    expect(scanned(`${sign}3`)).toMatchObject({ negative: false, body: '3', rest: '' });
    expect(scanned(`${sign} 3`)).toMatchObject({ negative: false, body: '3', rest: '' });
  });

  it.each(['', ' ', 'mL', '-', '+', '--3', '+-3', '-+3', '.', ',', '. 5', "'5", 'e5', '× 10^3', '^3', '³', '½', '١'])(
    'finds no number at the start of %j',
    (text) => {
      expect(scanNumber(text)).toBeUndefined();
    },
  );
});
