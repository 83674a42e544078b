import { describe, expect, it } from 'vitest';
import { cautions } from '../../src/chemistry/cautions.ts';
import { cautionTexts } from '../../src/chemistry/cautionTexts.ts';
import { drainAdvice, mayGoDownDrain } from '../../src/chemistry/drainAdvice.ts';
import { listedHazards } from '../../src/chemistry/listedHazards.ts';
import { readFormula } from '../../src/chemistry/readFormula.ts';
import { molesPerLitre, percent } from '../../src/measurement/quantity.ts';
import { succeeded } from './succeeded.ts';

const formula = (text: string) => succeeded(readFormula(text));
const strengths = [0.001, 0.01, 0.1, 0.5, 1, 2, 5, 10, 20, 50, 100];

/*
 * Metals kept from drains: common practice; limits of one sewer district in mg/L for silver, barium, chromium, copper, lead,
 * nickel and zinc, and the advice of a school science body, both named in the column `drain` of substances.csv.
 */
describe('drainAdvice', () => {
  it.each([
    ['AgNO3', 'silver'],
    ['KMnO4', 'manganese'],
    ['ZnSO4·7H2O', 'zinc'],
    ['Pb(NO3)2', 'lead'],
    ['BaCl2·2H2O', 'barium'],
    ['BaCl2', 'barium'],
    ['CuSO4·5H2O', 'copper'],
    ['CuSO4', 'copper'],
    ['CuCl2', 'copper'],
    ['Cu(NO3)2·3H2O', 'copper'],
    ['CoCl2·6H2O', 'cobalt'],
    ['NiSO4·6H2O', 'nickel'],
    ['K2CrO4', 'chromium'],
    ['CrCl3·6H2O', 'chromium'],
    ['MnSO4·H2O', 'manganese'],
    ['SnCl2·2H2O', 'tin'],
    ['HgCl2', 'mercury'],
    ['CdI2', 'cadmium'],
  ])('keeps %s from the drain at every strength, for its %s', (text, metal) => {
    expect(drainAdvice(formula(text), 'undiluted')).toEqual({ goesTo: 'waste beaker', metal });
    for (const massPercent of strengths) {
      expect(drainAdvice(formula(text), { massPercent: percent(massPercent) })).toEqual({
        goesTo: 'waste beaker',
        metal,
      });
    }
    expect(mayGoDownDrain(formula(text), { molarity: molesPerLitre(0.1) })).toBe(false);
  });

  it.each(['NaCl', 'KCl', 'KBr', 'Na2SO4', 'K2SO4', 'NaHCO3', 'MgSO4·7H2O', 'C12H22O11', 'C6H12O6', 'KNO3'])(
    'lets %s go down the drain with plenty of water',
    (text) => {
      expect(mayGoDownDrain(formula(text), { molarity: molesPerLitre(0.3) })).toBe(true);
    },
  );

  // Neutralising and reducing is for staff.
  it.each(['HCl', 'NaOH', 'Na2CO3', 'NH3', 'KIO3', 'NaClO', 'KSCN', 'KI', 'C2H5OH', 'NH4Cl', 'XeF2', 'RbI'])(
    'sends %s into the waste beaker',
    (text) => {
      expect(drainAdvice(formula(text), { molarity: molesPerLitre(0.1) })).toEqual({
        goesTo: 'waste beaker',
        metal: '',
      });
    },
  );

  it('lets weak hydrogen peroxide go, and no stronger one', () => {
    expect(mayGoDownDrain(formula('H2O2'), { massPercent: percent(3) })).toBe(true);
    expect(mayGoDownDrain(formula('H2O2'), { massPercent: percent(3.1) })).toBe(false);
    expect(mayGoDownDrain(formula('H2O2'), 'undiluted')).toBe(false);
  });

  it('goes by the hazard too: a salt that may go when dilute may not where it damages eyes', () => {
    expect(mayGoDownDrain(formula('Ca(NO3)2·4H2O'), { massPercent: percent(2) })).toBe(true);
    expect(mayGoDownDrain(formula('Ca(NO3)2·4H2O'), { massPercent: percent(5) })).toBe(false);
  });

  it('is said for every listed substance and strength, before the line that defers', () => {
    for (const { spellings } of listedHazards()) {
      for (const massPercent of [undefined, ...strengths]) {
        const found = succeeded(
          cautions(formula(spellings[0] ?? ''), massPercent === undefined ? undefined : percent(massPercent)),
        );
        const { about, advice } = found.statements[found.statements.length - 2] ?? {};
        expect([spellings[0], about]).toEqual([spellings[0], 'waste']);
        expect(advice).toBe(
          found.waste.goesTo === 'drain'
            ? cautionTexts.drain
            : found.waste.metal === ''
              ? cautionTexts.beaker
              : cautionTexts.metalBeaker(found.waste.metal),
        );
      }
    }
  });

  it('lets nothing down the drain that harms waters, or of which nobody knows whether it does', () => {
    for (const { spellings } of listedHazards()) {
      for (const massPercent of strengths) {
        const { codes, unknownCodes, waste } = succeeded(cautions(formula(spellings[0] ?? ''), percent(massPercent)));
        if ([...codes, ...unknownCodes].some((code) => code.startsWith('H4'))) {
          expect([spellings[0], massPercent, waste.goesTo]).toEqual([spellings[0], massPercent, 'waste beaker']);
        }
      }
    }
  });
});
