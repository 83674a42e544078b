import { describe, expect, it } from 'vitest';
import { readCsv } from '../../scripts/generate/csv.ts';
import { readFormula } from '../../src/chemistry/readFormula.ts';
import { errorText } from '../../src/errors/errorText.ts';

const reagents = [
  ...new Set(
    readCsv(new URL('../published/reagents.csv', import.meta.url).pathname).map(({ formula = '' }) => formula),
  ),
];
/** Each letter that a digit looks like, in every formula of the list, typed as that digit; and all of them at once. */
const slips = reagents.flatMap((formula) => {
  const places = [...formula].flatMap((letter, at) =>
    letter === 'O' || (letter === 'l' && /[AC]/.test(formula.charAt(at - 1))) ? [at] : [],
  );
  const typed = (chosen: readonly number[]) =>
    [...formula].map((letter, at) => (chosen.includes(at) ? (letter === 'O' ? '0' : '1') : letter)).join('');
  return [...places.map((place) => typed([place])), ...(places.length > 1 ? [typed(places)] : [])].map((slip) => ({
    slip,
    formula,
  }));
});

describe('a formula with a digit where a letter was meant', () => {
  it.each([
    ['H20', 'H2O'],
    ['Na2S203', 'Na2S2O3'],
    ['NaC1', 'NaCl'],
    ['HC1', 'HCl'],
    ['KC1', 'KCl'],
    ['CuSO4.5H20', 'CuSO4.5H2O'],
    ['CuSO4·5H20', 'CuSO4·5H2O'],
    ['CuS04·5H20', 'CuSO4·5H2O'],
    ['KMn04', 'KMnO4'],
    ['Na0H', 'NaOH'],
    ['Ca(0H)2', 'Ca(OH)2'],
    ['C12H22011', 'C12H22O11'],
    ['C6H1206', 'C6H12O6'],
    ['CH3C00H', 'CH3COOH'],
    ['CaC12', 'CaCl2'],
    ['AlC13', 'AlCl3'],
    ['A1C13', 'AlCl3'],
    ['Fe203', 'Fe2O3'],
    ['C02', 'CO2'],
    ['NaCI', 'NaCl'],
    ['HCI', 'HCl'],
    ['SrC12·6H20', 'SrCl2·6H2O'],
  ])('asks about %s: %s', (typed, meant) => {
    const read = readFormula(typed);
    expect(read).toMatchObject({ ok: false, error: { code: 'formula-look-alike', received: expect.any(String) } });
    expect(!read.ok && errorText(read.error)).toContain(`Did you mean ${meant}?`);
    expect(!read.ok && errorText(read.error)).toContain(`“${typed}”`);
  });
  it.each(slips)('is never taken for another substance: $slip for $formula', ({ slip, formula }) => {
    const read = readFormula(slip);
    expect(read.ok).toBe(false);
    if (!read.ok && read.error.code === 'formula-look-alike') expect(read.error.advice).toContain(formula);
  });
  it.each([
    'C12H22O11',
    'C10H22',
    'C10H8',
    'C60',
    'C14H4',
    'P4O10',
    'B10H14',
    'Na2B4O7·10H2O',
    'HIO3',
    'NaI',
    'CI4',
    'Na2C12',
    'Al2(SO4)3',
    'CO',
    'Co',
    'NO',
    'H₂₀',
    'NaC₁',
  ])('takes %s as it stands', (typed) => {
    expect(readFormula(typed).ok).toBe(true);
  });
  it('takes every formula of the list as it stands', () => {
    expect(reagents.filter((formula) => !readFormula(formula).ok)).toEqual([]);
    expect(reagents.length).toBeGreaterThan(50);
    expect(slips.length).toBeGreaterThan(80);
  });
  it('answers at once where very many places look alike', () => {
    for (const typed of ['C1'.repeat(125), '0'.repeat(250), 'H0'.repeat(125)]) readFormula(typed);
    expect(readFormula(`C1${'H'.repeat(240)}`).ok).toBe(true);
  });
});
