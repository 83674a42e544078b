import { describe, expect, it } from 'vitest';
import { callFunction } from '../../src/functions/callFunction.ts';
import { catalogue } from '../../src/functions/catalogue.ts';

const hydrates = [
  'CuSO4·5H2O',
  'CuSO4 x 5H2O',
  'CuSO4 × 5H2O',
  'CuSO4×5H2O',
  'CuSO4,5H2O',
  'CuSO4, 5 H2O',
  'CuSO4*5H2O',
  'CuSO4.5H2O',
  'CuSO₄ • 5 H₂O',
];

describe('a hydrate as people type it', () => {
  it.each(hydrates)('%s has one molar mass, one set of ions and one caution', (typed) => {
    const [plain = ''] = hydrates;
    for (const name of ['MOLARMASS', 'IONS', 'CAUTIONS']) {
      expect([name, callFunction(name, [typed])]).toEqual([name, callFunction(name, [plain])]);
    }
    expect(callFunction('CAUTIONS', [typed, '5 %'])).toEqual(callFunction('CAUTIONS', [plain, '5 %']));
  });
  it.each(['CaSO4·½H2O', 'CaSO4·1/2H2O', 'CaSO4·0.5H2O', 'CaSO4·0,5H2O', 'CaSO4 x 1/2 H2O', 'CaSO4,½H2O'])(
    '%s holds half a water',
    (typed) => {
      expect(callFunction('MOLARMASS', [typed])).toBeCloseTo(145.1415, 9);
    },
  );
});

describe('a formula with a digit for a letter', () => {
  const taking = catalogue.flatMap(({ name, arguments: taken, examples }) =>
    taken.flatMap(({ kind }, place) =>
      kind === 'formula' ? [{ name, call: taken.map((_, at) => examples[0].call[at]), place }] : [],
    ),
  );
  it.each(taking)('is asked about by $name, alone and in a range', ({ name, call, place }) => {
    const withFormula = (cell: string | string[][]) => call.map((other, at) => (at === place ? cell : other));
    for (const [typed, meant] of [
      ['H20', 'H2O'],
      ['NaC1', 'NaCl'],
      ['CuSO4.5H20', 'CuSO4.5H2O'],
    ] as const) {
      expect(() => callFunction(name, withFormula(typed))).toThrow(`Did you mean ${meant}?`);
    }
    const isTable = ['COMPOSITION', 'IONS', 'CAUTIONS'].includes(name);
    if (!isTable)
      expect(callFunction(name, withFormula([['H20'], ['KBr']]))).toMatchObject([['⚠ H2O?'], [expect.anything()]]);
  });
});
