import { describe, expect, it } from 'vitest';
import { finite } from '../../src/measurement/finite.ts';

describe('finite', () => {
  it.each([0, -1.5, Number.MAX_VALUE])('hands on %d', (value) => {
    expect(finite(value, 'grams')).toEqual({ ok: true, value });
  });
  it.each([Number.NaN, Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY])('refuses %d', (value) => {
    expect(finite(value, 'grams')).toEqual({
      ok: false,
      error: {
        code: 'result-not-finite',
        argument: 'grams',
        advice: 'Check the powers of ten and the units.',
      },
    });
  });
});
