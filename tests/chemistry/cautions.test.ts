import { describe, expect, it } from 'vitest';
import { readCsv } from '../../scripts/generate/csv.ts';
import { type Cautions, cautionRows, cautions, cautionsNamed } from '../../src/chemistry/cautions.ts';
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
  it('shows every code of the bottle, and what a limit adds is stricter or one that hides it', () => {
    const bottles = readCsv(published('substances.csv')).filter(
      ({ form = '' }) => !form.startsWith('solution (limits'),
    );
    const stricter: Record<string, string> = {};
    for (const { formula = '', statements = '', signal_word } of bottles) {
      // Two stand in the table by a name.
      const found = of({ '(C6H10O5)n': 'C6H10O5', 'I2 in KI': 'KI3' }[formula] ?? formula);
      if (found.listedNames.length > 1) continue;
      const codes = [...statements.matchAll(/\b(?:EUH\d{3}|H\d{3}[A-Za-z]*)\b/g)].map(([code]) => code);
      const missing = codes.filter((code) => !found.codes.includes(code));
      const added = found.codes.filter((code) => !codes.includes(code));
      if (missing.length + added.length > 0) stricter[formula] = `-${missing.join(' ')} +${added.join(' ')}`;
      if (signal_word === 'Danger') expect([formula, found.signalWord]).toEqual([formula, 'Danger']);
    }
    expect(stricter).toEqual({
      // Sold in several strengths.
      HNO3: '-H331 +H330',
      H2O2: '-H318 +H332 H271 H314 H335',
      C20H14O4: '- +H361f',
      // Stricter than the act, from memory, or another class that the act gives for solutions alone.
      KMnO4: '- +H314 H373',
      K2Cr2O7: '- +H335',
      Na2Cr2O7·2H2O: '- +H335',
      '(NH4)2Cr2O7': '- +H335',
      CrO3: '- +H335',
      CuSO4: '-H319 +H318',
      MnSO4·H2O: '- +H318',
      I2: '- +H315 H319 H335 H372',
    });
  });
  it('says of an unlisted substance that it is unlisted, and never that it is safe', () => {
    for (const formula of ['RbI', 'C60', 'UF6', 'C2H6O3']) {
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
    expect(of('C2H4O2').name).toBe('acetic acid');
    expect(of('C2O2H4').listing).toBe('unlisted');
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
  it.each(['K2CO3·1.5H2O', 'K2CO3·1,5 H2O', 'K2CO3·1½H2O', 'K₂CO₃ • 1.5 H₂O', 'CO3K2·1.5H2O'])(
    'knows %s, whose water is on the list',
    (typed) => {
      expect(of(typed)).toMatchObject({ listing: 'listed', name: 'potassium carbonate' });
    },
  );
  it.each(['K2CO3·2.5H2O', 'K2CO3·2,5 H2O', 'K2CO3·½H2O', 'K2CO3·2½H2O', 'K2CO3.H2O', 'K2CO3·10H2O', 'K2CO3·12.5H2O'])(
    'knows %s as another hydrate of the one that is listed',
    (typed) => {
      const { listing, statements } = of(typed);
      expect(listing).toBe('another hydrate');
      expect(statements[0]).toMatchObject({
        about: 'form',
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
  it.each(['CH3COONa·H2O', 'NaC2H3O2·2H2O', 'NaCH3CO2·H2O'])(
    'knows another hydrate by any of the spellings that are listed: %s',
    (typed) => {
      expect(of(typed)).toMatchObject({ listing: 'another hydrate', name: 'sodium acetate' });
    },
  );
  it.each([
    ['glucose', 'glucose'],
    [' Glucose ', 'glucose'],
    ['Copper(II) sulfate pentahydrate', 'copper(II) sulfate pentahydrate'],
    ['copper(II) sulphate pentahydrate', 'copper(II) sulfate pentahydrate'],
    ['copper(II) sulfate', 'copper(II) sulfate pentahydrate or copper(II) sulfate, anhydrous'],
    ['lye', 'sodium hydroxide'],
    ['KHP', 'potassium hydrogen phthalate'],
    ['I2 in KI', 'iodine in potassium iodide'],
    ['starch', 'starch'],
    ['ethylene glycol', 'ethane-1,2-diol'],
    ['HCl(aq)', 'hydrochloric acid'],
  ])('takes the name %s for %s', (typed, name) => {
    expect(succeeded(cautionsNamed(typed))).toMatchObject({ listing: 'listed', name });
  });
  it('refuses what is neither a formula nor a listed name as it refuses a formula', () => {
    expect(cautionsNamed('nonsense')).toEqual(readFormula('nonsense'));
    expect(cautionsNamed(5)).toMatchObject({ ok: false, error: { code: 'formula-expected' } });
    expect(cautionsNamed('glucose', percent(120))).toMatchObject({ ok: false, error: { code: 'purity-out-of-range' } });
  });
  it('tells substances that share a formula apart by their names, each with its own signal word', () => {
    const rows = cautionRows(of('C3H8O', 5)).map(([word, text]) => [word, text]);
    expect(rows[0]).toEqual(['', 'If it is propan-2-ol:']);
    expect(rows).toContainEqual(['Danger', 'If it is propan-1-ol:']);
    expect(of('C3H8O', 5).signalWord).toBe('Danger');
    expect(linesOf(of('C6H12O6')).map(([text]) => text)).toEqual([
      'If it is glucose:',
      'Not classified by the source we have (two sources agree).',
      'If it is fructose:',
      cautionTexts.notKnown,
      '',
      '',
    ]);
    expect(of('C6H12O6').name).toBe('glucose or fructose');
    // The usual one settles it where neither has any hazard; a hazard in doubt would not.
    expect([of('C6H12O6').verdict, of('C3H8O', 0.5).verdict]).toEqual(['none', 'unsure']);
    expect(succeeded(cautionsNamed('fructose')).verdict).toBe('unsure');
  });
  it('takes the stricter side where a form is weighed that the limits do not count', () => {
    // 10 % of anhydrous copper(II) chloride holds as much copper as 12.7 % of the dihydrate.
    expect(codesOf(of('CuCl2', 8))).toContain('H315');
    expect(codesOf(of('CuCl2·2H2O', 9.4))).not.toContain('H315');
    expect(codesOf(of('Na2CO3·10H2O', 10))).toContain('H319');
  });
  it('says everything of a substance in the bottle, line by line', () => {
    expect(of('NH4Cl')).toEqual({
      listing: 'listed',
      name: 'ammonium chloride',
      listedNames: ['ammonium chloride'],
      verdict: 'hazards',
      codes: ['H302', 'H319'],
      unknownCodes: [],
      waste: { goesTo: 'waste beaker', metal: '' },
      signalWord: 'Warning',
      pictograms: ['GHS07'],
      statements: [
        {
          about: 'hazard',
          code: 'H302',
          text: 'H302: harms if swallowed (harmonised, CLP Annex VI)',
          plain: 'Harms if swallowed.',
          advice: adviceTexts.mouth,
          confidence: 'h',
        },
        {
          about: 'hazard',
          code: 'H319',
          text: 'H319: irritates eyes strongly (harmonised, CLP Annex VI)',
          plain: 'Irritates eyes strongly.',
          advice: `${adviceTexts.eyes} ${adviceTexts.gloves}`,
          confidence: 'h',
        },
        { about: 'waste', code: '', text: '', plain: '', advice: cautionTexts.beaker, confidence: undefined },
        { about: 'deferring', code: '', text: '', plain: '', advice: cautionTexts.deferring, confidence: undefined },
      ],
    });
  });
  it('says everything of a substance that is unlisted, not classified or not known', () => {
    expect(of('XeF2')).toMatchObject({
      listing: 'unlisted',
      name: '',
      signalWord: '',
      pictograms: [],
      verdict: 'unsure',
    });
    expect(linesOf(of('XeF2'))).toEqual([
      [cautionTexts.unlisted, cautionTexts.unlistedAdvice],
      ['', cautionTexts.beaker],
      deferring,
    ]);
    expect(of('CaCO3')).toMatchObject({ name: 'calcium carbonate', signalWord: '', pictograms: [], verdict: 'none' });
    expect(linesOf(of('CaCO3'))).toEqual([
      ['Not classified by the source we have (two sources agree).', cautionTexts.notClassifiedAdvice],
      ['', cautionTexts.beaker],
      deferring,
    ]);
    expect(of('CO(NH2)2')).toMatchObject({ name: 'urea', signalWord: '', pictograms: [], verdict: 'unsure' });
    expect(linesOf(of('CO(NH2)2'))[0]).toEqual([
      'Not classified by the source we have (one source, not harmonised).',
      cautionTexts.notClassifiedAdvice,
    ]);
    expect(of('C6H8O6')).toMatchObject({ name: 'ascorbic acid', signalWord: '', pictograms: [], verdict: 'unsure' });
    expect(linesOf(of('C6H8O6'))[0]).toEqual([cautionTexts.notKnown, cautionTexts.notKnownAdvice]);
    expect(of('C14H14N3NaO3S', 5).statements[0]?.text).toBe(cautionTexts.strengthNotKnown);
  });
  it('says when only another hydrate is listed', () => {
    const found = of('ZnSO4·6H2O');
    expect(found.listing).toBe('another hydrate');
    expect(found.statements[0]?.text).toContain('Only ZnSO4·7H2O is listed');
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
    // 1 % of the salt is 0.9525 % of active chlorine, which the limits count.
    ['NaClO', 2.6246, 'H315 H319 H400 H411', 'Warning', 'GHS07 GHS09'],
    ['NaClO', 2.4937, 'H315 H319 H400 H411', 'Warning', 'GHS07 GHS09'],
    ['NaClO', 2.493, 'H315 H319 H412', 'Warning', 'GHS07'],
    ['NaClO', 1, 'H315 H319 H412', 'Warning', 'GHS07'],
    ['NaClO', 3.15, 'H315 H318 H400 H411', 'Danger', 'GHS05 GHS09'],
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
        [cautionTexts.school('care: poisonous; dilute solution for students'), cautionTexts.schoolAdvice],
      ],
    ],
    [
      'KNO3',
      5,
      [
        [cautionTexts.notClassifiedAsFarAsKnown, cautionTexts.notClassifiedAsFarAsKnownAdvice],
        [cautionTexts.partNotKnown('H272 (makes a fire burn more fiercely)'), cautionTexts.partNotKnownAdvice],
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
    ['C6H8O6', 5, [[cautionTexts.notKnown, cautionTexts.notKnownAdvice]]],
    ['KBr', 5, [[cautionTexts.notClassified, cautionTexts.notClassifiedAdvice]]],
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
        [cautionTexts.notClassifiedAsFarAsKnown, cautionTexts.notClassifiedAsFarAsKnownAdvice],
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
    const found = of(formula, at);
    const told = found.statements.filter(({ about }) => about !== 'waste' && about !== 'deferring');
    expect(told.map(({ text, advice }) => [text, advice])).toEqual(lines);
    expect(linesOf(found).slice(-1)).toEqual([deferring]);
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
    expect(of(formula, at).statements.filter(({ about }) => about === 'care')).toEqual([]);
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
  it('is not sure of what burns by its pH, however little of it there is [CLP Annex I, 3.2.3.1.2]', () => {
    expect(of('Ca(OH)2', 0.16)).toMatchObject({ verdict: 'unsure', signalWord: '' });
    expect(of('Na2CO3', 2)).toMatchObject({ verdict: 'unsure' });
    expect(of('NaHCO3', 2)).toMatchObject({ verdict: 'none' });
  });
  it('does not call unclassified what is only remembered', () => {
    expect(of('NaH2PO4').statements[0]?.text).toBe(cautionTexts.notKnown);
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
      ...listedHazards().flatMap(({ codes: sold }) => sold.map(({ code }) => code.replace('/3', ''))),
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
