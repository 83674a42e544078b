import { describe, expect, it } from 'vitest';
import { materialWords } from '../../src/sidebar/plan/materialWords.ts';

const balance = {
  consumed: [{ formula: 'AgNO3', unit: 'g', amount: 40.77 }],
  madeMl: 800,
  usedMl: 60,
  wasteMl: 1140,
  isMostlyWaste: true,
  saving: { by: 'smaller flasks', flaskMl: 100, madeMl: 400, wasteMl: 740 },
} as const;

describe('materialWords', () => {
  it('shows grams, litres made, used and wasted, then where most is thrown away and what makes less', () => {
    expect(materialWords(balance, 'point')).toEqual({
      lines: [
        { what: 'AgNO3', amount: '40.77 g' },
        { what: 'Solution made', amount: '0.8 L' },
        { what: 'Solution used', amount: '0.06 L' },
        { what: 'Waste', amount: '1.14 L' },
      ],
      remarks: [
        'Most of the solution is thrown away: only 0.06 L of 0.8 L is used.',
        'With 100 mL flasks, teams would make 0.4 L and throw away 0.74 L. To do that, type 100 for the flask.',
      ],
    });
  });

  it('names the bottle and the purity, and writes a decimal comma', () => {
    const { lines } = materialWords(
      {
        ...balance,
        consumed: [
          { formula: 'HCl', unit: 'mL', amount: 24.9, massPercent: 37.2 },
          { formula: 'Na2CO3', unit: 'g', amount: 8.93, purityPercent: 94.5 },
        ],
      },
      'comma',
    );
    expect(lines.slice(0, 3)).toEqual([
      { what: 'HCl, 37,2 % bottle', amount: '24,9 mL' },
      { what: 'Na2CO3, 94,5 %', amount: '8,93 g' },
      { what: 'Solution made', amount: '0,8 L' },
    ]);
  });

  it('says nothing more where little is thrown away', () => {
    expect(materialWords({ ...balance, isMostlyWaste: false, saving: undefined }, 'point').remarks).toEqual([]);
  });
});
