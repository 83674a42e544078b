import { describe, expect, it } from 'vitest';
import { readCsv } from '../../scripts/generate/csv.ts';
import { ionMolarity } from '../../src/chemistry/ionMolarity.ts';
import { ions } from '../../src/chemistry/ions.ts';
import { listedAnions, listedCations } from '../../src/chemistry/listedIons.ts';
import { matchIon } from '../../src/chemistry/matchIon.ts';
import { readFormula } from '../../src/chemistry/readFormula.ts';
import { molesPerLitre } from '../../src/measurement/quantity.ts';
import { succeeded } from './succeeded.ts';

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
  ])('takes %s apart into %s', (formula, gives) => {
    expect(textOf(formula)).toBe(gives);
  });
  it('gives sulfuric acid in full, with a note that the second step is partial', () => {
    const found = succeeded(of('H2SO4'));
    expect(found.map(({ ion, count }) => [ion, count])).toEqual([
      ['H⁺', 2],
      ['SO₄²⁻', 1],
    ]);
    expect(found.some(({ note }) => note?.includes('partial'))).toBe(true);
  });
  it.each(['CH3COOH', 'NH3', 'HF', 'H3PO4', 'C6H8O7', 'C6H8O7·H2O', 'H2C2O4·2H2O', 'H3BO3', 'HCOOH'])(
    'refuses %s as weak',
    (formula) => {
      expect(textOf(formula)).toBe('ions-weak');
    },
  );
  it.each([
    'AgCl',
    'BaSO4',
    'CaCO3',
    'Ca(OH)2',
    'PbI2',
    'CaSO4·2H2O',
    'Fe(OH)3',
    'CaF2',
    'Cu2S',
    'Ca3(PO4)2',
    'Mg(OH)2',
    'Ag2CrO4',
  ])('refuses %s, which hardly dissolves', (formula) => {
    expect(textOf(formula)).toBe('ions-sparingly');
  });
  it.each(['NaXe', 'Na2O', 'Fe', 'CCl4', 'Na3N', 'K99999Cl', 'C99999H99999O99999N99999S99999Na'])(
    'does not guess at %s',
    (formula) => {
      const began = performance.now();
      expect(textOf(formula)).toBe('ions-unknown');
      expect(performance.now() - began).toBeLessThan(100);
    },
  );
  it('refuses an ion where a substance belongs', () => {
    expect(textOf('SO4^2-')).toBe('formula-with-charge');
  });

  it.each(reagents.map(({ formula = '', ions_per_formula_unit = '' }) => ({ formula, listed: ions_per_formula_unit })))(
    'agrees with the list of reagents for $formula: $listed',
    ({ formula, listed }) => {
      const dissolved = of(formula);
      if (/^molecular, weak|weak/.test(listed)) expect(textOf(formula)).toBe('ions-weak');
      else if (listed.startsWith('sparingly') || formula === 'Ca(OH)2') expect(textOf(formula)).toBe('ions-sparingly');
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
      expect(!found.ok && found.error.expected).toContain('Ca²⁺');
    },
  );
  it('multiplies the molarity by the number of the ion', () => {
    const formula = succeeded(readFormula('Al2(SO4)3'));
    expect(succeeded(ionMolarity({ formula, molarity: molesPerLitre(0.02), ion: 'Al3+' }))).toBeCloseTo(0.04, 12);
    expect(succeeded(ionMolarity({ formula, molarity: molesPerLitre(0.02), ion: 'SO42-' }))).toBeCloseTo(0.06, 12);
  });
  it('has no ion to give for a substance that stays whole', () => {
    const formula = succeeded(readFormula('C6H12O6'));
    expect(ionMolarity({ formula, molarity: molesPerLitre(1), ion: 'H+' })).toMatchObject({
      ok: false,
      error: { code: 'ion-none' },
    });
  });
});
