import { expect, it } from 'vitest';
import { decimalText } from '../../src/lab/judging/decimalText.ts';

it.each([
  [0, 'point', '0'],
  [7.140138, 'point', '7.14014'],
  [7.140138, 'comma', '7,14014'],
  [1234567, 'point', '1234570'],
  // From here on a plain number would be written with a power of ten.
  [0.000001, 'point', '0.000001'],
  [0.00000025, 'comma', '0,000000250'],
  [-0.00000025, 'point', '-0.000000250'],
] as const)('%d in a class with a decimal %s is written %s', (value, mark, text) => {
  expect(decimalText(value, mark)).toBe(text);
});
