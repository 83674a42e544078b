import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { cautionListSource } from '../../scripts/generate/cautionList.ts';
import { readCsv } from '../../scripts/generate/csv.ts';
import { type Cautions, cautionRows, cautions } from '../../src/chemistry/cautions.ts';
import { adviceTexts, cautionTexts, codeTexts } from '../../src/chemistry/cautionTexts.ts';
import { listedHazards } from '../../src/chemistry/listedHazards.ts';
import { molarMass } from '../../src/chemistry/molarMass.ts';
import { readFormula } from '../../src/chemistry/readFormula.ts';
import { percent } from '../../src/measurement/quantity.ts';
import { succeeded } from './succeeded.ts';

const published = (name: string) => new URL(`../published/${name}`, import.meta.url).pathname;
const of = (formula: string, massPercent?: number): Cautions =>
  succeeded(cautions(succeeded(readFormula(formula)), massPercent === undefined ? undefined : percent(massPercent)));
const codesOf = ({ statements }: Cautions) =>
  statements
    .map(({ code }) => code)
    .filter((code) => code !== '')
    .sort();
/** % by mass of a solution from its molarity and density. */
const strength = (formula: string, molarity: number, density: number) =>
  (molarity * succeeded(molarMass(succeeded(readFormula(formula))))) / (10 * density);

describe('cautions', () => {
  it('has the list that the published tables give', () => {
    expect(readFileSync(new URL('../../src/chemistry/cautionList.generated.ts', import.meta.url), 'utf8')).toBe(
      cautionListSource({ reagents: published('reagents.csv'), limits: published('hazard-limits.csv') }),
    );
  });

  it.each([
    { formula: 'HCl', molarity: 1, density: 1.02, codes: [], signal: '' },
    { formula: 'HCl', molarity: 3, density: 1.05, codes: ['H315', 'H319', 'H335'], signal: 'Warning' },
    { formula: 'HCl', molarity: 12, density: 1.18, codes: ['H314', 'H335'], signal: 'Danger' },
    { formula: 'NaOH', molarity: 0.1, density: 1, codes: [], signal: '' },
    { formula: 'NaOH', molarity: 1, density: 1.04, codes: ['H314'], signal: 'Danger' },
    { formula: 'NH3', molarity: 2, density: 0.98, codes: ['H315', 'H318'], signal: 'Danger' },
    { formula: 'K2CrO4', molarity: 0.01, density: 1, codes: ['H340', 'H350i'], signal: 'Danger' },
    { formula: 'CoCl2', molarity: 0.1, density: 1, codes: ['H350i', 'H360F'], signal: 'Danger' },
    { formula: 'CoCl2·6H2O', molarity: 0.1, density: 1, codes: ['H350i', 'H360F'], signal: 'Danger' },
    { formula: 'CuSO4·5H2O', molarity: 0.09, density: 1, codes: ['H319', 'H412'], signal: 'Warning' },
    { formula: 'AgNO3', molarity: 0.1, density: 1, codes: ['H315', 'H319'], signal: 'Warning' },
  ])(
    'classifies $molarity mol/L $formula as $codes [CLP Annex VI and Annex I, consolidated 2026-07-01]',
    ({ formula, molarity, density, codes, signal }) => {
      const found = of(formula, strength(formula, molarity, density));
      expect(codesOf(found)).toEqual(codes);
      expect(found.signalWord).toBe(signal);
    },
  );
  it('shows the stricter side close to a limit, and says so', () => {
    expect(codesOf(of('CuSO4·5H2O', 2.47))).toContain('H400');
    expect(of('HCl', 24).statements.map(({ text }) => text)).toContain(cautionTexts.nearEdge);
    expect(codesOf(of('HCl', 24))).toContain('H314');
    expect(codesOf(of('HCl', 23))).not.toContain('H314');
  });
  it.each([
    ['HCl', 10, 'H290'],
    ['AgNO3', 1.7, 'H410'],
    ['NH3', 3.5, 'H400'],
    ['CoCl2', 1, 'H410'],
  ] as const)(
    'says that part of the hazards of %s at %d % is not known, never that there is none',
    (formula, at, code) => {
      const unknown = of(formula, at).statements.filter(({ text }) => text.startsWith('Not known at this strength'));
      expect(unknown.map(({ text }) => text).join()).toContain(code);
    },
  );
  it('takes the codes of the list for what stands in the bottle', () => {
    const listed = readCsv(published('reagents.csv')).filter(({ kind }) => kind === 'solute');
    expect(listed.length).toBe(44);
    for (const { formula = '', h_statements = '', ghs_signal = '', ghs_pictograms = '' } of listed) {
      const found = of(formula);
      expect([
        formula,
        codesOf(found)
          .filter((code) => code.startsWith('H'))
          .join(' '),
      ]).toEqual([formula, h_statements.split(' ').sort().join(' ')]);
      expect(found.signalWord).toBe(ghs_signal);
      expect(found.pictograms.join(' ')).toBe(ghs_pictograms);
    }
  });
  it('says of an unlisted substance that it is unlisted, and never that it is safe', () => {
    for (const formula of ['NaI', 'C60', 'UF6', 'C2H6O']) {
      const found = of(formula);
      expect(found.listing).toBe('unlisted');
      const all = cautionRows(found).flat().join(' ');
      expect(all).toContain('Unlisted');
      expect(all.toLowerCase()).not.toMatch(/\bsafe\b|no hazard|not hazardous/);
    }
  });
  it('matches spellings, never composition', () => {
    expect(of('HC2H3O2').listing).toBe('listed');
    expect(of('CH3COOH').name).toBe(of('CH3CO2H').name);
    expect(of('C2H4O2').listing).toBe('unlisted');
    expect(of('Ca[OH]2').listing).toBe('listed');
    expect(of('CuSO4 . 5 H2O').listing).toBe('listed');
    expect(of('CuSO₄•5H₂O').listing).toBe('listed');
  });
  it('says when only another hydrate is listed', () => {
    const found = of('CuSO4');
    expect(found.listing).toBe('another hydrate');
    expect(found.statements[0]?.text).toContain('Only CuSO4·5H2O is listed');
    expect(codesOf(found)).toEqual(['H302', 'H318', 'H410']);
    expect(of('CaCl2').listing).toBe('listed');
  });
  it('does not call a solution unclassified without a word of what is not known', () => {
    expect(of('AgNO3', 0.5).statements[0]?.text).toBe(cautionTexts.notClassifiedAsFarAsKnown);
    expect(
      of('AgNO3', 0.5)
        .statements.map(({ advice }) => advice)
        .join(' '),
    ).not.toContain('ordinary care');
    expect(of('NaHCO3', 5).statements[0]?.text).toBe(cautionTexts.notClassified);
  });
  it('does not call unclassified what is only remembered', () => {
    expect(of('C6H12O6').statements[0]?.text).toBe(cautionTexts.notKnown);
    expect(of('NaCl').statements[0]?.text).toContain('Not classified');
  });
  it('tells to add acid to water wherever an acid still burns, and warns of the heat of strong bases', () => {
    for (const acid of ['HCl', 'H2SO4', 'HNO3', 'H3PO4', 'CH3COOH', 'HCOOH']) {
      expect(of(acid).statements.map(({ advice }) => advice)).toContain(adviceTexts.acidToWater);
      expect(of(acid, 40).statements.map(({ advice }) => advice)).toContain(adviceTexts.acidToWater);
    }
    for (const base of ['NaOH', 'KOH'])
      expect(of(base, 10).statements.map(({ advice }) => advice)).toContain(adviceTexts.heatOfSolution);
  });
  it('defers to the data sheet and local rules at the end, for every substance and strength', () => {
    for (const { spellings } of listedHazards()) {
      for (const massPercent of [undefined, 0.01, 0.5, 1, 3, 5, 10, 20, 50, 100]) {
        const found = of(spellings[0] ?? '', massPercent);
        const rows = cautionRows(found);
        expect(rows[rows.length - 1]?.[2]).toBe(cautionTexts.deferring);
        expect(rows[0]?.[0]).toBe(found.signalWord);
        expect(rows.slice(1).every(([word]) => word === '')).toBe(true);
        const words = rows.map((row) => row.join(' ')).join(' ');
        if (found.signalWord !== '') expect(words.toLowerCase()).not.toContain('ordinary care');
        expect(words).not.toMatch(/undefined|NaN/);
        if (
          // H272 is Danger or Warning by its category.
          codesOf(found).some((code) => code !== 'H272' && codeTexts()[code]?.signal === 'Danger')
        )
          expect(found.signalWord).toBe('Danger');
      }
    }
  });
  it('never has a weaker word for a stronger solution of one substance', () => {
    const order = ['', 'Warning', 'Danger'];
    for (const { spellings, limits } of listedHazards()) {
      if (limits.length === 0) continue;
      const words = [0.01, 0.1, 0.5, 1, 2, 5, 10, 15, 25, 50, 69, 90, 100].map((at) =>
        order.indexOf(of(spellings[0] ?? '', at).signalWord),
      );
      expect([spellings[0], words]).toEqual([spellings[0], [...words].sort((one, other) => one - other)]);
    }
  });
  it('has a meaning, in few words, and advice for every code of the tables', () => {
    const codes = new Set([
      ...readCsv(published('reagents.csv')).flatMap((row) => `${row.h_statements} ${row.euh_statements}`.split(' ')),
      ...readCsv(published('hazard-limits.csv')).map((row) => (row.h_code ?? '').replace('H335/H336', 'H335')),
    ]);
    codes.delete('');
    expect(codes.size).toBeGreaterThan(40);
    for (const code of codes) {
      expect([code, codeTexts()[code]?.means.length ?? 0, codeTexts()[code]?.advice.length ?? 0]).toEqual([
        code,
        expect.toSatisfy((length: number) => length > 5),
        expect.toSatisfy((length: number) => length > 0),
      ]);
    }
  });
  it.each([0, -1, 101, Number.NaN])('refuses %d % by mass', (massPercent) => {
    expect(cautions(succeeded(readFormula('HCl')), percent(massPercent))).toMatchObject({
      ok: false,
      error: { code: 'purity-out-of-range', argument: 'mass_percent' },
    });
  });
});
