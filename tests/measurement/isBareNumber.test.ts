import { describe, expect, it } from 'vitest';
import { isBareNumber } from '../../src/measurement/isBareNumber.ts';

describe('isBareNumber', () => {
  it.each(['200', ' 0,5 ', '1 234.5', '5e-2', '5.0 × 10^-2', '7.3\u200b'])('finds no unit behind %s', (text) => {
    expect(isBareNumber(text)).toBe(true);
  });
  it.each(['200 mL', '0.2L', '94 %', '200 cm3', 'some', ''])('finds more than a number in “%s”, or none', (text) => {
    expect(isBareNumber(text)).toBe(false);
  });
});
