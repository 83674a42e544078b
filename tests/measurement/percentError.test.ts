import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { errorText } from '../../src/errors/errorText.ts';
import { percentDifference } from '../../src/measurement/percentDifference.ts';
import { percentError } from '../../src/measurement/percentError.ts';
import { cases } from '../depth.ts';

const number = fc.double({ noNaN: true, noDefaultInfinity: true });

describe('percentError', () => {
  it('keeps the sign only where it is asked', () => {
    expect(percentError({ measured: 2.5, accepted: 2.7 })).toMatchObject({
      ok: true,
      value: expect.closeTo(7.407407, 6),
    });
    expect(percentError({ measured: 2.5, accepted: 2.7, signed: true })).toMatchObject({
      value: expect.closeTo(-7.407407, 6),
    });
    expect(percentError({ measured: -1.1, accepted: -1, signed: true })).toMatchObject({
      value: expect.closeTo(-10, 10),
    });
  });
  it.each([
    [0.9, 1, -10],
    [1.1, 1, 10],
    [-0.9, -1, 10],
    [0, 4, -100],
    [5, 4, 25],
    [4, 4, 0],
  ])('gives for %d measured and %d accepted %d %%, below the accepted value negative', (measured, accepted, gives) => {
    const signed = percentError({ measured, accepted, signed: true });
    expect(signed.ok && signed.value).toBeCloseTo(gives, 10);
    const unsigned = percentError({ measured, accepted });
    expect(unsigned.ok && unsigned.value).toBeCloseTo(Math.abs(gives), 10);
  });
  it('refuses an accepted value of 0', () => {
    const refused = percentError({ measured: 1, accepted: 0 });
    expect(!refused.ok && errorText(refused.error)).toBe(
      'With an accepted value of 0 there is no percent error. Compare the plain difference instead.',
    );
  });
  it('refuses a share beyond every number', () => {
    expect(percentError({ measured: 1e308, accepted: 1e-300 })).toMatchObject({
      ok: false,
      error: { code: 'result-not-finite', argument: 'measured' },
    });
  });
  it('is never negative unsigned, and never other than finite', () => {
    fc.assert(
      fc.property(number, number, (measured, accepted) => {
        const result = percentError({ measured, accepted });
        if (result.ok) expect(result.value >= 0 && Number.isFinite(result.value)).toBe(true);
        else expect(['accepted-zero', 'result-not-finite']).toContain(result.error.code);
      }),
      { numRuns: cases({ short: 200, deep: 5000 }) },
    );
  });
});

describe('percentDifference', () => {
  it('compares with the mean, whichever comes first [definition: common practice, no source]', () => {
    expect(percentDifference({ first: 0.19, second: 0.21 })).toMatchObject({ ok: true, value: expect.closeTo(10, 10) });
    expect(percentDifference({ first: 0.21, second: 0.19 })).toMatchObject({ ok: true, value: expect.closeTo(10, 10) });
  });
  it.each([
    [-0.19, -0.21, 10],
    [3, 0, 200],
    [3, -1, 400],
    [2, 2, 0],
    // Their plain sum would be beyond every number.
    [1.5e308, 1.5e308, 0],
  ])('of %d and %d is %d %%', (first, second, gives) => {
    const found = percentDifference({ first, second });
    expect(found.ok && found.value).toBeCloseTo(gives, 10);
  });
  it.each([
    [1, -1],
    [0, 0],
    [-2.5, 2.5],
  ])('refuses %d and %d, whose mean is 0', (first, second) => {
    const refused = percentDifference({ first, second });
    expect(!refused.ok && errorText(refused.error)).toBe(
      `The mean of ${first} and ${second} is 0, so there is no percent difference. Compare the plain difference instead.`,
    );
  });
  it('refuses a share beyond every number', () => {
    expect(percentDifference({ first: 1.5e308, second: -1e308 })).toMatchObject({
      ok: false,
      error: { code: 'result-not-finite', argument: 'first' },
    });
  });
  it('is finite or an error for any two numbers', () => {
    fc.assert(
      fc.property(number, number, (first, second) => {
        const result = percentDifference({ first, second });
        if (result.ok) expect(result.value >= 0 && Number.isFinite(result.value)).toBe(true);
      }),
      { numRuns: cases({ short: 200, deep: 5000 }) },
    );
  });
});
