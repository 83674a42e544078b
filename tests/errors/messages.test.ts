import { readdirSync, readFileSync } from 'node:fs';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { cautions } from '../../src/chemistry/cautions.ts';
import { readConcentrationUnit } from '../../src/chemistry/concentrationUnit.ts';
import { elementPercent } from '../../src/chemistry/elementPercent.ts';
import { ions } from '../../src/chemistry/ions.ts';
import { matchIon } from '../../src/chemistry/matchIon.ts';
import { molarMass } from '../../src/chemistry/molarMass.ts';
import { readFormula } from '../../src/chemistry/readFormula.ts';
import { soluteMass } from '../../src/chemistry/soluteMass.ts';
import { stockVolume } from '../../src/chemistry/stockVolume.ts';
import { errorText, shortErrorText } from '../../src/errors/errorText.ts';
import { messages } from '../../src/errors/messages.ts';
import { quoted } from '../../src/errors/quoted.ts';
import type { ChemError, Result } from '../../src/errors/result.ts';
import { glasswareTolerance } from '../../src/measurement/glasswareTolerance.ts';
import { gramsPerMole, millilitres, molesPerLitre, percent } from '../../src/measurement/quantity.ts';
import { readNumber } from '../../src/measurement/readNumber.ts';
import { readQuantity } from '../../src/measurement/readQuantity.ts';
import { succeeded } from '../chemistry/succeeded.ts';
import { cases } from '../depth.ts';

const source = new URL('../../src/', import.meta.url);
const threeParts = /^Expected [\s\S]+, received [\s\S]+\. [\s\S]*[A-Z“‘0-9][\s\S]*[.?]$/;
/** About 200 characters, and what a person typed, of which up to 60 are shown. */
const longest = 260;

const formula = (text: string) => succeeded(readFormula(text));
const mistakes: readonly (readonly [string, Result<unknown>])[] = [
  ...[
    'nacl',
    'Ca(OH2',
    'Ca)OH',
    '()',
    'Na0',
    '2NaCl',
    'NaXy',
    'H2O·',
    'Ca2+',
    '[99H]',
    'Na-Cl',
    'NaCl(s)',
    'Fe(III)Cl3',
    'Na1.5Cl',
    `(${'H'.repeat(240)}`,
    '('.repeat(30),
    'H'.repeat(999),
  ].map((text) => [text, readFormula(text)] as const),
  ...['abc', '1,234', '1e400', 'true', '12"', '数'].map((text) => [text, readNumber(text, 'measured')] as const),
  ...['5 gal', '2.5 kg', 'x', '1,234 mL', '5 "quoted" mL', '5 мл'].map(
    (text) => [text, readQuantity(text, 'volume', 'target_volume')] as const,
  ),
  ['0.98', readQuantity(0.98, 'percent', 'purity_percent')],
  ['Tc', molarMass(formula('Tc'))],
  ['CH3COOH', ions(formula('CH3COOH'))],
  ['AgCl', ions(formula('AgCl'))],
  ['NaXe', ions(formula('NaXe'))],
  ['SO4^2-', ions(formula('SO4^2-'))],
  ['Mg2+', matchIon('Mg2+', succeeded(ions(formula('CaCl2'))))],
  ['N', elementPercent(formula('Fe2O3'), 'N')],
  ['%', readConcentrationUnit('%', 'from')],
  ['furlongs', readConcentrationUnit('furlongs', 'from')],
  ['150', glasswareTolerance({ kind: 'volumetric flask', volume: millilitres(150) })],
  ['101', cautions(formula('HCl'), percent(101))],
  ['2', stockVolume({ stock: molesPerLitre(0.5), target: molesPerLitre(2), finalVolume: millilitres(100) })],
  ['-1', soluteMass({ molarMass: gramsPerMole(1), molarity: molesPerLitre(-1), volume: millilitres(1) })],
];
const errorOf = (result: Result<unknown>): ChemError => {
  if (result.ok) throw new Error(`A mistake was taken for ${JSON.stringify(result.value)}`);
  return result.error;
};

describe('messages', () => {
  it('have the three parts in full, and a sign and few words in a range', () => {
    for (const [code, { full, short }] of Object.entries(messages)) {
      expect([code, full]).toEqual([code, expect.stringMatching(/^Expected .*, received \{received\}\. \{advice\}$/)]);
      expect([code, short]).toEqual([code, expect.stringMatching(/^⚠ \S/)]);
      expect(short.length).toBeLessThanOrEqual(45);
      expect(full.replace(/\{(argument|expected|received|advice|brief)\}/g, '')).not.toMatch(/[{}]/);
      expect(`${full} ${short}`.toLowerCase()).not.toMatch(/\binvalid\b|\bplease\b/);
    }
  });
  it('are all used, each from some source file', () => {
    const files = readdirSync(source, { recursive: true, encoding: 'utf8' }).filter(
      (name) => name.endsWith('.ts') && !name.endsWith('messages.ts'),
    );
    const text = files.map((name) => readFileSync(new URL(name, source), 'utf8')).join('\n');
    expect(Object.keys(messages).filter((code) => !text.includes(`'${code}'`))).toEqual([]);
  });

  it.each(mistakes)('say what was expected, received and what to do about “%s”', (typed, result) => {
    const error = errorOf(result);
    const full = errorText(error);
    expect(full).toMatch(threeParts);
    expect(full.length).toBeLessThanOrEqual(longest);
    expect(full.toLowerCase()).not.toMatch(/\binvalid\b|\bplease\b|undefined|\[object/);
    const short = shortErrorText(error);
    expect(short).toMatch(/^⚠ \S/);
    expect(short).not.toMatch(/\{|undefined/);
    if (typed.length <= 30 && !['formula-too-deep', 'bracket-not-closed', 'bracket-empty'].includes(error.code)) {
      const shown = error.at ? `${error.received} ${error.expected}` : error.received;
      expect(shown).toContain(
        error.code === 'atomic-weight-none'
          ? 'Tc'
          : error.at && !shown.includes(typed)
            ? typed.charAt(error.at.from)
            : typed,
      );
    }
  });

  it('keep what was typed as it was: quotes, spaces, braces, dollars and letters of any script', () => {
    const typed = fc.string({
      unit: fc.constantFrom(...'aé数٣🧂"\'“”{argument}$&\\ <b>'.split(/(?:)/u)),
      minLength: 1,
      maxLength: 50,
    });
    fc.assert(
      fc.property(typed, (text) => {
        fc.pre(text.trim() !== '' && Array.from(text).length <= 50);
        const read = readNumber(text, 'measured');
        if (!read.ok) expect(errorText(read.error)).toContain(`“${text}”`);
      }),
      { numRuns: cases({ short: 200, deep: 5000 }) },
    );
  });
});

describe('quoted', () => {
  it.each([
    ['text', '“text”'],
    ['  text ', '“  text ”'],
    [5, '5'],
    [0.1, '0.1'],
    [true, 'TRUE'],
    [false, 'FALSE'],
    ['', 'a blank cell'],
    ['  ', 'a blank cell'],
    [undefined, 'a blank cell'],
    [null, 'a blank cell'],
    [new Date(Date.UTC(2026, 0, 31)), 'the date 2026-01-31'],
    [new Date(Number.NaN), 'a date'],
    [{}, 'something that is neither text nor a number'],
  ])('shows %s as %s', (cell, shown) => {
    expect(quoted(cell)).toBe(shown);
  });
  it('leaves out the middle of very long text, and never half a character', () => {
    const long = '🧂'.repeat(500);
    expect(quoted(long)).toBe(`“${'🧂'.repeat(40)} … ${'🧂'.repeat(15)}”`);
    expect(quoted('x'.repeat(60))).toBe(`“${'x'.repeat(60)}”`);
    expect(quoted('x'.repeat(61)).length).toBeLessThan(62);
  });
});
