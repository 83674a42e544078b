import { readFileSync } from 'node:fs';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { fuzzReaders } from '../../scripts/fuzz/fuzzReaders.ts';
import { readCsv } from '../../scripts/generate/csv.ts';
import { elementsSource } from '../../scripts/generate/elements.ts';
import { composition } from '../../src/chemistry/composition.ts';
import { elementPercent } from '../../src/chemistry/elementPercent.ts';
import { allElements, elementBySymbol } from '../../src/chemistry/elements.ts';
import { molarMass } from '../../src/chemistry/molarMass.ts';
import { formulaLengthMax, readFormula } from '../../src/chemistry/readFormula.ts';
import { errorText, shortErrorText } from '../../src/errors/errorText.ts';
import { cases, seed } from '../depth.ts';
import { wellSaid } from '../errors/wellSaid.ts';
import { succeeded } from './succeeded.ts';

const published = (name: string) => new URL(`../published/${name}`, import.meta.url).pathname;
const massOf = (text: string): number => succeeded(molarMass(succeeded(readFormula(text))));
const atomsOf = (text: string): string =>
  succeeded(readFormula(text))
    .atoms.map(({ element, count }) => `${element}${count}`)
    .join(' ');
const messageOf = (text: string): string => {
  const read = readFormula(text);
  return read.ok ? `read as ${read.value.text}` : errorText(read.error);
};
const shortOf = (text: string): string => {
  const read = readFormula(text);
  return read.ok ? '' : shortErrorText(read.error);
};

describe('readFormula', () => {
  it.each([
    ['H2O', 'H2 O1'],
    ['H₂O', 'H2 O1'],
    [' H 2 O ', 'H2 O1'],
    ['Co', 'Co1'],
    ['CO', 'C1 O1'],
    ['Ca(OH)2', 'Ca1 O2 H2'],
    ['Ca[OH]2', 'Ca1 O2 H2'],
    ['Ca{OH}₂', 'Ca1 O2 H2'],
    ['[Co(NH3)6]Cl3', 'Co1 N6 H18 Cl3'],
    ['{Fe[(CN)6]}', 'Fe1 C6 N6'],
    ['CH3(CH2)16COOH', 'C18 H36 O2'],
    ['(NH4)2Fe(SO4)2·6H2O', 'N2 H20 Fe1 S2 O14'],
    ['K4[Fe(CN)6]·3H2O', 'K4 Fe1 C6 N6 H6 O3'],
    ['[13C]H4', '[13C]1 H4'],
    ['¹³CH4', '[13C]1 H4'],
    ['[18F]C6H11O5', '[18F]1 C6 H11 O5'],
    ['D2O', '[2H]2 O1'],
    ['[2H]2O', '[2H]2 O1'],
    ['T2O', '[3H]2 O1'],
    ['Na99999', 'Na99999'],
    ['( Na ) Cl', 'Na1 Cl1'],
    ['OH²', 'O1 H2'],
    ['S(NH₄)²', 'S1 N2 H8'],
    ['O¹⁸', 'O18'],
    ['¹⁸O', '[18O]1'],
    ['C₁₀H₂₂', 'C10 H22'],
    ['Al(I)3', 'Al1 I3'],
    ['K(ICl4)', 'K1 I1 Cl4'],
    ['Na(CuI)', 'Na1 Cu1 I1'],
    ['(VI)', 'V1 I1'],
    ['SO42-', 'S1 O4'],
    ['SO4 2-', 'S1 O4'],
    ['Ca 2+', 'Ca1'],
    ['Ca²⁺', 'Ca1'],
    ['CaSO4·½H2O·¼NaCl', 'Ca1 S1 O4.5 H1 Na0.25 Cl0.25'],
    ['CuSO4·99999H2O', 'Cu1 S1 O100003 H199998'],
    ['CuSO4·0.123456H2O', 'Cu1 S1 O4.123456 H0.246912'],
    ['Na1·5Cl', 'Na1 Cl5'],
    ['Na.5Cl', 'Na1 Cl5'],
    ['CuSO4.5H2O', 'Cu1 S1 O9 H10'],
  ])('counts the atoms of %s', (text, atoms) => {
    expect(atomsOf(text)).toBe(atoms);
  });

  it.each(['[1H]', '[7H]', '[6C]', '[22C]'])(
    'takes %s: from no neutron up to the heaviest isotopes known [NUBASE2020, from memory]',
    (isotope) => {
      expect(atomsOf(isotope)).toBe(`${isotope}1`);
    },
  );
  it.each(['[0H]', '[8H]', '[5C]', '[23C]'])('refuses %s, a mass number beyond those', (isotope) => {
    expect(readFormula(isotope)).toMatchObject({ error: { code: 'isotope-unlikely' } });
  });

  const water = ['·', '•', '*', '.', ' · ', '⋅', '∙', '.  ', '×', ' × ', ' x ', ' X ', ',', ', '];
  it.each([
    ['CuSO4', '5H2O', 5],
    ['CuSO₄', '5H₂O', 5],
    ['Na2CO3', '10 H2O', 10],
    ['LiOH', 'H2O', 1],
    ['CaSO4', '0.5H2O', 0.5],
    ['CaSO4', '½H2O', 0.5],
    ['CaSO4', '1/2H2O', 0.5],
    ['CaSO4', '1/2 H2O', 0.5],
    ['CaSO4', '1⁄2H2O', 0.5],
    ['K2CO3', '3/2H2O', 1.5],
    ['K2CO3', '1 1/2 H2O', 1.5],
    ['K2CO3', '1.5H2O', 1.5],
    ['K2CO3', '1½H2O', 1.5],
    ['K2CO3', '1 ½ H2O', 1.5],
    ['CaSO4', '¼H2O', 0.25],
    ['CaSO4', '¾H2O', 0.75],
    ['CaSO4', '12,25H2O', 12.25],
    ['Na2SO4', '3H2O·7(H2O)', 10],
    ['Na2SO4', '10(OH2)', 10],
    ['CaSO4', '0,5H2O', 0.5],
  ] as const)('reads the water of %s with %s after every separator', (salt, water_, count) => {
    for (const separator of water) {
      const read = readFormula(`${salt}${separator}${water_}`);
      expect(read).toMatchObject({ ok: true, value: { hydrate: { count } } });
    }
  });

  it.each(['H2O', 'H2O·NaCl', 'NaCl·H2O2', 'NaCl·HO', 'NaCl·H2S', 'NaCl·H2SO', 'NaCl·D2O', 'NaCl·NaOH', 'NaCl·2H3O'])(
    'finds no water of hydration in %s',
    (text) => {
      expect(succeeded(readFormula(text)).hydrate).toBeUndefined();
    },
  );
  it.each([
    ['CuSO4 x 5H2O', 'CuSO4 · 5H2O'],
    ['CuSO4×5H2O', 'CuSO4·5H2O'],
    ['CuSO4,5H2O', 'CuSO4·5H2O'],
    ['CaSO4·1/2H2O', 'CaSO4·½H2O'],
    ['CaSO4, 1/2 H2O', 'CaSO4· ½ H2O'],
    ['K2CO3 x 3/2 H2O', 'K2CO3 · 1.5 H2O'],
    ['CuSO4*5H2O', 'CuSO4*5H2O'],
  ])('writes the separator and the fraction of %s as formulas have them: %s', (typed, text) => {
    expect(succeeded(readFormula(typed)).text).toBe(text);
  });
  it('keeps what was typed, unit by unit', () => {
    expect(readFormula(' Ca(OH)2·½H2O ')).toEqual({
      ok: true,
      value: {
        text: 'Ca(OH)2·½H2O',
        charge: 0,
        units: [
          {
            coefficient: 1,
            parts: [
              { kind: 'element', element: 'Ca', count: 1 },
              {
                kind: 'group',
                count: 2,
                parts: [
                  { kind: 'element', element: 'O', count: 1 },
                  { kind: 'element', element: 'H', count: 1 },
                ],
              },
            ],
          },
          {
            coefficient: 0.5,
            parts: [
              { kind: 'element', element: 'H', count: 2 },
              { kind: 'element', element: 'O', count: 1 },
            ],
          },
        ],
        atoms: [
          { element: 'Ca', count: 1 },
          { element: 'O', count: 2.5 },
          { element: 'H', count: 3 },
        ],
        hydrate: { count: 0.5 },
      },
    });
  });

  it.each([
    ['SO4^2-', -2],
    ['SO₄²⁻', -2],
    ['SO4(2-)', -2],
    ['SO4^-2', -2],
    ['SO4-2', -2],
    ['SO42-', -2],
    ['SO4 2-', -2],
    ['SO4--', -2],
    ['NH4+', 1],
    ['NO3-', -1],
    ['PO43-', -3],
    ['Cr2O72-', -2],
    ['CO32-', -2],
    ['HCO3-', -1],
    ['Ca²⁺', 2],
    ['Ca^2+', 2],
    ['Ca+2', 2],
    ['Ca++', 2],
    ['Cl-', -1],
    ['Cl−', -1],
    ['Na⁺', 1],
    ['[Fe(CN)6]4-', -4],
    ['Fe(CN)6^3-', -3],
    ['NaCl', 0],
  ] as const)('reads the charge of %s as %d', (text, charge) => {
    expect(readFormula(text)).toMatchObject({ ok: true, value: { charge } });
  });
  it.each([
    ['Ca2+', 'Ca^2+ or Ca2^+'],
    ['Fe3+', 'Fe^3+ or Fe3^+'],
    ['O2-', 'O^2- or O2^-'],
    ['Hg22+', 'Hg2^2+ or Hg22^+'],
    ['XeF3+', 'XeF^3+ or XeF3^+'],
  ])('shows both readings of %s', (text, both) => {
    expect(messageOf(text)).toContain(`could be ${both}.`);
    expect(shortOf(text)).toBe(`⚠ ${both}?`);
  });

  it('says what is wrong with the likeliest mistakes and what to do', () => {
    expect(messageOf('nacl')).toBe('“nacl” needs a capital letter where each symbol begins. Did you mean NaCl?');
    expect(shortOf('nacl')).toBe('⚠ NaCl?');
    expect(messageOf('Ca(OH2')).toBe('The bracket at character 3 of “Ca(OH2” is never closed. Add “)”, as in Ca(OH)2.');
    expect(shortOf('Ca(OH2')).toBe('⚠ formula: “)” missing');
    expect(messageOf('2NaCl')).toContain('Leave it out');
    expect(readFormula('NaXy')).toMatchObject({
      ok: false,
      error: { code: 'element-unknown', received: '“Xy”', at: { text: 'NaXy', from: 2 } },
    });
  });
  it.each([
    ['NACL', 'NaCl'],
    ['kbr', 'KBr'],
    ['h2so4', 'H2SO4'],
    ['cuso4.5h2o', 'CuSO4.5H2O'],
    ['NaOh', 'NaOH'],
    ['naoh', 'NaOH'],
    ['kmno4', 'KMnO4'],
    ['MGCL2', 'MgCl2'],
  ])('offers the capitals of %s', (text, meant) => {
    expect(messageOf(text)).toContain('Did you mean');
    expect(messageOf(text)).toContain(meant);
  });
  it.each([
    ['Ca)OH', 2],
    ['(NaCl]', 5],
    ['()', 1],
    ['Na0', 2],
    ['H02', 1],
    ['Na100000', 2],
    ['Na1.5Cl', 3],
    ['Fe0.95O', 2],
    ['H2O·', 3],
    ['·H2O', 0],
    ['H2O··H2O', 4],
    ['Na-Cl', 2],
    ['Na+Cl-', 2],
    ['<b>NaCl</b>', 0],
    ['__proto__', 0],
    ['=1+1', 0],
    ['NaCl(s)', 4],
    ['FeCl3(aq)', 5],
    ['Fe(III)Cl3', 2],
    ['[C13]H4', undefined],
    ['[13]C', 0],
    ['[99H]', 0],
    ['CaSO4·5', undefined],
    ['Na(2Cl)', 3],
    ['(H2O·NaCl)', 4],
    ['½H2O', 0],
    ['🧂', 0],
    ['Naé', 2],
    ['nacl·', undefined],
  ] as const)('points at the place in %s', (text, from) => {
    const read = readFormula(text);
    if (from === undefined) {
      if (text !== '[C13]H4') expect(read.ok).toBe(false);
      return;
    }
    expect(read).toMatchObject({ ok: false, error: { at: { from } } });
    expect(messageOf(text)).toMatch(wellSaid);
    expect(messageOf(text).length).toBeLessThanOrEqual(230);
  });
  it.each([true, 5, new Date(0), null, undefined, '', '  '])('refuses %s, which is no text', (cell) => {
    expect(readFormula(cell)).toMatchObject({ ok: false, error: { code: 'formula-expected', argument: 'formula' } });
  });

  it('keeps to its limits of length and depth', () => {
    expect(readFormula('H'.repeat(formulaLengthMax)).ok).toBe(true);
    expect(readFormula('H'.repeat(formulaLengthMax + 1))).toMatchObject({ error: { code: 'formula-too-long' } });
    expect(readFormula(`${'('.repeat(20)}H${')'.repeat(20)}`).ok).toBe(true);
    expect(readFormula(`${'('.repeat(21)}H${')'.repeat(21)}`)).toMatchObject({ error: { code: 'formula-too-deep' } });
    for (const text of [
      '('.repeat(100_000),
      'constructor',
      '__proto__',
      'toString',
      'H'.repeat(1e6),
      '9'.repeat(1e5),
    ]) {
      expect(readFormula(text).ok).toBe(false);
    }
  });
  it('never throws and never reads nonsense in random and mutated texts', () => {
    const { failures, formulas, quantities } = fuzzReaders({ seed, texts: cases({ short: 1500, deep: 20_000 }) });
    expect(failures).toEqual([]);
    expect(formulas).toBeGreaterThan(100);
    expect(quantities).toBeGreaterThan(100);
  });
});

describe('a formula that is read again', () => {
  it('is the one that was read before; what cannot be read names the argument of its own call', () => {
    expect(readFormula('CuSO4·5H2O')).toBe(readFormula(' CuSO4·5H2O ', 'solute'));
    for (const argument of ['formula', 'solute']) {
      expect(readFormula('nacl', argument)).toMatchObject({ ok: false, error: { argument } });
    }
  });
});

describe('elements', () => {
  it('are those of the published table, in its latest edition', () => {
    expect(readFileSync(new URL('../../src/chemistry/elementTable.generated.ts', import.meta.url), 'utf8')).toBe(
      elementsSource(published('atomic-weights.csv')),
    );
    const rows = readCsv(published('atomic-weights.csv'));
    expect(allElements().length).toBe(118);
    for (const { symbol = '', Z, calculation_value = '', has_standard_atomic_weight } of rows) {
      expect(elementBySymbol(symbol)).toMatchObject({
        atomicNumber: Number(Z),
        weight: has_standard_atomic_weight === 'yes' ? Number(calculation_value) : undefined,
      });
    }
  });
  it.each([
    ['Zr', 91.222],
    ['Gd', 157.249],
    ['Lu', 174.96669],
  ])('carry the revision of 2024 for %s [CIAAW 2024]', (symbol, weight) => {
    expect(massOf(symbol)).toBe(weight);
  });
  it('say why an element has no standard atomic weight, and offer a mass number, for all 34 of them', () => {
    const without = allElements().filter(({ weight }) => weight === undefined);
    expect(without.length).toBe(34);
    for (const { symbol } of without) {
      const mass = molarMass(succeeded(readFormula(`${symbol}Cl`)));
      expect(mass).toMatchObject({ ok: false, error: { code: 'atomic-weight-none', brief: symbol } });
      const [offered = ''] = (!mass.ok && /\[\d+[A-Z][a-z]?\]/.exec(mass.error.advice ?? '')) || [];
      expect(massOf(offered)).toBe(Number(/\d+/.exec(offered)?.[0]));
    }
  });
});

describe('molarMass', () => {
  const listed = readCsv(published('reagents.csv'));
  it.each(
    Array.from(new Map(listed.map((row) => [row.formula ?? '', row]))).map(([formula, row]) => ({
      formula,
      calculated: Number(row.molar_mass_calculated),
      pubchem: row.molar_mass_pubchem === '' ? undefined : Number(row.molar_mass_pubchem),
    })),
  )(
    'of $formula is that of the list of reagents [recalculated; PubChem by an MIT-licensed data set]',
    ({ formula, calculated, pubchem }) => {
      expect(massOf(formula)).toBeCloseTo(calculated, 3);
      // Where the data set has the substance without its water, it is no second opinion.
      if (pubchem !== undefined && Math.abs(pubchem / calculated - 1) < 0.01) {
        // PubChem rounds lead to 207 and zinc to 65.4.
        expect(Math.abs(massOf(formula) / pubchem - 1)).toBeLessThan(/Pb|Zn/.test(formula) ? 1e-3 : 1.2e-4);
      }
    },
  );

  /** Lowered digits, which look like no letter: H20 would be asked about. */
  const lowered = (count: number | string) => `${count}`.replace(/\d/g, (digit) => '₀₁₂₃₄₅₆₇₈₉'.charAt(Number(digit)));
  const symbols = fc.constantFrom('H', 'C', 'N', 'O', 'Na', 'Cl', 'K', 'Br', 'S', 'Fe', 'Cu', 'Zn', 'Pb', 'D', '[13C]');
  const part = fc
    .tuple(symbols, fc.integer({ min: 1, max: 40 }))
    .map(([symbol, count]) => `${symbol}${count === 1 ? '' : lowered(count)}`);
  const parts = fc.array(part, { minLength: 1, maxLength: 8 });
  it('is the sum of its groups', () => {
    fc.assert(
      fc.property(parts, parts, fc.integer({ min: 1, max: 30 }), (one, other, times) => {
        const [first, second] = [one.join(''), other.join('')];
        const whole = massOf(`${first}(${second})${times}`);
        expect(Math.abs(whole / (massOf(first) + times * massOf(second)) - 1)).toBeLessThan(1e-13);
      }),
      { numRuns: cases({ short: 200, deep: 5000 }) },
    );
  });
  it('does not depend on the order of atoms', () => {
    fc.assert(
      fc.property(
        parts.chain((list) => fc.tuple(fc.constant(list), fc.shuffledSubarray(list, { minLength: list.length }))),
        ([one, other]) => {
          expect(Math.abs(massOf(one.join('')) / massOf(other.join('')) - 1)).toBeLessThan(1e-13);
        },
      ),
      { numRuns: cases({ short: 200, deep: 5000 }) },
    );
  });
  it('of a hydrate is that of salt and water in every spelling', () => {
    const spellings = fc.record({
      salt: fc.constantFrom('CuSO4', 'Na2CO3', 'CaCl2', 'Fe(NO3)3', 'MgSO4'),
      count: fc.integer({ min: 1, max: 12 }),
      separator: fc.constantFrom('·', '•', '*', '.', ' . ', '⋅', '×', ' × ', ' x ', ',', ', '),
      isLowered: fc.boolean(),
    });
    fc.assert(
      fc.property(spellings, ({ salt, count, separator, isLowered }) => {
        const shown = (text: string) => (isLowered ? lowered(text) : text);
        const whole = massOf(`${shown(salt)}${separator}${count}${shown('H2O')}`);
        expect(Math.abs(whole / (massOf(salt) + count * massOf('H2O')) - 1)).toBeLessThan(1e-13);
        expect(atomsOf(`${shown(salt)}${separator}${count}${shown('H2O')}`)).toBe(atomsOf(`${salt}·${count}H2O`));
      }),
      { numRuns: cases({ short: 200, deep: 5000 }) },
    );
  });
});

describe('composition and elementPercent', () => {
  it('add up to the whole, and agree with each other', () => {
    for (const formula of ['CuSO4·5H2O', 'C9H8O4', 'K4[Fe(CN)6]·3H2O', 'D2O', 'NaHCO3']) {
      const read = succeeded(readFormula(formula));
      const shares = succeeded(composition(read));
      expect(shares.reduce((sum, { percent }) => sum + percent, 0)).toBeCloseTo(100, 10);
      expect(shares.reduce((sum, { mass }) => sum + mass, 0)).toBeCloseTo(massOf(formula), 9);
      for (const { element, percent } of shares.filter((share) => !share.element.startsWith('['))) {
        expect(succeeded(elementPercent(read, element))).toBeCloseTo(percent, 12);
      }
    }
  });
  it('counts all isotopes of an element together, and takes its name', () => {
    const heavy = succeeded(readFormula('D2O'));
    expect(succeeded(elementPercent(heavy, 'H'))).toBeCloseTo(20.11, 1);
    expect(elementPercent(heavy, 'oxygen')).toEqual(elementPercent(heavy, 'O'));
  });
  it.each(['Xx', 'fe', 'Fe2', '', '__proto__', 'N'])('refuses “%s” for iron(III) oxide', (element) => {
    expect(elementPercent(succeeded(readFormula('Fe2O3')), element)).toMatchObject({
      ok: false,
      error: { argument: 'element' },
    });
  });
});
