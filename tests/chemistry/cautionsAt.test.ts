import { describe, expect, it } from 'vitest';
import { cautions } from '../../src/chemistry/cautions.ts';
import { cautionsAt } from '../../src/chemistry/cautionsAt.ts';
import { readFormula } from '../../src/chemistry/readFormula.ts';
import { type Strength, strengthPercent } from '../../src/chemistry/strengthPercent.ts';
import { molesPerLitre, percent } from '../../src/measurement/quantity.ts';
import { succeeded } from './succeeded.ts';

const formula = (text: string) => succeeded(readFormula(text));
const codesAt = (text: string, strength: Strength) =>
  cautionsAt(formula(text), strength)
    .statements.map(({ code }) => code)
    .filter((code) => code !== '');

describe('cautionsAt', () => {
  // Limits of hydrochloric acid: CLP Annex VI, index 017-002-01-X: H314 from 25 %, H315, H319 and H335 from 10 %.
  it.each<[string, Strength, readonly string[]]>([
    ['30 %', { massPercent: percent(30) }, ['H314', 'H335']],
    ['15 %', { massPercent: percent(15) }, ['H315', 'H319', 'H335']],
    // 10 mol/L is some 31 %, 1 mol/L some 3.6 %.
    ['10 mol/L', { molarity: molesPerLitre(10) }, ['H314', 'H335']],
    ['1 mol/L', { molarity: molesPerLitre(1) }, []],
  ])('goes by the limits for HCl of %s', (_, strength, codes) => {
    expect(codesAt('HCl', strength).filter((code) => /^H3[13]/.test(code))).toEqual(codes);
  });
  it.each<[string, string, Strength]>([
    ['the substance itself', 'NaOH', 'undiluted'],
    ['a strength that is no share of a whole', 'NaOH', { massPercent: percent(150) }],
  ])('are those of the bottle for %s', (_, text, strength) => {
    expect(cautionsAt(formula(text), strength)).toEqual(succeeded(cautions(formula(text))));
  });
  it('stay those of the bottle where an element has no atomic weight to tell a strength by', () => {
    expect(strengthPercent(formula('Tc'), { molarity: molesPerLitre(1) })).toBeUndefined();
    expect(cautionsAt(formula('Tc'), { molarity: molesPerLitre(1) }).listing).toBe('unlisted');
  });
});
