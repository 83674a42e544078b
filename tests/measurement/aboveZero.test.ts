import { describe, expect, it } from 'vitest';
import { belowZero, notAboveZero } from '../../src/measurement/aboveZero.ts';

const advice = 'Check its sign, and the cell it comes from.';
const mass = (value: number) => ({ value, argument: 'grams', unit: 'g' });
const ratio = (value: number) => ({ value, argument: 'ratio', unit: '' });

describe('notAboveZero', () => {
  it.each([
    [0, '0 g'],
    [-2.5, '-2.5 g'],
    [Number.NaN, 'NaN g'],
    [Number.POSITIVE_INFINITY, 'Infinity g'],
  ])('refuses a mass of %d g', (value, received) => {
    expect(notAboveZero(mass(value))).toEqual({
      code: 'not-above-zero',
      argument: 'grams',
      expected: 'above 0 g',
      received,
      advice,
    });
  });
  it.each([Number.MIN_VALUE, 1, Number.MAX_VALUE])('takes %d', (value) => {
    expect(notAboveZero(mass(value))).toBeUndefined();
  });
  it('asks for a plain number where there is no unit', () => {
    expect(notAboveZero(ratio(0))).toMatchObject({ expected: 'above 0', received: '0' });
  });
  it('names the first that is wrong', () => {
    expect(notAboveZero(mass(1), ratio(-1), mass(-3))).toMatchObject({ argument: 'ratio', received: '-1' });
    expect(notAboveZero()).toBeUndefined();
  });
});

describe('belowZero', () => {
  it.each([
    [-Number.MIN_VALUE, '-5e-324 g'],
    [-2.5, '-2.5 g'],
    [Number.NaN, 'NaN g'],
    [Number.POSITIVE_INFINITY, 'Infinity g'],
  ])('refuses a mass of %d g', (value, received) => {
    expect(belowZero(mass(value))).toEqual({
      code: 'below-zero',
      argument: 'grams',
      expected: '0 g or more',
      received,
      advice,
    });
  });
  it.each([0, 1, Number.MAX_VALUE])('takes %d', (value) => {
    expect(belowZero(mass(value))).toBeUndefined();
  });
  it('asks for a plain number where there is no unit', () => {
    expect(belowZero(ratio(-1))).toMatchObject({ expected: '0 or more', received: '-1' });
  });
  it('names the first that is wrong', () => {
    expect(belowZero(mass(0), ratio(-1), mass(-3))).toMatchObject({ argument: 'ratio', received: '-1' });
  });
});
