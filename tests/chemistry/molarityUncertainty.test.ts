import { describe, expect, it } from 'vitest';
import { molarityUncertainty } from '../../src/chemistry/molarityUncertainty.ts';
import { grams, gramsPerMole, millilitres, percent } from '../../src/measurement/quantity.ts';
import { succeeded } from './succeeded.ts';

const quam = 'QUAM, 2nd edition 2000, appendix A';
const rectangular = Math.sqrt(3);
const kcl = { molarMass: gramsPerMole(74.548), mass: grams(7.4548), volume: millilitres(1000) };
const none = { balanceTolerance: grams(0), flaskTolerance: millilitres(0) };
/** u of 1 mol/L made from 1 g of 1 g/mol in 1000 mL, so that each term shows by itself. */
const unit = { molarMass: gramsPerMole(1), mass: grams(1), volume: millilitres(1000) };

describe('molarityUncertainty', () => {
  it(`gives u(P) of a purity of 0.9999 ± 0.0001 as 0.000058 [${quam}, example A1]`, () => {
    const u = succeeded(
      molarityUncertainty({ ...unit, ...none, purity: percent(99.99), purityTolerance: percent(0.01) }),
    );
    expect(u / 0.9999).toBeCloseTo(0.0000577, 7);
  });
  it(`gives u(P) of a purity of 1.0 ± 0.0005 as 0.00029 [${quam}, example A2]`, () => {
    const u = succeeded(
      molarityUncertainty({ ...unit, ...none, purity: percent(100), purityTolerance: percent(0.05) }),
    );
    expect(u).toBeCloseTo(0.00029, 5);
  });
  it(`gives u(m) of a weighing by difference with ± 0.15 mg as 0.12 mg, printed 0.13 [${quam}, example A2; ± 0.15 mg from memory]`, () => {
    const mass = grams(0.3888);
    const u = succeeded(
      molarityUncertainty({ ...unit, mass, balanceTolerance: grams(0.00015), flaskTolerance: millilitres(0) }),
    );
    expect(u).toBeCloseTo(0.0001225, 7);
  });
  it(`gives 0.9 mg/L for 1002.7 mg/L of cadmium from the three terms of the budget [${quam}, example A1]`, () => {
    const u = succeeded(
      molarityUncertainty({
        molarMass: gramsPerMole(1),
        mass: grams(0.10028),
        volume: millilitres(100),
        // The example gives standard uncertainties: 0.05 mg for the mass, weighed once, and 0.07 mL for the volume.
        balanceTolerance: grams((0.00005 * rectangular) / Math.SQRT2),
        flaskTolerance: millilitres(0.07 * rectangular),
        purity: percent(99.99),
        purityTolerance: percent(0.01),
      }),
    );
    expect(1000 * u).toBeCloseTo(0.864, 3);
  });
  it(`reproduces what we model of the budget of 0.10214 mol/L and stays below its whole [${quam}, example A2]`, () => {
    const u = succeeded(
      molarityUncertainty({
        molarMass: gramsPerMole(204.2212),
        mass: grams(0.3888),
        volume: millilitres(18.64),
        balanceTolerance: grams((0.00013 * rectangular) / Math.SQRT2),
        flaskTolerance: millilitres(0.013 * rectangular),
        purity: percent(100),
        purityTolerance: percent(0.05),
      }),
    );
    // Left out: repeatability, 0.0005, and the molar mass, 0.0038 g/mol in 204.2212 g/mol.
    const whole = 0.102136 * Math.hypot(u / 0.102136, 0.0005, 0.0038 / 204.2212);
    expect(u).toBeCloseTo(0.0000842, 6);
    expect(whole).toBeCloseTo(0.0000986, 6);
    expect(whole.toFixed(5)).toBe('0.00010');
  });
  it('takes a flask as rectangular where the guide takes it as triangular, which is never narrower', () => {
    const u = succeeded(
      molarityUncertainty({ ...unit, volume: millilitres(100), ...none, flaskTolerance: millilitres(0.1) }),
    );
    // Printed 0.04 mL in 100 mL by a triangular distribution; ours is 0.058 mL.
    expect(100 * (u / 10)).toBeCloseTo(0.0577, 4);
    expect(100 * (u / 10)).toBeGreaterThan(0.0408);
  });
  it('combines a school balance and a flask as calculated by hand: two readings and the mark', () => {
    const u = succeeded(
      molarityUncertainty({ ...kcl, balanceTolerance: grams(0.001), flaskTolerance: millilitres(0.4) }),
    );
    const byHand = 0.1 * Math.sqrt(2 * (0.001 / rectangular / 7.4548) ** 2 + (0.4 / rectangular / 1000) ** 2);
    expect(u / byHand).toBeCloseTo(1, 12);
  });
  it('is 0 without any tolerance and refuses a negative one', () => {
    expect(molarityUncertainty({ ...kcl, ...none })).toEqual({ ok: true, value: 0 });
    for (const [name, tolerances] of [
      ['balance_tolerance', { ...none, balanceTolerance: grams(-1) }],
      ['flask_tolerance', { ...none, flaskTolerance: millilitres(-1) }],
      ['purity_tolerance', { ...none, purityTolerance: percent(-1) }],
    ] as const) {
      expect(molarityUncertainty({ ...kcl, ...tolerances })).toMatchObject({
        ok: false,
        error: { code: 'below-zero', argument: name },
      });
    }
  });
});
