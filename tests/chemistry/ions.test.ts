import { describe, expect, it } from 'vitest';
import { readCsv } from '../../scripts/generate/csv.ts';
import { ionMolarity } from '../../src/chemistry/ionMolarity.ts';
import { ions } from '../../src/chemistry/ions.ts';
import { listedAnions, listedCations } from '../../src/chemistry/listedIons.ts';
import { matchIon } from '../../src/chemistry/matchIon.ts';
import { namedIon } from '../../src/chemistry/namedIon.ts';
import { readFormula } from '../../src/chemistry/readFormula.ts';
import { errorText, shortErrorText } from '../../src/errors/errorText.ts';
import type { Result } from '../../src/errors/result.ts';
import { molesPerLitre } from '../../src/measurement/quantity.ts';
import { succeeded } from './succeeded.ts';

const messagesOf = (result: Result<unknown>) =>
  result.ok ? [] : [errorText(result.error), shortErrorText(result.error)];
const of = (formula: string) => ions(succeeded(readFormula(formula)));
const textOf = (formula: string): string => {
  const found = of(formula);
  return found.ok ? found.value.map(({ ion, count }) => `${ion} ${count}`).join(', ') : found.error.code;
};
const reagents = Array.from(
  new Map(
    readCsv(new URL('../published/reagents.csv', import.meta.url).pathname).map((row) => [row.formula ?? '', row]),
  ).values(),
);

describe('ions', () => {
  it.each([
    ['NaCl', 'Na⁺ 1, Cl⁻ 1'],
    ['MgCl2·6H2O', 'Mg²⁺ 1, Cl⁻ 2'],
    ['CuSO4·5H2O', 'Cu²⁺ 1, SO₄²⁻ 1'],
    ['Al2(SO4)3', 'Al³⁺ 2, SO₄²⁻ 3'],
    ['(NH4)2SO4', 'NH₄⁺ 2, SO₄²⁻ 1'],
    ['NH4NO3', 'NH₄⁺ 1, NO₃⁻ 1'],
    ['KAl(SO4)2·12H2O', 'K⁺ 1, Al³⁺ 1, SO₄²⁻ 2'],
    ['K3[Fe(CN)6]', 'K⁺ 3, [Fe(CN)₆]³⁻ 1'],
    ['NaHCO3', 'Na⁺ 1, HCO₃⁻ 1'],
    ['Na2HPO4', 'Na⁺ 2, HPO₄²⁻ 1'],
    ['KH2PO4', 'K⁺ 1, H₂PO₄⁻ 1'],
    ['KHC8H4O4', 'K⁺ 1, HC₈H₄O₄⁻ 1'],
    ['CH3COONa·3H2O', 'Na⁺ 1, CH₃COO⁻ 1'],
    ['FeCl3·6H2O', 'Fe³⁺ 1, Cl⁻ 3'],
    ['FeCl2', 'Fe²⁺ 1, Cl⁻ 2'],
    ['Na2S2O3·5H2O', 'Na⁺ 2, S₂O₃²⁻ 1'],
    ['HCl', 'H⁺ 1, Cl⁻ 1'],
    ['HNO3', 'H⁺ 1, NO₃⁻ 1'],
    ['NaOH', 'Na⁺ 1, OH⁻ 1'],
    ['Ba(OH)2·8H2O', 'Ba²⁺ 1, OH⁻ 2'],
    ['C6H12O6', 'C6H12O6 1'],
    ['CO(NH2)2', 'CO(NH2)2 1'],
    // However it is written
    ['ClNa', 'Na⁺ 1, Cl⁻ 1'],
    ['N H 4 Cl', 'NH₄⁺ 1, Cl⁻ 1'],
    ['NH₄Cl', 'NH₄⁺ 1, Cl⁻ 1'],
    ['H4NCl', 'NH₄⁺ 1, Cl⁻ 1'],
    ['NaOD', 'Na⁺ 1, OH⁻ 1'],
    ['C6H12O6.H2O', 'C6H12O6 1'],
    ['C6H12O6 · H2O', 'C6H12O6 1'],
    ['H12C6O6', 'H12C6O6 1'],
    ['H2O', 'H2O 1'],
    // The same atoms, told apart by how they are written
    ['NH4SCN', 'NH₄⁺ 1, SCN⁻ 1'],
    ['CS(NH2)2', 'CS(NH2)2 1'],
    // Complex anions in brackets, and every strong acid
    ['NaAl(OH)4', 'Na⁺ 1, [Al(OH)₄]⁻ 1'],
    ['K4[Fe(CN)6]·3H2O', 'K⁺ 4, [Fe(CN)₆]⁴⁻ 1'],
    ['HBr', 'H⁺ 1, Br⁻ 1'],
    ['HI', 'H⁺ 1, I⁻ 1'],
    ['HClO3', 'H⁺ 1, ClO₃⁻ 1'],
    ['HClO4', 'H⁺ 1, ClO₄⁻ 1'],
    ['NaHSO4', 'Na⁺ 1, HSO₄⁻ 1'],
    ['KHC4H4O6', 'K⁺ 1, HC₄H₄O₆⁻ 1'],
    // Nitrogen in both ions
    ['NaN3', 'Na⁺ 1, N₃⁻ 1'],
    ['Ba(N3)2', 'Ba²⁺ 1, N₃⁻ 2'],
    ['NH4N3', 'NH₄⁺ 1, N₃⁻ 1'],
    ['(NH4)3(N3)3', 'NH₄⁺ 3, N₃⁻ 3'],
    ['(NH4)2Fe(SO4)2·6H2O', 'Fe²⁺ 1, NH₄⁺ 2, SO₄²⁻ 2'],
    ['NH4VO3', 'NH₄⁺ 1, VO₃⁻ 1'],
    // A metal with the charge that the anions leave it
    ['CuCl2', 'Cu²⁺ 1, Cl⁻ 2'],
    ['SnCl4', 'Sn⁴⁺ 1, Cl⁻ 4'],
    ['Ce(SO4)2', 'Ce⁴⁺ 1, SO₄²⁻ 2'],
  ])('takes %s apart into %s', (formula, gives) => {
    expect(textOf(formula)).toBe(gives);
  });
  it('gives sulfuric acid in full, with a note that the second step is partial', () => {
    const found = succeeded(of('H2SO4'));
    expect(found.map(({ ion, count }) => [ion, count])).toEqual([
      ['H⁺', 2],
      ['SO₄²⁻', 1],
    ]);
    expect(found.map(({ note }) => note)).toEqual(Array(2).fill('the second step is partial: some HSO₄⁻ stays whole'));
    for (const without of ['Na2SO4', 'HCl']) expect(succeeded(of(without)).every((ion) => !('note' in ion))).toBe(true);
  });
  it.each([
    ['Ca(OH)2', 'Ca²⁺ 1, OH⁻ 2', 0.0235],
    ['Ba(OH)2', 'Ba²⁺ 1, OH⁻ 2', 0.28],
    ['Ba(OH)2·8H2O', 'Ba²⁺ 1, OH⁻ 2', 0.28],
  ])('takes %s apart as far as it dissolves', (formula, gives, saturated) => {
    expect(textOf(formula)).toBe(gives);
    const note = `as far as it dissolves, up to about ${saturated} mol/L at room temperature`;
    for (const ion of succeeded(of(formula))) expect(ion).toMatchObject({ note, saturated });
    const hydroxide = (molarity: number) =>
      ionMolarity({ formula: succeeded(readFormula(formula)), molarity: molesPerLitre(molarity), ion: 'OH-' });
    expect(hydroxide(saturated)).toEqual({ ok: true, value: 2 * saturated });
    expect(messagesOf(hydroxide(1))).toEqual([
      `1 mol/L is more than dissolves: about ${saturated} mol/L of ${formula} is the most. The rest stays solid and gives no ions: use a lower molarity.`,
      '⚠ more than dissolves',
    ]);
  });
  it.each(['H3O+', 'H₃O⁺', 'H3O^+', 'H+', 'H⁺'])('knows %s for the hydrogen ion', (ion) => {
    for (const formula of ['HCl', 'H2SO4']) {
      expect(succeeded(matchIon(ion, succeeded(of(formula)))).ion).toBe('H⁺');
    }
    expect(matchIon('H3O+', succeeded(of('NaCl')))).toMatchObject({ ok: false, error: { code: 'ion-not-in-formula' } });
  });
  it('says of each ion its charge and its atoms', () => {
    expect(succeeded(of('Na2CO3'))).toEqual([
      { ion: 'Na⁺', count: 2, charge: 1, atoms: [{ element: 'Na', count: 1 }] },
      {
        ion: 'CO₃²⁻',
        count: 1,
        charge: -2,
        atoms: [
          { element: 'C', count: 1 },
          { element: 'O', count: 3 },
        ],
      },
    ]);
    expect(succeeded(of('H2O2'))).toEqual([
      {
        ion: 'H2O2',
        count: 1,
        charge: 0,
        atoms: [
          { element: 'H', count: 2 },
          { element: 'O', count: 2 },
        ],
      },
    ]);
  });
  it.each([
    'CH3COOH',
    'NH3',
    'HF',
    'H3PO4',
    'C6H8O7',
    'C6H8O7·H2O',
    'H2C2O4·2H2O',
    'H3BO3',
    'HCOOH',
    'HN3',
    'H2SeO3',
    'HgCl2',
    'Hg(CN)2',
  ])('refuses %s as weak', (formula) => {
    expect(textOf(formula)).toBe('ions-weak');
  });
  it.each([
    'AgCl',
    'BaSO4',
    'CaCO3',
    'PbI2',
    'CaSO4·2H2O',
    'Fe(OH)3',
    'CaF2',
    'Cu2S',
    'Ca3(PO4)2',
    'Mg(OH)2',
    'Ag2CrO4',
    'CaMg(CO3)2',
    'Na2Ca(CO3)2',
  ])('refuses %s, which hardly dissolves', (formula) => {
    expect(textOf(formula)).toBe('ions-sparingly');
  });
  it.each([
    'NaXe',
    'Na2O',
    'Na2O2',
    'BaO2',
    'Fe',
    'CCl4',
    'NaCl2',
    'Na2Cl',
    'FeCl',
    'ClH5N',
    'NH3Cl',
    'N2H4O3',
    'NH4HCl',
    'Na3H(CO3)2',

    'NaHCrO4',
    'Na3N',
    'K99999Cl',
    'C99999H99999O99999N99999S99999Na',
  ])('does not guess at %s', (formula) => {
    expect(textOf(formula)).toBe('ions-unknown');
  });
  it('refuses an ion where a substance belongs', () => {
    expect(textOf('SO4^2-')).toBe('formula-with-charge');
  });
  it.each([
    [
      'SO4^2-',
      '“SO4^2-” is an ion, not a whole substance. Type the substance that is dissolved, without a charge.',
      '⚠ substance without a charge',
    ],
    [
      'HF',
      '“HF” is a weak electrolyte: most of it stays whole in water. Look up its acid or base constant: a formula alone can’t say how many ions there are.',
      '⚠ weak: mostly undissociated',
    ],
    [
      'AgCl',
      '“AgCl” hardly dissolves: less than 1 g in 100 g of water. Choose a salt that dissolves.',
      '⚠ hardly dissolves',
    ],
    [
      'CCl4',
      'The ions of “CCl4” are not known here. Look up how it dissolves, and count its ions by hand.',
      '⚠ ions not known here',
    ],
  ])('says why it gives no ions of %s', (formula, full, short) => {
    expect(messagesOf(of(formula))).toEqual([full, short]);
  });

  it.each(reagents.map(({ formula = '', ions_per_formula_unit = '' }) => ({ formula, listed: ions_per_formula_unit })))(
    'agrees with the list of reagents for $formula: $listed',
    ({ formula, listed }) => {
      const dissolved = of(formula);
      if (/^molecular, weak|weak/.test(listed)) expect(textOf(formula)).toBe('ions-weak');
      else if (listed.startsWith('sparingly')) expect(textOf(formula)).toBe('ions-sparingly');
      else if (listed.startsWith('molecular')) expect(succeeded(dissolved)).toMatchObject([{ count: 1, charge: 0 }]);
      else {
        const found = succeeded(dissolved)
          .map(({ charge, count }) => `${charge}×${count}`)
          .sort();
        const wanted = listed
          .split('; ')
          .filter((pair) => pair.includes(':'))
          .map((pair) => {
            const [, size = '', sign = '+', count = '1'] = /(?:\^(\d))?([+-]):(\d+)/.exec(pair) ?? [];
            return `${Number(size || 1) * (sign === '-' ? -1 : 1)}×${count}`;
          })
          .sort();
        expect(found).toEqual(wanted);
      }
    },
  );

  it('is electrically neutral, and keeps every atom but those of the water, for every salt of the usual ions', () => {
    let apart = 0;
    const gcd = (one: number, other: number): number => (other === 0 ? one : gcd(other, one % other));
    for (const cation of listedCations()) {
      for (const anion of listedAnions()) {
        if (cation.body.startsWith('H') || ['O', 'O2', 'OH'].includes(anion.body)) continue;
        const common = gcd(cation.charge, -anion.charge);
        const group = (body: string, count: number) => (count === 1 ? body : `(${body})${count}`);
        const formula = group(cation.body, -anion.charge / common) + group(anion.body, cation.charge / common);
        const read = succeeded(readFormula(formula));
        const found = ions(read);
        if (!found.ok) continue;
        apart += 1;
        expect([formula, found.value.reduce((sum, { charge, count }) => sum + charge * count, 0)]).toEqual([
          formula,
          0,
        ]);
        for (const { element, count } of read.atoms) {
          const among = found.value.reduce(
            (sum, ion) => sum + ion.count * (ion.atoms.find((atom) => atom.element === element)?.count ?? 0),
            0,
          );
          expect([formula, element, among]).toEqual([formula, element, count]);
        }
      }
    }
    expect(apart).toBeGreaterThan(800);
  });
});

describe('matchIon and ionMolarity', () => {
  it.each(['Ca2+', 'Ca^2+', 'Ca²⁺', 'Ca+2', 'Ca 2+', 'Ca++', 'Ca^+2', 'Ca(2+)'])(
    'takes %s for the calcium ion',
    (typed) => {
      expect(succeeded(matchIon(typed, succeeded(of('CaCl2')))).ion).toBe('Ca²⁺');
    },
  );
  it.each(['SO42-', 'SO4^2-', 'SO₄²⁻', 'SO4-2', '(SO4)2-', 'SO4 2-'])('takes %s for the sulfate ion', (typed) => {
    expect(succeeded(matchIon(typed, succeeded(of('Na2SO4')))).ion).toBe('SO₄²⁻');
  });
  it.each(['Mg2+', 'Ca', 'Ca+', 'Cl', 'CaCl2', '', 'x', 'Cl2-'])(
    'refuses “%s” among the ions of CaCl2, and lists those',
    (typed) => {
      const found = matchIon(typed, succeeded(of('CaCl2')));
      expect(found).toMatchObject({ ok: false, error: { code: 'ion-not-in-formula', argument: 'ion' } });
      expect(messagesOf(found)).toEqual([
        `${typed === '' ? 'A blank cell' : `“${typed}”`} is not an ion of this substance. Type one of Ca²⁺, Cl⁻, with its charge.`,
        '⚠ ion: Ca²⁺ or Cl⁻?',
      ]);
    },
  );
  it.each([
    ['H-', 'NaOH'],
    ['O-', 'NaOH'],
    ['OH2-', 'NaOH'],
    ['SO3^2-', 'Na2SO4'],
    ['SO4^3-', 'Na2SO4'],
    ['NaSO4^2-', 'Na2SO4'],
  ])('does not take %s for an ion of %s, which has other atoms or another charge', (typed, formula) => {
    expect(matchIon(typed, succeeded(of(formula))).ok).toBe(false);
  });
  it('takes an ion with spaces around it, its atoms in any order', () => {
    expect(succeeded(matchIon(' O4S2- ', succeeded(of('Na2SO4')))).ion).toBe('SO₄²⁻');
  });
  it('multiplies the molarity by the number of the ion', () => {
    const formula = succeeded(readFormula('Al2(SO4)3'));
    expect(succeeded(ionMolarity({ formula, molarity: molesPerLitre(0.02), ion: 'Al3+' }))).toBeCloseTo(0.04, 12);
    expect(succeeded(ionMolarity({ formula, molarity: molesPerLitre(0.02), ion: 'SO42-' }))).toBeCloseTo(0.06, 12);
  });
  it('has no ion to give for a substance that stays whole', () => {
    const formula = succeeded(readFormula('C6H12O6'));
    expect(messagesOf(ionMolarity({ formula, molarity: molesPerLitre(1), ion: 'H+' }))).toEqual([
      '“C6H12O6” gives no ions in water: it stays whole. Its particles are molecules: use the molarity of the solution.',
      '⚠ gives no ions',
    ]);
  });
  it('names an ion and the others beside it, or what is in the way', () => {
    const named = (formula: string, ion: string) => namedIon(succeeded(readFormula(formula)), ion);
    const { ion, others } = succeeded(named('KAl(SO4)2·12H2O', 'Al^3+'));
    expect([ion.ion, others.map((other) => other.ion)]).toEqual(['Al³⁺', ['K⁺', 'SO₄²⁻']]);
    expect(named('KBr', 'Na+')).toMatchObject({ error: { code: 'ion-not-in-formula' } });
    expect(named('AgCl', 'Ag+')).toMatchObject({ error: { code: 'ions-sparingly' } });
  });
});
