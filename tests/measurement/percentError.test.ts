import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { percentDifference } from '../../src/measurement/percentDifference.ts';
import { percentError } from '../../src/measurement/percentError.ts';

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
  it('refuses an accepted value of 0', () => {
    expect(percentError({ measured: 1, accepted: 0 })).toMatchObject({ ok: false, error: { code: 'accepted-zero' } });
  });
  it('is never negative unsigned, and never other than finite', () => {
    fc.assert(
      fc.property(number, number, (measured, accepted) => {
        const result = percentError({ measured, accepted });
        if (result.ok) expect(result.value >= 0 && Number.isFinite(result.value)).toBe(true);
        else expect(['accepted-zero', 'result-not-finite']).toContain(result.error.code);
      }),
      { numRuns: 1000, seed: 7 },
    );
  });
});

describe('percentDifference', () => {
  it('compares with the mean, whichever comes first [definition: common practice, no source]', () => {
    expect(percentDifference({ first: 0.19, second: 0.21 })).toMatchObject({ ok: true, value: expect.closeTo(10, 10) });
    expect(percentDifference({ first: 0.21, second: 0.19 })).toMatchObject({ ok: true, value: expect.closeTo(10, 10) });
  });
  it('refuses two values whose mean is 0', () => {
    expect(percentDifference({ first: 1, second: -1 })).toMatchObject({ ok: false, error: { code: 'mean-zero' } });
    expect(percentDifference({ first: 0, second: 0 })).toMatchObject({ ok: false, error: { code: 'mean-zero' } });
  });
  it('is finite or an error for any two numbers', () => {
    fc.assert(
      fc.property(number, number, (first, second) => {
        const result = percentDifference({ first, second });
        if (result.ok) expect(result.value >= 0 && Number.isFinite(result.value)).toBe(true);
      }),
      { numRuns: 1000, seed: 8 },
    );
  });
});
