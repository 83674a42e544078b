import { describe, expect, it } from 'vitest';
import { readCsv } from '../../scripts/generate/csv.ts';
import { cautions } from '../../src/chemistry/cautions.ts';
import { readFormula } from '../../src/chemistry/readFormula.ts';
import { percent } from '../../src/measurement/quantity.ts';
import { succeeded } from './succeeded.ts';

/** What the list before this one answered, for every formula it had, as sold and at five strengths. */
const before = readCsv('tests/published/hazard-answers-before.csv');
const found = (formula: string, strength: string) =>
  succeeded(cautions(succeeded(readFormula(formula)), strength === 'bottle' ? undefined : percent(Number(strength))));
const listed = (text: string | undefined) => (text ?? '').split(' ').filter((code) => code !== '');

/** Every code that was shown and is not shown any more, with the strengths and why. */
const gone: Readonly<Record<string, { readonly at: string; readonly why: string }>> = {
  'HNO3 H331': {
    at: 'bottle',
    why: 'H330 of the acid above 70 % hides it: without a strength the strictest bottle is shown (index 007-004-00-1)',
  },
  'H2O2 H318': {
    at: 'bottle',
    why: 'H314 from 50 % hides it: without a strength the strictest bottle is shown (index 008-003-00-9)',
  },
  'Pb(NO3)2 H361f': { at: '5 20 100', why: 'H360Df says of fertility what H361f does, and more of the unborn child' },
  'CoCl2 H400': { at: 'bottle', why: 'H410 stands in the act for the chloride and hides H400' },
};

describe('the list of hazards and the one before it', () => {
  it('has every formula of it, as listed', () => {
    const formulas = [...new Set(before.map(({ formula = '' }) => formula))];
    expect(formulas).toHaveLength(95);
    for (const formula of formulas) expect([formula, found(formula, 'bottle').listing]).toEqual([formula, 'listed']);
  });

  it('compares the same strengths for each', () => {
    expect(new Set(before.map(({ mass_percent }) => mass_percent))).toEqual(
      new Set(['bottle', '0.1', '1', '5', '20', '100']),
    );
    expect(before).toHaveLength(95 * 6);
  });

  it('has lost no code without a reason, and no reason without a code', () => {
    const lost: Record<string, string> = {};
    for (const { formula = '', mass_percent: strength = '', shown } of before) {
      const { codes } = found(formula, strength);
      for (const code of listed(shown)) {
        if (codes.includes(code)) continue;
        const key = `${formula} ${code}`;
        lost[key] = lost[key] === undefined ? strength : `${lost[key]} ${strength}`;
      }
    }
    expect(lost).toEqual(Object.fromEntries(Object.entries(gone).map(([key, { at }]) => [key, at])));
    for (const { why } of Object.values(gone)) expect(why).toMatch(/H3|H4/);
  });

  it('still says of every code that was not known that it is not known, or shows it', () => {
    for (const { formula = '', mass_percent: strength = '', not_known } of before) {
      const { codes, unknownCodes } = found(formula, strength);
      for (const code of listed(not_known)) {
        expect([formula, strength, code, codes.includes(code) || unknownCodes.includes(code)]).toEqual([
          formula,
          strength,
          code,
          true,
        ]);
      }
    }
  });
});
