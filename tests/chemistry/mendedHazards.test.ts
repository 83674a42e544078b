import { describe, expect, it } from 'vitest';
import { cautions } from '../../src/chemistry/cautions.ts';
import { hazardSource } from '../../src/chemistry/hazardSource.ts';
import { listedHazards } from '../../src/chemistry/listedHazards.ts';
import { readFormula } from '../../src/chemistry/readFormula.ts';
import { substancesListed } from '../../src/chemistry/substancesListed.ts';
import { percent } from '../../src/measurement/quantity.ts';
import { succeeded } from './succeeded.ts';

const of = (text: string, massPercent?: number) =>
  succeeded(cautions(succeeded(readFormula(text)), massPercent === undefined ? undefined : percent(massPercent)));
const codesOf = (text: string, massPercent?: number) => of(text, massPercent).codes;
const sureness = (text: string, code: string, massPercent?: number) =>
  of(text, massPercent).statements.find((statement) => statement.code === code)?.confidence;
const limit = (text: string, code: string) =>
  substancesListed(text)?.substances[0]?.limits.filter((one) => one.code === code);

// CLP Annex VI Table 3 as of 2026-07-01, by index number, unless another source is named; see substances.csv.
describe('lines of the first list that were wrong', () => {
  it.each([
    ['Na2Cr2O7', '024-004-00-7', 'H330 H301 H312 H314 H360FD H372 H272 H410 H334 H317 H335 H350 H340'],
    ['(NH4)2Cr2O7', '024-003-00-1', 'H330 H301 H312 H314 H360FD H372 H272 H410 H334 H317 H335 H350 H340'],
    ['Na2CrO4', '024-018-00-3', 'H330 H301 H312 H314 H360FD H372 H410 H334 H317 H350 H340'],
    ['CrO3', '024-001-00-0', 'H271 H330 H311 H301 H314 H334 H317 H372 H361f H410 H335 H350 H340'],
    ['NiCl2', '028-011-00-6', 'H301 H331 H410 H372 H315 H317 H350i H341 H360D H334'],
    ['Ni(NO3)2', '028-012-00-1', 'H272 H302 H332 H318 H410 H372 H315 H317 H350i H341 H360D H334'],
    ['CoSO4', '027-005-00-0', 'H302 H410 H350i H341 H360F H334 H317'],
    ['Co(NO3)2', '027-009-00-2', 'H410 H350i H341 H360F H334 H317'],
    ['Co(CH3COO)2', '027-006-00-6', 'H410 H350i H341 H360F H334 H317'],
    ['Ca(OCl)2', '017-012-00-7', 'H272 H400 EUH031 H314 H302'],
  ])('%s as it is sold has every code of the act (%s): %s', (text, _, codes) => {
    expect(codesOf(text)).toEqual(expect.arrayContaining(codes.split(' ')));
  });
  it('the strongest sold H400 of cobalt salts stands in their limits (M = 10)', () => {
    for (const text of ['CoSO4', 'Co(NO3)2', 'Co(CH3COO)2']) expect(codesOf(text, 10)).toContain('H400');
  });
  it('sodium dichromate of 2 % has its reproductive, skin, eye and organ hazards', () => {
    expect(codesOf('Na2Cr2O7', 2)).toEqual(expect.arrayContaining(['H360FD', 'H315', 'H319', 'H332', 'H373']));
  });

  it('magnesium nitrate irritates [school body’s safety sheet 36: H315 H319 H335, irritant from 0.5 mol/L]', () => {
    expect(codesOf('Mg(NO3)2')).toEqual(expect.arrayContaining(['H272', 'H315', 'H319', 'H335']));
    expect(codesOf('Mg(NO3)2', 15)).toEqual(expect.arrayContaining(['H315', 'H319']));
    expect(of('Mg(NO3)2', 15).signalWord).toBe('Warning');
  });

  it('potassium dichromate: allergy from 0.2 % is by analogy and says so, from 1 % it is the act’s', () => {
    for (const code of ['H334', 'H317']) {
      expect(codesOf('K2Cr2O7', 0.5)).toContain(code);
      expect(sureness('K2Cr2O7', code, 0.5)).toBe('o');
      expect(sureness('K2Cr2O7', code, 2)).toBe('h');
      expect(sureness('K2Cr2O7', code)).toBe('h');
    }
    expect(hazardSource('potassium dichromate')?.source).toContain('as for the sodium salt');
  });

  it('potassium chromate: skin and eyes count the salt, cancer the chromate ion', () => {
    expect(codesOf('K2CrO4', 10)).toEqual(expect.arrayContaining(['H315', 'H319']));
    expect(codesOf('K2CrO4', 9.4)).not.toContain('H315');
    // 0.1 % of chromate ion is 0.167 % of the salt.
    expect(codesOf('K2CrO4', 0.168)).toContain('H350i');
    expect(codesOf('K2CrO4', 0.15)).not.toContain('H350i');
  });

  it('iron(II) sulfate without water goes by its own entry: skin from 10 %, the heptahydrate from 25 %', () => {
    expect(codesOf('FeSO4', 10)).toContain('H315');
    expect(codesOf('FeSO4·7H2O', 23)).not.toContain('H315');
    expect(codesOf('FeSO4·7H2O', 25)).toContain('H315');
  });
  it('copper(II) sulfate without water has its own entry; the pentahydrate’s eye damage is kept as the stricter', () => {
    expect(codesOf('CuSO4')).toEqual(expect.arrayContaining(['H302', 'H315', 'H318', 'H410']));
    expect([sureness('CuSO4', 'H315'), sureness('CuSO4', 'H318')]).toEqual(['h', 'o']);
    // 1.6 % of it is the solution that 2.5 % of the pentahydrate gives.
    expect(codesOf('CuSO4', 1.6)).toEqual(expect.arrayContaining(['H319', 'H400', 'H411']));
    expect(codesOf('CuSO4', 2)).toContain('H318');
  });

  it('iron(III) chloride keeps its skin allergy, and the teacher reads what contradicts it', () => {
    expect(codesOf('FeCl3', 5)).toContain('H317');
    expect(hazardSource('iron(III) chloride')?.source).toMatch(/contradiction: .* H317 .*stricter kept/);
  });

  it('sodium hypochlorite counts active chlorine, 70.906 g for each mole', () => {
    expect(limit('NaClO', 'H314')).toMatchObject([{ from: { percent: 5 }, countedGramsPerMole: 70.906 }]);
    // 5 % of active chlorine is 5.25 % of the salt; within 5 % of a limit the stricter side shows.
    expect(codesOf('NaClO', 5.25 * 0.951)).toContain('H314');
    expect(codesOf('NaClO', 5.25 * 0.949)).not.toContain('H314');
  });

  it.each(['NaCl', 'KCl', 'NaHCO3', 'Na2S2O3', 'MgSO4', 'CaCO3', 'KNO3'])('%s rests on two sources now', (text) => {
    expect(substancesListed(text)?.substances[0]?.confidence).toBe('t');
  });
  it.each(['CO(NH2)2', '(NH4)2SO4'])('%s still rests on one', (text) => {
    expect(substancesListed(text)?.substances[0]?.confidence).toBe('o');
  });
  it.each(['H2SO4', 'CH3COOH', 'NaOH', 'KOH', 'NH3', 'AgNO3'])('that %s eats metal is read in one source', (text) => {
    expect(sureness(text, 'H290')).toBe('o');
  });

  it.each([
    ['C8H5KO4', 'potassium hydrogen phthalate'],
    ['KHC8H4O4', 'potassium hydrogen phthalate'],
    ['C8H5O4K', 'potassium hydrogen phthalate'],
    ['CH3COONa', 'sodium acetate'],
    ['NaC2H3O2', 'sodium acetate'],
    ['Na3C6H5O7', 'trisodium citrate'],
    ['H2C2O4', 'oxalic acid'],
    ['(COOH)2', 'oxalic acid'],
    ['CuCl2', 'copper(II) chloride'],
    ['Na2S2O3', 'sodium thiosulfate'],
    ['MgSO4', 'magnesium sulfate'],
  ])('%s is listed, and called by its own name', (text, name) => {
    expect(of(text)).toMatchObject({ listing: 'listed', name });
  });

  it('hydrogen peroxide without a strength shows the strictest bottle', () => {
    expect(codesOf('H2O2')).toEqual(expect.arrayContaining(['H271', 'H314', 'H335', 'H302', 'H332']));
    expect(codesOf('H2O2', 30)).toEqual(expect.arrayContaining(['H302', 'H318']));
    expect(codesOf('H2O2', 30)).not.toContain('H271');
    expect(
      of('H2O2')
        .statements.map(({ text }) => text)
        .join(' '),
    ).toContain('Give the mass percent of your bottle');
  });

  it('carries over hydrofluoric, perchloric and hydrobromic acid, and what depends on pH', () => {
    expect(codesOf('HF')).toEqual(expect.arrayContaining(['H300', 'H310', 'H330', 'H314']));
    expect(codesOf('HClO4')).toEqual(expect.arrayContaining(['H271', 'H314', 'H290', 'H302', 'H373']));
    expect(codesOf('HBr')).toEqual(expect.arrayContaining(['H314', 'H335', 'H290']));
    const onPh = listedHazards()
      .filter(({ limits }) => limits.some(({ dependsOnPh }) => dependsOnPh))
      .map(({ name }) => name);
    expect(onPh).toEqual([
      'calcium hydroxide',
      'barium hydroxide octahydrate',
      'sodium carbonate',
      'sodium hydrogen sulfate',
      'trisodium phosphate',
      'potassium hydrogen sulfate',
    ]);
  });

  it('marks a stricter code that only one side has', () => {
    expect([sureness('KMnO4', 'H314'), sureness('MnSO4', 'H318'), sureness('I2', 'H372')]).toEqual(['m', 'm', 'm']);
  });
});
