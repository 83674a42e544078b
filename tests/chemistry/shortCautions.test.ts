import { describe, expect, it } from 'vitest';
import { adviceTexts, cautionTexts } from '../../src/chemistry/cautionTexts.ts';
import { readFormula } from '../../src/chemistry/readFormula.ts';
import { shortCautions } from '../../src/chemistry/shortCautions.ts';
import { percent } from '../../src/measurement/quantity.ts';
import { succeeded } from './succeeded.ts';

const of = (text: string) => {
  const formula = readFormula(text);
  if (!formula.ok) throw new Error(text);
  return shortCautions(formula.value);
};

describe('shortCautions', () => {
  it.each(['NaOH', 'KOH', 'HCl', 'H2SO4'])('says that %s burns before that it eats metal, and what to do', (text) => {
    const found = of(text);
    expect(found.signalWord).toBe('Danger');
    expect(found.statements[0]).toMatch(/^H314: .*\(harmonised, CLP Annex VI\)$/);
    expect(found.advice).toContain('goggles');
    expect(found.advice).toMatch(/acid to water|cold water/);
  });
  it('keeps to three statements with their codes, the gravest first', () => {
    const { statements, signalWord } = of('K2Cr2O7');
    expect(signalWord).toBe('Danger');
    expect(statements).toHaveLength(3);
    for (const statement of statements) expect(statement).toMatch(/^(H|EUH)\d{3}\w*: .+\(.+\)$/);
    expect(statements.join()).toMatch(/H330.*H340.*H350/);
    expect(of('K2Cr2O7').use).toContain('not for students');
  });
  it.each([
    ['HF', 'H300 H310 H330'],
    ['HCOOH', 'H331 H314 H226'],
    ['HNO3', 'H330 H314 H272'],
    ['HClO4', 'H314 H271 H302'],
    ['AgNO3', 'H314 H272 H410'],
    ['NH3', 'H314 H335 H400'],
    ['KMnO4', 'H314 H361d H272'],
    ['CuSO4·5H2O', 'H318 H302 H410'],
    ['FeCl3·6H2O', 'H318 H302 H315'],
    ['NiSO4·6H2O', 'H350i H360D H334'],
    ['BaCl2·2H2O', 'H301 H332'],
    ['KI', 'H372'],
  ])('puts first what is gravest of %s: %s', (text, codes) => {
    const shown = of(text).statements.map((statement) => /^\w+/.exec(statement)?.[0]);
    expect(shown.join(' ')).toBe(codes);
  });
  it('takes the strength of a solution [HCl: H315 and H319 from 10 %, H314 from 25 %, CLP Annex VI]', () => {
    const formula = succeeded(readFormula('HCl'));
    expect(shortCautions(formula, percent(15)).signalWord).toBe('Warning');
    expect(shortCautions(formula, percent(30)).signalWord).toBe('Danger');
    expect(shortCautions(formula, percent(5)).signalWord).toBe('');
  });
  it('joins what to do about the gravest with how to dilute or dissolve it', () => {
    expect(of('HClO4').advice).toBe(`${adviceTexts.corrosive} ${adviceTexts.acidToWater}`);
    expect(of('NaOH').advice).toBe(`${adviceTexts.corrosive} ${adviceTexts.heatOfSolution}`);
    expect(of('KI').advice).toBe(adviceTexts.organs);
    expect(of('NaOH').use).toBe(cautionTexts.school('solid: care, staff weigh out for younger students'));
    expect([of('KI').use, of('KI').otherForm]).toEqual(['', '']);
  });
  it('says of another hydrate without a class which one is listed, and of both what is known', () => {
    expect(of('Na2S2O3·2H2O')).toEqual({
      listing: 'another hydrate',
      verdict: 'none',
      signalWord: '',
      statements: ['Not classified by the source we have (two sources agree).'],
      advice: cautionTexts.notClassifiedAdvice,
      waste: cautionTexts.drain,
      use: '',
      otherForm: cautionTexts.otherHydrate('Na2S2O3·5H2O'),
    });
  });
  it.each(['KMnO4', 'AgNO3', 'CuSO4·5H2O'])('knows %s, which is on the list', (text) => {
    expect(of(text).listing).toBe('listed');
    expect(of(text).statements.length).toBeGreaterThan(0);
    expect(of(text).signalWord).not.toBe('');
  });
  it('names the form that is listed where only another hydrate is', () => {
    const found = of('CuSO4·3H2O');
    expect(found.listing).toBe('another hydrate');
    expect(found.otherForm).toContain('CuSO4');
    expect(found.statements.join()).not.toContain(found.otherForm);
    expect(found.signalWord).not.toBe('');
  });
  it('says nothing of an unlisted substance, and says that it is unlisted', () => {
    expect(of('XeF2')).toEqual({
      listing: 'unlisted',
      verdict: 'unsure',
      signalWord: '',
      statements: [],
      advice: '',
      waste: cautionTexts.beaker,
      use: '',
      otherForm: '',
    });
  });
  it('never calls a substance without a class harmless', () => {
    const { signalWord, statements, advice } = of('NaCl');
    expect(signalWord).toBe('');
    expect(statements).toEqual([expect.stringMatching(/^Not classified/)]);
    expect(advice).toContain('not the same as harmless');
  });
});
