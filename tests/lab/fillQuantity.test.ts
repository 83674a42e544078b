import { describe, expect, it } from 'vitest';
import { fillQuantity, type Preparation } from '../../src/lab/judging/fillQuantity.ts';
import { namesTaken } from '../../src/lab/lesson/givenCells.ts';
import { type QuantityName, quantities } from '../../src/lab/quantities.ts';

const fill = (name: QuantityName, cells: Readonly<Record<string, string>>, preparation?: Preparation) =>
  fillQuantity(quantities[name], cells, preparation);
const refusal = (...about: Parameters<typeof fill>) => {
  const filled = fill(...about);
  if (filled.ok) throw new Error('Expected a refusal.');
  return filled.error;
};
const numbersOf = (...about: Parameters<typeof fill>) => {
  const filled = fill(...about);
  if (!filled.ok) throw new Error(filled.error.code);
  return filled.value.numbers;
};
const solid = { formula: 'KBr', molarity: '0.300', volume: '200' };

describe('a quantity that a number is missing for', () => {
  it('says which, as the sheet calls it, and lists all that it takes', () => {
    expect(refusal('mass of solute', { ...solid, volume: ' ' })).toMatchObject({
      code: 'given-missing',
      argument: 'volume',
      brief: 'volume',
      advice: `For mass of solute, give ${namesTaken(quantities['mass of solute'])}.`,
    });
    const names = { volume: 'flask' };
    expect(refusal('mass of solute', { formula: 'KBr', molarity: '0.300' }, { names })).toMatchObject({
      code: 'given-missing',
      argument: 'flask',
      brief: 'flask',
    });
  });
  it('does without what may be left out, and without what the team has worked out itself', () => {
    expect(numbersOf('mass of solute', solid)).toMatchObject({ molarity: 0.3, volume: 200, purity: 100 });
    expect(numbersOf('mass of solute', { ...solid, purity: '94.5' })).toMatchObject({ purity: 94.5 });
    const dilution = { 'target molarity': '0.1', 'target volume': '100' };
    expect(numbersOf('stock volume', dilution, { numbers: { 'stock molarity': 0.5 } })).toMatchObject({
      'stock molarity': 0.5,
      'target molarity': 0.1,
    });
    // The own number counts, whatever stands in a cell of that name.
    const cells = { ...dilution, 'stock molarity': 'soon' };
    expect(numbersOf('stock volume', cells, { numbers: { 'stock molarity': 0.5 } })['stock molarity']).toBe(0.5);
  });
});

describe('a quantity that cannot be worked out', () => {
  it.each([
    ['mass of solute', { ...solid, formula: 'KBx' }, 'salt'],
    // Technetium has no standard atomic weight (CIAAW table of 2021).
    ['mass of solute', { ...solid, formula: 'KTcO4' }, 'salt'],
    ['ion molarity', { formula: 'KBr', ion: 'Cl-', molarity: '0.3' }, 'wanted ion'],
    ['mass of solute', { ...solid, molarity: '0.300 g' }, 'strength'],
    ['mass of solute', { ...solid, purity: '0' }, 'grade'],
    ['mass of solute', { ...solid, molarity: '-1' }, 'strength'],
    ['stock volume', { 'stock molarity': '0.1', 'target molarity': '0.2', 'target volume': '100' }, 'wanted strength'],
    ['molarity', { formula: 'KBr', mass: '-7', volume: '200' }, 'weighed'],
  ] as const)('%s of %j names “%s”, as the sheet calls what is wrong', (name, cells, called) => {
    const names = {
      formula: 'salt',
      ion: 'wanted ion',
      molarity: 'strength',
      purity: 'grade',
      mass: 'weighed',
      'target molarity': 'wanted strength',
    };
    expect(refusal(name, cells, { names }).argument).toBe(called);
  });
  it('names a number as ever where the sheet has no other word for it', () => {
    expect(refusal('mass of solute', { ...solid, purity: '0' }).argument).toBe('purity');
    expect(refusal('molarity', { formula: 'KBr', mass: '-7', volume: '200' }).argument).toBe('mass');
    expect(
      refusal('stock volume', { 'stock molarity': '0.1', 'target molarity': '0.2', 'target volume': '100' }).argument,
    ).toBe('target molarity');
  });
  it('waits with its refusal for a number that is still to come', () => {
    const cells = { 'target molarity': '0.2', 'target volume': '100' };
    expect(fill('stock volume', cells, { numbers: { 'stock molarity': 0.1 } }).ok).toBe(false);
    expect(fill('stock volume', cells, { numbers: { 'stock molarity': Number.NaN } }).ok).toBe(true);
  });
});

describe('two values that are compared', () => {
  it.each([
    ['24.6 mL', '25 mL', [24.6, 25]],
    ['24.6 mL', '0.025 L', [24.6, 25]],
    ['24.6 mL', '25', [24.6, 25]],
    ['24.6', '25 mL', [24.6, 25]],
    ['0.50 mol/L', '0.48 M', [0.5, 0.48]],
    ['12.1 g', '12 g', [12.1, 12]],
    ['1.08 g/mL', '1.1', [1.08, 1.1]],
    ['0.02 mol', '20 mmol', [0.02, 0.02]],
    ['36 %', '37 %', [36, 37]],
  ] as const)('%s and %s are read in one unit', (measured, accepted, [first, second]) => {
    const numbers = numbersOf('percent error', { measured, accepted });
    expect(numbers.measured).toBeCloseTo(first, 12);
    expect(numbers.accepted).toBeCloseTo(second, 12);
  });
  it('are refused where they are of two kinds, and where one is no number of any kind', () => {
    expect(refusal('percent error', { measured: '24.6 mL', accepted: '25 g' }).argument).toBe('accepted');
    expect(refusal('percent error', { measured: '24.6 parsecs', accepted: '25' }).argument).toBe('measured');
  });
  it('are read with the decimal mark of the class', () => {
    expect(numbersOf('percent error', { measured: '1,205', accepted: '1,2' }, { decimalMark: 'comma' })).toMatchObject({
      measured: 1.205,
      accepted: 1.2,
    });
  });
});

describe('how exact an entry is asked to be', () => {
  const asked = (name: QuantityName, cells: Readonly<Record<string, string>>, preparation?: Preparation) => {
    const filled = fill(name, cells, preparation);
    return filled.ok ? filled.value.asked : filled.error.code;
  };
  it('is what the lesson says, and else what the quantity does: decimals of a molar mass are those of the weights', () => {
    expect(asked('mass of solute', solid)).toEqual({ figures: 3 });
    expect(asked('mass of solute', solid, { figures: 4 })).toEqual({ figures: 4 });
    expect(asked('molar mass', { formula: 'KBr' })).toEqual({ decimals: 2 });
    expect(asked('molar mass', { formula: 'KBr' }, { decimals: 1 })).toEqual({ decimals: 1 });
    expect(asked('molar mass', { formula: 'KBr' }, { decimals: 1, figures: 5 })).toEqual({ figures: 5 });
  });
});
