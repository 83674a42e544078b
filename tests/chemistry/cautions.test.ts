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
const linesOf = ({ statements }: Cautions) => statements.map(({ text, advice }) => [text, advice]);
const deferring = ['', cautionTexts.deferring];
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
  it.each(['·', '•', '*', '.', '∙', '⋅', '‧', '・', ' . '])('takes “%s” for the dot before water', (dot) => {
    expect(of(`CuSO4${dot}5H2O`)).toEqual(of('CuSO4·5H2O'));
  });
  it.each(['Ca[OH]2', 'Ca{OH}2', 'Ca(OH)₂', 'Ca (O H) 2'])('takes %s for Ca(OH)2', (typed) => {
    expect(of(typed)).toEqual(of('Ca(OH)2'));
  });
  it.each(['K2CO3·1.5H2O', 'K2CO3·1,5 H2O', 'K2CO3·½H2O', 'K2CO3·1½H2O', 'K2CO3.H2O', 'K2CO3·10H2O', 'K2CO3·12.5H2O'])(
    'knows %s as another hydrate of the one that is listed',
    (typed) => {
      const { listing, statements } = of(typed);
      expect(listing).toBe('another hydrate');
      expect(statements[0]).toEqual({
        code: '',
        text: 'Only K2CO3 is listed. What follows is for that form and may differ for the one you typed.',
        advice: '',
        confidence: undefined,
      });
    },
  );
  it.each(['K2CO3·H2O2', 'K2CO3·NaCl', 'K2CO3H2O', 'H2O·K2CO3', 'K2·H2OCO3'])(
    'does not take %s for a hydrate',
    (typed) => {
      expect(of(typed).listing).toBe('unlisted');
    },
  );
  it.each(['CH3COONa', 'NaC2H3O2', 'NaCH3CO2·H2O'])(
    'knows another hydrate by any of the spellings that are listed: %s',
    (typed) => {
      expect(of(typed)).toMatchObject({ listing: 'another hydrate', name: 'sodium acetate trihydrate' });
    },
  );
  it('says everything of a substance in the bottle, line by line', () => {
    expect(of('NH4Cl')).toEqual({
      listing: 'listed',
      name: 'ammonium chloride',
      signalWord: 'Warning',
      pictograms: ['GHS07'],
      statements: [
        {
          code: 'H302',
          text: 'H302: harms if swallowed (harmonised, CLP Annex VI)',
          advice: adviceTexts.mouth,
          confidence: 'h',
        },
        {
          code: 'H319',
          text: 'H319: irritates eyes strongly (harmonised, CLP Annex VI)',
          advice: `${adviceTexts.eyes} ${adviceTexts.gloves}`,
          confidence: 'h',
        },
        { code: '', text: '', advice: cautionTexts.deferring, confidence: undefined },
      ],
    });
  });
  it('says everything of a substance that is unlisted, not classified or not known', () => {
    const bare = { name: '', signalWord: '', pictograms: [], statements: expect.anything() };
    expect(of('XeF2')).toEqual({ ...bare, listing: 'unlisted' });
    expect(linesOf(of('XeF2'))).toEqual([[cautionTexts.unlisted, cautionTexts.unlistedAdvice], deferring]);
    expect(of('CaCO3')).toEqual({ ...bare, listing: 'listed', name: 'calcium carbonate' });
    expect(linesOf(of('CaCO3'))).toEqual([
      ['Not classified by the source we have (one source, not harmonised).', cautionTexts.notClassifiedAdvice],
      deferring,
    ]);
    expect(of('C6H12O6')).toEqual({ ...bare, listing: 'listed', name: 'glucose' });
    expect(linesOf(of('C6H12O6'))).toEqual([[cautionTexts.notKnown, cautionTexts.notKnownAdvice], deferring]);
  });
  it('says when only another hydrate is listed', () => {
    const found = of('CuSO4');
    expect(found.listing).toBe('another hydrate');
    expect(found.statements[0]?.text).toContain('Only CuSO4·5H2O is listed');
    expect(codesOf(found)).toEqual(['H302', 'H318', 'H410']);
    expect(of('CaCl2').listing).toBe('listed');
  });
  // What a label of a solution says at each end of the published limits.
  it.each([
    ['HCl', 25, 'H314 H335', 'Danger', 'GHS05 GHS07'],
    ['HCl', 24.99, 'H314 H335', 'Danger', 'GHS05 GHS07'],
    ['HCl', 23.76, 'H314 H335', 'Danger', 'GHS05 GHS07'],
    ['HCl', 23.74, 'H315 H319 H335', 'Warning', 'GHS07'],
    ['HCl', 10, 'H315 H319 H335', 'Warning', 'GHS07'],
    ['HCl', 9.51, 'H315 H319 H335', 'Warning', 'GHS07'],
    ['HCl', 9.49, '', '', ''],
    ['HNO3', 60, 'H314 H331', 'Danger', 'GHS05 GHS06'],
    ['HNO3', 65, 'H272 H314 H331', 'Danger', 'GHS03 GHS05 GHS06'],
    ['HNO3', 70, 'H272 H314 H330', 'Danger', 'GHS03 GHS05 GHS06'],
    ['HClO4', 45, 'H272 H314', 'Danger', 'GHS03 GHS05'],
    ['HClO4', 50, 'H271 H314', 'Danger', 'GHS03 GHS05'],
    ['HClO4', 60, 'H271 H314', 'Danger', 'GHS03 GHS05'],
    ['HF', 5, 'H301 H310 H314 H331', 'Danger', 'GHS05 GHS06'],
    ['BaCl2', 35, 'H301 H332', 'Danger', 'GHS06'],
    ['BaCl2', 10, 'H302', 'Warning', 'GHS07'],
    ['ZnCl2', 3, 'H315 H318', 'Danger', 'GHS05'],
    ['ZnCl2', 4.75, 'H314 H335', 'Danger', 'GHS05 GHS07'],
    ['NiSO4·6H2O', 22, 'H315 H317 H334 H341 H350i H360D H372 H411', 'Danger', 'GHS08 GHS09'],
    ['NiSO4', 0.05, 'H317', 'Warning', 'GHS07'],
    ['NiSO4·6H2O', 25, 'H302 H315 H317 H334 H341 H350i H360D H372 H410', 'Danger', 'GHS07 GHS08 GHS09'],
    ['NiSO4·6H2O', 0.26, 'H317 H350i H373 H412', 'Danger', 'GHS07 GHS08'],
    ['NaClO', 2.5, 'H315 H319 H400 H411', 'Warning', 'GHS07 GHS09'],
    ['NaClO', 2.375, 'H315 H319 H400 H411', 'Warning', 'GHS07 GHS09'],
    ['NaClO', 2.374, 'H315 H319 H412', 'Warning', 'GHS07'],
    ['NaClO', 1, 'H315 H319 H412', 'Warning', 'GHS07'],
    ['NaClO', 3, 'H315 H318 H400 H411', 'Danger', 'GHS05 GHS09'],
    ['KI', 5, 'H373', 'Warning', 'GHS08'],
    ['Na2CO3', 10, 'H319', 'Warning', 'GHS07'],
  ])('labels %s of %d % by mass with %s', (formula, at, codes, signalWord, pictograms) => {
    const found = of(formula, at);
    expect([codesOf(found).join(' '), found.signalWord, found.pictograms.join(' ')]).toEqual([
      codes,
      signalWord,
      pictograms,
    ]);
  });
  it('is not close to a limit that lies far below', () => {
    expect(linesOf(of('HCl', 30)).map(([text]) => text)).not.toContain(cautionTexts.nearEdge);
  });
  it('says of each line how sure it is', () => {
    const sure = of('K2CrO4', 10).statements.map(({ code, text }) => [code, /\(([^()]*)\)$/.exec(text)?.[1]]);
    expect(sure).toContainEqual(['H335', 'one source, not harmonised']);
    expect(sure).toContainEqual(['H340', 'harmonised, CLP Annex VI']);
  });
  it('counts the cobalt of a salt, and weighs the salt as it is written', () => {
    // 1 % of cobalt, from which H334 holds, is 2.203 % of the chloride and 4.037 % of its hexahydrate.
    for (const [formula, edge] of [
      ['CoCl2', 2.203],
      ['CoCl2·6H2O', 4.037],
    ] as const) {
      expect(codesOf(of(formula, edge * 0.951))).toContain('H334');
      expect(codesOf(of(formula, edge * 0.949))).not.toContain('H334');
    }
  });
  it.each([
    ['KOH', 24, false],
    ['KOH', 23.76, false],
    ['KOH', 23.74, true],
    ['KOH', 12.51, true],
    ['KOH', 12.49, false],
    ['KOH', 25, false],
    ['KOH', 30, false],
    ['HCl', 20, false],
  ])(
    'from half a least class up to where it counts as reached, it is mentioned: %s of %d % by mass: %s',
    (formula, at, is) => {
      const codes = 'H302 (harms if swallowed)';
      expect(linesOf(of(formula, at)).some(([text]) => text === cautionTexts.minimumClass(codes))).toBe(is);
    },
  );
  it.each([
    [
      'BaCl2',
      3,
      [
        [cautionTexts.notClassifiedAsFarAsKnown, cautionTexts.notClassifiedAsFarAsKnownAdvice],
        [cautionTexts.minimumClass('H302 (harms if swallowed)'), cautionTexts.partNotKnownAdvice],
      ],
    ],
    [
      'KNO3',
      5,
      [
        [cautionTexts.notClassifiedAsFarAsKnown, cautionTexts.notClassifiedAsFarAsKnownAdvice],
        [cautionTexts.partNotKnown('H272 (makes a fire burn harder)'), cautionTexts.partNotKnownAdvice],
      ],
    ],
    [
      'HNO3',
      0.5,
      [
        [cautionTexts.notClassifiedAsFarAsKnown, cautionTexts.notClassifiedAsFarAsKnownAdvice],
        [
          cautionTexts.partNotKnown('EUH071 (burns the airways), H290 (eats away some metals)'),
          cautionTexts.partNotKnownAdvice,
        ],
        [cautionTexts.school('concentrated: staff only'), cautionTexts.schoolAdvice],
      ],
    ],
    ['KBr', 5, [[cautionTexts.notKnown, cautionTexts.notKnownAdvice]]],
    ['NaCl', 5, [[cautionTexts.notClassified, cautionTexts.notClassifiedAdvice]]],
    [
      'Na2CO3',
      9.6,
      [
        ['H319: irritates eyes strongly (harmonised, CLP Annex VI)', `${adviceTexts.eyes} ${adviceTexts.gloves}`],
        [cautionTexts.nearEdge, ''],
        [cautionTexts.extremePh, cautionTexts.extremePhAdvice],
      ],
    ],
    [
      'Na2CO3',
      5,
      [
        [cautionTexts.notClassified, cautionTexts.notClassifiedAdvice],
        [cautionTexts.extremePh, cautionTexts.extremePhAdvice],
      ],
    ],
    [
      'KOH',
      1,
      [
        ['H315: irritates skin (harmonised, CLP Annex VI)', adviceTexts.gloves],
        ['H319: irritates eyes strongly (harmonised, CLP Annex VI)', `${adviceTexts.eyes} ${adviceTexts.gloves}`],
        [cautionTexts.partNotKnown('H290 (eats away some metals)'), cautionTexts.partNotKnownAdvice],
        [cautionTexts.school('solid: care, staff weigh out for younger students'), cautionTexts.schoolAdvice],
      ],
    ],
  ])('says of %s of %d % by mass what is known and what is not', (formula, at, lines) => {
    expect(linesOf(of(formula, at))).toEqual([...lines, deferring]);
  });
  it.each([
    ['AgNO3', undefined],
    ['HCl', 20],
    ['NaOH', 1],
    ['K2Cr2O7', undefined],
    ['ZnCl2', 50],
  ])('tells how to dilute or dissolve only acids and strong bases that burn, not %s', (formula, at) => {
    const advice = linesOf(of(formula, at)).map(([, words]) => words);
    expect(advice).not.toContain('');
    expect(linesOf(of('AgNO3')).filter(([text]) => text === '')).toEqual([deferring]);
    expect(advice).not.toContain(adviceTexts.acidToWater);
    expect(advice).not.toContain(adviceTexts.heatOfSolution);
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
    for (const acid of ['HCl', 'H2SO4', 'HNO3', 'H3PO4', 'CH3COOH', 'HCOOH', 'HClO4', 'HF', 'HBr']) {
      expect(of(acid).statements.map(({ advice }) => advice)).toContain(adviceTexts.acidToWater);
      expect(of(acid, 40).statements.map(({ advice }) => advice)).toContain(adviceTexts.acidToWater);
    }
    for (const base of ['NaOH', 'KOH']) expect(linesOf(of(base, 10))).toContainEqual(['', adviceTexts.heatOfSolution]);
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
