import { describe, expect, it } from 'vitest';
import { composition } from '../../src/chemistry/composition.ts';
import { elementPercent } from '../../src/chemistry/elementPercent.ts';
import { allElements, elementBySymbol, elementOf, relativeMass } from '../../src/chemistry/elements.ts';
import { molarMass } from '../../src/chemistry/molarMass.ts';
import { readFormula } from '../../src/chemistry/readFormula.ts';
import { errorText, shortErrorText } from '../../src/errors/errorText.ts';
import type { Result } from '../../src/errors/result.ts';
import { succeeded } from './succeeded.ts';

const read = (text: string) => succeeded(readFormula(text));
const messagesOf = (result: Result<unknown>) =>
  result.ok ? [] : [errorText(result.error), shortErrorText(result.error)];

describe('elements', () => {
  it('are found by their symbols alone', () => {
    expect(allElements().map(({ symbol }) => elementBySymbol(symbol))).toEqual(allElements());
    for (const text of ['', 'H 1', 'H 1 hydrogen', 'hydrogen', 'h', '1', ' ', '\n', '[2H]', 'Xy']) {
      expect(elementBySymbol(text), text).toBeUndefined();
    }
  });
  it('carry their name, number and weight, or the mass number of their longest-lived isotope [IUPAC, CIAAW]', () => {
    expect([elementBySymbol('Cl'), elementBySymbol('Tc')]).toEqual([
      { symbol: 'Cl', name: 'chlorine', atomicNumber: 17, weight: 35.45, longestLived: undefined },
      { symbol: 'Tc', name: 'technetium', atomicNumber: 43, weight: undefined, longestLived: 97 },
    ]);
  });
  it.each([
    ['Br', 'Br', 79.904],
    ['[2H]', 'H', 2.014101777844],
    ['[3H]', 'H', 3.01604928132],
    ['[13C]', 'C', 13.003354835336],
    ['[18O]', 'O', 18],
    ['[235U]', 'U', 235],
    ['Tc', 'Tc', undefined],
    ['[Br]', '[Br]', undefined],
    ['x[18O]', 'x[18O]', undefined],
    ['[18O]x', '[18O]x', undefined],
  ])(
    'an atom %s belongs to %s and weighs %s [AME2020, CIAAW; other isotopes by mass number]',
    (label, symbol, mass) => {
      expect([elementOf(label), relativeMass(label)]).toEqual([symbol, mass]);
    },
  );
});

describe('composition', () => {
  it('gives atoms, mass and percent of each element: water by its atomic weights 1.008 and 15.999', () => {
    const [hydrogen, oxygen, ...others] = succeeded(composition(read('H2O')));
    expect(hydrogen).toEqual({ element: 'H', atoms: 2, mass: 2.016, percent: expect.closeTo(11.19, 2) });
    expect(oxygen).toEqual({ element: 'O', atoms: 1, mass: 15.999, percent: expect.closeTo(88.81, 2) });
    expect(others).toEqual([]);
  });
  it('says why technetium has no molar mass', () => {
    const messages = [
      '“Tc” (technetium) has no standard atomic weight, as none of its isotopes is stable. Name the isotope you mean; the longest-lived is [97Tc].',
      '⚠ Tc: no atomic weight',
    ];
    const formula = read('NaTcO4');
    expect(molarMass(formula)).toMatchObject({ error: { argument: 'formula' } });
    expect(messagesOf(molarMass(formula))).toEqual(messages);
    expect(messagesOf(composition(formula))).toEqual(messages);
    expect(messagesOf(elementPercent(formula, 'Na'))).toEqual(messages);
  });
});

describe('molarMass', () => {
  it('refuses more atoms than a number can weigh', () => {
    expect(molarMass({ atoms: [{ element: 'U', count: 1e307 }] })).toMatchObject({
      error: { code: 'result-not-finite', argument: 'formula' },
    });
  });
});

describe('elementPercent', () => {
  it.each([
    ['NH4NO3', 'N', 35.0],
    ['NH4NO3', ' nitrogen ', 35.0],
    ['Fe2O3', 'Iron', 69.94],
    ['CO(NH2)2', 'N', 46.65],
    ['[13C]CO2', 'C', 43.87],
  ])(
    'of %s counts all atoms of %s: %d % by mass [textbooks; fertiliser grades 35-0-0 and 46-0-0]',
    (formula, element, wanted) => {
      expect(succeeded(elementPercent(read(formula), element))).toBeCloseTo(wanted, 1);
    },
  );
  it.each([
    ['N', '“N” is not in the formula. Choose one of Fe, O.', '⚠ no N in it'],
    ['nitrogen ', '“nitrogen ” is not in the formula. Choose one of Fe, O.', '⚠ no N in it'],
    [
      ' Fe2 ',
      '“ Fe2 ” is not the symbol of an element. Type one symbol without a number, such as N.',
      '⚠ element Fe2?',
    ],
    ['fe', '“fe” needs a capital letter where each symbol begins. Did you mean Fe?', '⚠ Fe?'],
    ['', 'A blank cell can’t be used for the element: type a formula as text, such as KBr.', '⚠ not a formula'],
  ])('refuses “%s” for iron(III) oxide, saying why', (element, message, short) => {
    const found = elementPercent(read('Fe2O3'), element);
    expect(messagesOf(found)).toEqual([message, short]);
    expect(found).toMatchObject({ error: { argument: 'element' } });
  });
  it('lists each element of a formula once, its isotopes with it', () => {
    expect(elementPercent(read('CH3CH2D'), 'O')).toMatchObject({ error: { expected: 'one of C, H' } });
  });
});
