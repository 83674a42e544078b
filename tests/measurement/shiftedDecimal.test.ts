import { describe, expect, it } from 'vitest';
import { shiftedDecimal } from '../../src/measurement/shiftedDecimal.ts';

describe('shiftedDecimal', () => {
  it.each([
    ['12', 0, '12'],
    ['12', 3, '12000'],
    ['12', -1, '1.2'],
    ['12', -2, '0.12'],
    ['12', -4, '0.0012'],
    ['0012', 0, '12'],
    ['0012', -3, '0.012'],
    ['1200', -2, '12.00'],
    ['0', 0, '0'],
    ['000', 0, '0'],
    ['000', 5, '0'],
    ['000', -2, '0.00'],
    ['7', 25, `7${'0'.repeat(25)}`],
    ['7', 26, '7e26'],
    ['7', -25, `0.${'0'.repeat(24)}7`],
    ['7', -26, '7e-26'],
    ['007', -30, '7e-30'],
  ])('writes the digits %s with their last place at 10^%d as %s', (digits, lastPlace, decimal) => {
    expect(shiftedDecimal({ digits, lastPlace, negative: false })).toBe(decimal);
    expect(shiftedDecimal({ digits, lastPlace, negative: true })).toBe(/[1-9]/.test(digits) ? `-${decimal}` : decimal);
  });
});
