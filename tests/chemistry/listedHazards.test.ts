import { describe, expect, it } from 'vitest';
import { listedHazards } from '../../src/chemistry/listedHazards.ts';

const substance = (formula: string) => listedHazards().find(({ spellings }) => spellings.includes(formula));
const limit = (formula: string, code: string) => substance(formula)?.limits.find((one) => one.code === code);

describe('listedHazards [CLP Annex VI, consolidated 2026-07-01]', () => {
  it('reads a line of the table', () => {
    expect({ ...substance('KOH'), limits: undefined }).toEqual({
      name: 'potassium hydroxide',
      spellings: ['KOH', 'K(OH)', 'KHO', 'HOK'],
      names: ['caustic potash'],
      soldPercent: undefined,
      codes: [
        { code: 'H290', confidence: 'o' },
        { code: 'H302', confidence: 'h' },
        { code: 'H314', confidence: 'h' },
      ],
      confidence: 'h',
      drain: 'no',
      schoolUse: 'solid: care, staff weigh out for younger students',
      limits: undefined,
    });
  });
  it('reads what is sold as a solution, what has no code, and where each may go', () => {
    expect(substance('HCl')).toMatchObject({ soldPercent: 37, drain: 'no' });
    expect(substance('NaCl')).toMatchObject({ codes: [], limits: [], schoolUse: '', drain: 'yes' });
    expect(substance('H2O2')).toMatchObject({ soldPercent: 30, drain: { upTo: 3 } });
    expect(substance('AgNO3')).toMatchObject({ drain: 'never' });
  });
  it('reads a limit: from its lower end, which belongs to it, to its upper one, which does not', () => {
    expect(limit('HCl', 'H315')).toEqual({
      code: 'H315',
      from: { percent: 10, isOpen: false },
      to: { percent: 25, isOpen: true },
      countedGramsPerMole: 36.458,
      confidence: 'h',
      isWithoutLimit: false,
      isMinimum: false,
      dependsOnPh: false,
    });
  });
  it.each([
    ['HClO4', 'H271', { from: { percent: 50, isOpen: true }, to: undefined }],
    ['HClO4', 'H272', { from: undefined, to: { percent: 50, isOpen: false } }],
    ['HNO3', 'H272/3', { from: { percent: 65, isOpen: false }, to: { percent: 70, isOpen: true } }],
    ['KNO3', 'H272/3', { isWithoutLimit: true, from: undefined, to: undefined, confidence: 't' }],
    ['HNO3', 'EUH071', { isWithoutLimit: true, isMinimum: false }],
    ['KOH', 'H302', { isMinimum: true, isWithoutLimit: false }],
    ['Na2CO3', 'H319', { dependsOnPh: true, isMinimum: false }],
    ['NaClO', 'H314', { countedGramsPerMole: 70.906 }],
    ['KI', 'H372', { countedGramsPerMole: undefined }],
    ['KI', 'H373', { confidence: 't' }],
  ])('reads what is particular about %s, %s', (formula, code, wanted) => {
    expect(limit(formula, code)).toMatchObject(wanted);
  });
});
