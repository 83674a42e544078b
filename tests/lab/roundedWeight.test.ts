import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { readFormula } from '../../src/chemistry/readFormula.ts';
import { molarMassSpan } from '../../src/lab/judging/molarMassSpan.ts';
import { roundedWeight } from '../../src/lab/judging/roundedWeight.ts';
import { schoolMolarMasses } from '../../src/lab/judging/schoolMolarMasses.ts';
import { leadingPlace, tenTo } from '../../src/lab/judging/span.ts';
import { cases } from '../depth.ts';

describe('roundedWeight', () => {
  it.each([
    // Left alone, or rounded to one or two decimals: 15.999, 16.00, 16.0.
    { weight: 15.999, decimals: 1, low: 15.999, high: 16 },
    { weight: 15.999, decimals: 3, low: 15.999, high: 15.999 },
    { weight: 39.0983, decimals: 2, low: 39.098, high: 39.1 },
    { weight: 39.0983, decimals: 0, low: 39, high: 39.1 },
    // A tie: 30.5 is 31 half up and 30 half to even.
    { weight: 30.5, decimals: 0, low: 30, high: 31 },
    { weight: 31.5, decimals: 0, low: 31.5, high: 32 },
    { weight: 2.675, decimals: 2, low: 2.675, high: 2.68 },
    { weight: 1.005, decimals: 2, low: 1, high: 1.01 },
    { weight: 127, decimals: 2, low: 127, high: 127 },
  ])('gives $low to $high for $weight at $decimals decimals or more', ({ weight, decimals, low, high }) => {
    expect(roundedWeight(weight, decimals)).toEqual({ low, high });
  });
  it('never moves by more than half a unit of the last decimal kept', () => {
    fc.assert(
      fc.property(fc.integer({ min: 10_000, max: 3_000_000 }), fc.integer({ min: 0, max: 4 }), (ten, decimals) => {
        const weight = ten / 10_000;
        const { low, high } = roundedWeight(weight, decimals);
        expect(low).toBeLessThanOrEqual(weight);
        expect(high).toBeGreaterThanOrEqual(weight);
        expect(Math.max(high - weight, weight - low)).toBeLessThanOrEqual(0.5 * 10 ** -decimals + 1e-12);
      }),
      { numRuns: cases({ short: 200, deep: 5000 }) },
    );
  });
});

describe('molarMassSpan', () => {
  it('adds the ends of each element on its own', () => {
    // K 39.098 to 39.10, Br 79.90 to 79.904.
    const span = molarMassSpan(
      {
        atoms: [
          { element: 'K', count: 1 },
          { element: 'Br', count: 1 },
        ],
      },
      2,
    );
    expect(span.low).toBeCloseTo(118.998, 9);
    expect(span.middle).toBeCloseTo(119.0023, 9);
    expect(span.high).toBeCloseTo(119.004, 9);
  });
  it('has nothing to round in atomic numbers', () => {
    const atoms = [
      { element: 'H', count: 2 },
      { element: 'O', count: 1 },
    ];
    expect(molarMassSpan({ atoms, byAtomicNumber: true }, 0)).toEqual({ low: 10, middle: 10, high: 10 });
  });
});

describe('molarMassSpan of a part multiplied by another', () => {
  it('multiplies the ends', () => {
    const [salt, water] = [[{ element: 'K', count: 1 }], [{ element: 'H', count: 2 }]];
    // K 39.098 to 39.10, H 1.008 to 1.01.
    const { low, middle, high } = molarMassSpan({ atoms: salt, times: water }, 2);
    expect(low).toBeCloseTo(39.098 * 2.016, 9);
    expect(middle).toBeCloseTo(39.0983 * 2.016, 9);
    expect(high).toBeCloseTo(39.1 * 2.02, 9);
  });
});

describe('schoolMolarMasses', () => {
  const named = (text: string) => {
    const formula = readFormula(text);
    if (!formula.ok) throw new Error(text);
    return schoolMolarMasses(formula.value).map((mass) => Number(mass.toFixed(6)));
  };
  // One decimal, ties up and to even, then whole numbers with Cl 35.5 and Cu 63.5. Cl 35.45 is a tie at one decimal.
  it.each([
    ['NaCl', [58.5, 58.4, 58.5]],
    ['CuSO4·5H2O', [249.6, 249.6, 249.5]],
    ['H2SO4', [98.1, 98.1, 98]],
    ['KBr', [119, 119, 119]],
    ['MgCl2·6H2O', [203.3, 203.1, 203]],
    ['Li', [6.9, 6.9, 7]],
  ])('of %s are %j', (formula, masses) => {
    expect(named(formula)).toEqual(masses);
  });
});

describe('leadingPlace', () => {
  it.each([
    [584, 2],
    [0.0584, -2],
    [1, 0],
    [0.1 + 0.2 - 0.2, -1],
    [9.99, 0],
    [-1000, 3],
  ])('of %d is %i', (value, place) => {
    expect(leadingPlace(value)).toBe(place);
  });
  it('keeps the place of a power of ten that binary arithmetic misses by a bit', () => {
    expect(leadingPlace(0.09999999999999999)).toBe(-1);
    expect(tenTo(-3)).toBe(0.001);
  });
  it('is that of the number written with thirteen figures, at every place and about every power of ten', () => {
    const written = (value: number) => Number(value.toExponential(12).split('e')[1]);
    const about = [1, 1 - 2 ** -53, 1 - 1e-12, 0.9999, 1 + 2 ** -52, 1.0009, 1.0011, 2.5, 9.989, 9.991, 10 - 2 ** -49];
    for (let power = -310; power < 308; power += 1) {
      for (const digits of about) {
        const value = digits * tenTo(power);
        expect(leadingPlace(value), String(value)).toBe(written(value));
      }
    }
    for (const value of [0, Number.MIN_VALUE, Number.MAX_VALUE]) expect(leadingPlace(value)).toBe(written(value));
  });
});
