import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { judgeQuantity } from '../../src/lab/judging/judgeQuantity.ts';
import { cases } from '../depth.ts';

type Table = readonly (readonly [string, string | number])[];
const kbr: Table = [
  ['formula', 'KBr'],
  ['molarity', '0.300'],
  ['volume', '200'],
];
const dilution: Table = [
  ['stock molarity', '2.00'],
  ['target molarity', '0.500'],
  ['target volume', '250'],
];
const statusOf = (quantity: string, given: Table, entry: unknown, figures?: number, decimals?: number) =>
  judgeQuantity(quantity, given, entry as never, figures, decimals).status;

describe('judgeQuantity on target', () => {
  it.each([
    // 0.3 × 0.2 × 119.0023 = 7.14014 g; half a unit of the third figure either way, ends included.
    ['7.14', 'on target'],
    ['7.1401', 'on target'],
    ['7.145', 'on target'],
    ['7.135', 'on target'],
    ['7.1348', 'close'],
    ['7.1453', 'close'],
    [7.14, 'on target'],
    ['7.14 g', 'on target'],
    ['7140 mg', 'on target'],
    ['0.00714 kg', 'on target'],
    ['7,14', 'on target'],
    ['7.14 × 10^0', 'on target'],
  ])('takes honest rounding of a mass: %s is %s', (entry, status) => {
    expect(statusOf('mass of solute', kbr, entry)).toBe(status);
  });
  it('takes a tie rounded up and rounded to even', () => {
    // 0.250 mol/L × 50 mL = 0.0125 mol, which is 0.012 or 0.013 at two figures.
    const tie: Table = [
      ['molarity', '0.250'],
      ['volume', '50'],
    ];
    expect(statusOf('moles of solute', tie, '0.012', 2)).toBe('on target');
    expect(statusOf('moles of solute', tie, '0.013', 2)).toBe('on target');
    expect(statusOf('moles of solute', tie, '0.0131', 2)).toBe('not yet');
  });
  it('takes every permitted rounding of atomic weights, each element on its own', () => {
    // K 39.0983, Br 79.904: published 119.0023; each as published or to two or three decimals: 118.998 to 119.004.
    const formula: Table = [['formula', 'KBr']];
    for (const entry of ['119.00', '119.0', '119.002', '119.0023']) {
      expect(statusOf('molar mass', formula, entry)).toBe('on target');
    }
    expect(statusOf('molar mass', formula, '119.02')).toBe('close');
    expect(statusOf('molar mass', formula, '119.03')).toBe('not yet');
    // Na 23 and Cl 35: right where the class rounds to whole numbers, two good figures where it does not.
    expect(statusOf('molar mass', [['formula', 'NaCl']], '58', undefined, 0)).toBe('on target');
    expect(statusOf('molar mass', [['formula', 'NaCl']], '58')).toBe('close');
    expect(statusOf('molar mass', [['formula', 'NaCl']], '58.0')).toBe('not yet');
  });
  it('asks a molar mass to the decimals of the weights, unless figures are given', () => {
    expect(statusOf('molar mass', [['formula', 'KBr']], '119', 3)).toBe('on target');
    expect(statusOf('molar mass', [['formula', 'KBr']], '119', 5)).toBe('on target');
    expect(statusOf('molar mass', [['formula', 'CuSO4·5H2O']], '249.7', undefined, 1)).toBe('on target');
  });
  it('asks a difference no finer than what was taken away', () => {
    // 250 mL − 237.5 mL: the stock is known to 1 mL, so 12 and 13 are both honest.
    const strong: Table = [
      ['stock molarity', '0.100'],
      ['target molarity', '0.0950'],
      ['target volume', '250'],
    ];
    for (const entry of ['12', '12.5', '13', '12.0', '13.0'])
      expect(statusOf('water volume', strong, entry)).toBe('on target');
    expect(statusOf('stock volume', strong, '237')).toBe('on target');
    expect(statusOf('stock volume', strong, '238')).toBe('on target');
  });
});

describe('judgeQuantity close', () => {
  it('reaches 1 % of the target where several rounded steps lead there', () => {
    expect(statusOf('mass of solute', kbr, '7.21')).toBe('close');
    expect(statusOf('mass of solute', kbr, '7.22')).toBe('not yet');
    expect(statusOf('mass of solute', kbr, '7.07')).toBe('close');
    expect(statusOf('mass of solute', kbr, '7.06')).toBe('not yet');
  });
  it('reaches two units of the last figure, at most 2 %, for a ratio', () => {
    const factor = dilution.slice(0, 2);
    expect(statusOf('dilution factor', factor, '4.02')).toBe('close');
    expect(statusOf('dilution factor', factor, '4.03')).toBe('not yet');
    // One figure asked: two units would be 50 %, so 2 % of 4 is the limit.
    expect(statusOf('dilution factor', factor, '4.6', 1)).toBe('not yet');
  });
  it('takes fewer figures than asked, but at least two', () => {
    expect(statusOf('mass of solute', kbr, '7.1')).toBe('close');
    expect(judgeQuantity('mass of solute', kbr, '7.1').feedback).toContain('three figures');
    expect(statusOf('mass of solute', kbr, '7')).toBe('not yet');
    expect(statusOf('mass of solute', kbr, '7.3')).toBe('not yet');
  });
});

describe('judgeQuantity of a molar mass from a short table of weights', () => {
  const of = (formula: string, entry: string, decimals?: number) =>
    judgeQuantity('molar mass', [['formula', formula]], entry, undefined, decimals);
  const whichTable = {
    status: 'close',
    feedback: 'Close. Tables of atomic weights differ. Which one does your class use?',
    slip: '',
  };
  // 23.0 + 35.5; 2 + 32 + 64; 63.5 + 32 + 64 + 90; 63.5 + 32.1 + 9 × 16.0 + 10 × 1.0; 24.3 + 2 × 35.4 + 6 × 18.0.
  it.each([
    ['NaCl', '58.5'],
    ['NaCl', '58.50'],
    ['H2SO4', '98.0'],
    ['H2SO4', '98.00'],
    ['CuSO4·5H2O', '249.5'],
    ['CuSO4·5H2O', '249.6'],
    ['MgCl2·6H2O', '203.1'],
    ['KCl', '74.50'],
    ['HCl', '36.50'],
    // A whole number, and one figure that is all of it.
    ['CuCl2', '134.50'],
    ['LiH', '8'],
  ])('asks which one the class uses: %s %s', (formula, entry) => {
    expect(of(formula, entry)).toEqual(whichTable);
  });
  it('asks for more places first where there are too few for the class’s own table', () => {
    expect(of('NaCl', '58.4').feedback).toContain('two decimals');
    expect(of('H2SO4', '98').feedback).toContain('two decimals');
  });
  it('takes no other molar mass for one, and no other quantity', () => {
    // 39.0 + 79.9 has a weight cut off, and 250.00 is 64 for copper.
    for (const [formula, entry] of [
      ['KBr', '118.9'],
      ['CuSO4·5H2O', '250.00'],
      ['NaCl', '58.6'],
      ['NaCl', '1e2'],
    ] as const)
      expect([entry, of(formula, entry).status]).toEqual([entry, 'not yet']);
    expect(judgeQuantity('mass of solute', kbr, '7.35').status).toBe('not yet');
  });
  it('is right where the class rounds weights as far itself', () => {
    expect(of('NaCl', '58.5', 1)).toMatchObject({ status: 'on target', slip: '' });
    expect(of('KBr', '119.0')).toMatchObject({ status: 'on target', slip: '' });
  });
});

describe('judgeQuantity of figures cut off', () => {
  // 250 ÷ 15 is 16.67: 0.300 mol/L to 0.0180 mol/L.
  const factor: Table = [
    ['stock molarity', '0.300'],
    ['target molarity', '0.0180'],
  ];
  it('asks for the next digit', () => {
    expect(judgeQuantity('dilution factor', factor, '16.6')).toMatchObject({
      status: 'close',
      feedback: 'Close. Look at the next digit: does it round up or down?',
    });
  });
  it('asks for spare digits where rounding is not the reason', () => {
    for (const entry of ['16.8', '16.5', '16.60'])
      expect(judgeQuantity('dilution factor', factor, entry).feedback, entry).toContain(
        'Close. Keep extra digits as you work, and round only at the end.',
      );
  });
});

describe('judgeQuantity of one figure', () => {
  const moles: Table = [
    ['molarity', '0.195'],
    ['volume', '500'],
  ];
  it('asks for more figures where that figure is right', () => {
    // 0.195 × 0.5 = 0.0975 mol.
    for (const entry of ['0.1', '.1', '1e-1', 0.1])
      expect(judgeQuantity('moles of solute', moles, entry)).toEqual({
        status: 'not yet',
        feedback: 'Not yet. One figure is not enough here. Give the value to three figures.',
        slip: '',
      });
    expect(judgeQuantity('molar mass', [['formula', 'Sc']], '4e1').feedback).toContain('two decimals');
    expect(judgeQuantity('molar mass', [['formula', 'KBr']], '100').feedback).not.toContain('decimals');
  });
  it('says nothing of figures where that figure is another, or where one is asked', () => {
    for (const entry of ['0.2', '0.08', '1']) {
      expect(judgeQuantity('moles of solute', moles, entry).feedback, entry).not.toContain('figure');
    }
    expect(judgeQuantity('moles of solute', moles, '0.1', 1).status).toBe('on target');
  });
});

describe('judgeQuantity of a percent error', () => {
  const low: Table = [
    ['measured', '0.237'],
    ['accepted', '0.250'],
  ];
  it.each([
    ['5.2', 'on target'],
    ['5.2 %', 'on target'],
    ['-5.2', 'on target'],
    ['−5.2 %', 'on target'],
    ['5', 'not yet'],
    ['5.1', 'close'],
    ['5.0', 'not yet'],
  ])('takes size or sign of measured − accepted: %s is %s', (entry, status) => {
    expect(statusOf('percent error', low, entry)).toBe(status);
  });
  it('asks about a sign that points the other way', () => {
    const high: Table = [
      ['measured', '0.263'],
      ['accepted', '0.250'],
    ];
    expect(judgeQuantity('percent error', high, '-5.2')).toMatchObject({ status: 'not yet', slip: '' });
    expect(judgeQuantity('percent error', high, '-5.2').feedback).toContain('sign');
  });
  it('of zero takes zero alone and names no slip', () => {
    const none: Table = [
      ['measured', '0.250'],
      ['accepted', '0.250'],
    ];
    expect(statusOf('percent error', none, '0')).toBe('on target');
    expect(statusOf('percent error', none, '0.0 %')).toBe('on target');
    for (const entry of ['100', '0.01', '1']) {
      expect(judgeQuantity('percent error', none, entry)).toMatchObject({ status: 'not yet', slip: '' });
    }
  });
});

describe('judgeQuantity of an entry with a unit', () => {
  it('asks about a unit of another kind, whatever it is', () => {
    for (const entry of ['7.14 mL', '7.14 mol/L', '7.14 apples', '7.14 %']) {
      const found = judgeQuantity('mass of solute', kbr, entry);
      expect(found).toMatchObject({ status: 'not yet', slip: '' });
      expect(found.feedback).toMatch(/unit/);
    }
  });
  it('asks about a unit of the right kind that the number does not fit', () => {
    expect(judgeQuantity('mass of solute', kbr, '7.14 kg')).toMatchObject({ status: 'not yet', slip: '' });
    expect(judgeQuantity('mass of solute', kbr, '7.14 kg').feedback).toMatch(/unit/);
  });
  it('takes the spellings of a molar mass and of a ratio', () => {
    for (const unit of ['g/mol', 'g mol-1', 'g·mol⁻¹', 'g mol^-1']) {
      expect(statusOf('molar mass', [['formula', 'KBr']], `119.00 ${unit}`)).toBe('on target');
    }
    expect(statusOf('molar mass', [['formula', 'KBr']], '119.00 g')).toBe('not yet');
    for (const entry of ['4', '4.00', '4×', '4 x', '4.00 times', '4-fold']) {
      expect(statusOf('dilution factor', dilution.slice(0, 2), entry)).toBe('on target');
    }
    expect(judgeQuantity('dilution factor', dilution.slice(0, 2), '4.00 mL').feedback).toContain('plain number');
  });
  it('takes litres where mL are asked', () => {
    expect(statusOf('stock volume', dilution, '0.0625 L')).toBe('on target');
    expect(statusOf('stock volume', dilution, '62.5 mL')).toBe('on target');
  });
});

describe('judgeQuantity of what cannot be judged', () => {
  it.each(['', '   ', undefined, null])('calls %j blank', (entry) => {
    expect(judgeQuantity('mass of solute', kbr, entry)).toEqual({ status: 'blank', feedback: '', slip: '' });
  });
  it.each([true, new Date(0), 'seven', '=', '1:10', 'g', '1,234', '--7'])('calls %j unreadable', (entry) => {
    expect(judgeQuantity('mass of solute', kbr, entry)).toMatchObject({ status: 'unreadable', slip: '' });
  });
  it.each(['39/400', '0.5*0.195', '=0.3*0.2*119'])('asks for the result of %s, and not about a unit', (entry) => {
    expect(judgeQuantity('mass of solute', kbr, entry)).toEqual({
      status: 'unreadable',
      feedback: 'Work it out and type one number.',
      slip: '',
    });
  });
  it('asks for the number alone where a mark stands beside it', () => {
    expect(judgeQuantity('mass of solute', kbr, 'm = 7.14').feedback).toContain('number alone');
  });
  it.each([
    '7.14 g KBr',
    '7.14 g (we think)',
    '7.14 grammes',
    '7.14 gm',
    'about 7.14 g',
    '~7.14',
    '7.14?',
    '7140 mg KBr',
  ])('takes %s for an answer that is right', (entry) => {
    expect(judgeQuantity('mass of solute', kbr, entry)).toMatchObject({ status: 'on target', slip: '' });
  });
  it.each(['7.14 apples', '7.14 g per L', '7.14 mL', '7.14 N', '7.14 g mol'])('asks about the unit of %s', (entry) => {
    expect(judgeQuantity('mass of solute', kbr, entry)).toEqual({
      status: 'not yet',
      feedback: 'Check the unit. This row asks for g. Does yours measure the same thing?',
      slip: '',
    });
  });
  it('says why it reads no entry of two numbers, and none that is too long', () => {
    expect(judgeQuantity('mass of solute', kbr, '7.14 or 7.15')).toMatchObject({
      status: 'unreadable',
      feedback: expect.stringContaining('more than one number'),
    });
    expect(judgeQuantity('mass of solute', kbr, `7.14 g ${'x'.repeat(200)}`)).toMatchObject({
      status: 'unreadable',
      feedback: expect.stringContaining('too long'),
    });
  });
  it('takes a times sign beside a dilution factor, and asks about a ratio', () => {
    const given = [
      ['stock molarity', '0.300'],
      ['target molarity', '0.0450'],
    ];
    for (const entry of ['6.67', '×6.67', 'x6.67', '6.67 times', '6.67x', '6.67-fold']) {
      expect([entry, judgeQuantity('dilution factor', given, entry).status]).toEqual([entry, 'on target']);
    }
    expect(judgeQuantity('dilution factor', given, '1:6.67')).toMatchObject({
      status: 'unreadable',
      feedback: expect.stringMatching(/What does each of its numbers count\?/),
    });
  });
  it('says that 1,234 can be read in two ways', () => {
    expect(judgeQuantity('mass of solute', kbr, '1,234').feedback).toContain('two ways');
  });
  it('never throws, whatever is typed', () => {
    const cell = fc.oneof(fc.string(), fc.double(), fc.boolean(), fc.date(), fc.constant(undefined));
    fc.assert(
      fc.property(cell, (entry) => {
        const { status, feedback } = judgeQuantity('mass of solute', kbr, entry);
        expect(['on target', 'close', 'not yet', 'blank', 'unreadable']).toContain(status);
        expect(feedback).not.toMatch(/undefined|NaN|\{/);
      }),
      { numRuns: cases({ short: 400, deep: 10_000 }) },
    );
  });
});

describe('judgeQuantity of givens that cannot be used', () => {
  it('lists the names that the quantity takes', () => {
    const unknown = judgeQuantity('mass of solute', [...kbr, ['volme', '200']], '7.14').error;
    expect(unknown).toMatchObject({ code: 'given-unknown', received: '“volme”' });
    expect(unknown?.advice).toContain('formula, molarity, volume, purity');
    const missing = judgeQuantity('mass of solute', kbr.slice(0, 2), '7.14').error;
    expect(missing).toMatchObject({ code: 'given-missing', argument: 'volume' });
    expect(missing?.advice).toContain('formula, molarity, volume, purity');
  });
  it('names the given that is bad', () => {
    expect(judgeQuantity('mass of solute', [['formula', 'Kbr'], ...kbr.slice(1)], '7.14').error).toMatchObject({
      argument: 'formula',
    });
    expect(
      judgeQuantity(
        'mass of solute',
        [
          ['formula', 'KBr'],
          ['molarity', '0.3 g'],
          ['volume', '200'],
        ],
        '7.14',
      ).error,
    ).toMatchObject({
      argument: 'molarity',
    });
    expect(
      judgeQuantity(
        'stock volume',
        [
          ['stock molarity', '0.5'],
          ['target molarity', '2'],
          ['target volume', '100'],
        ],
        '5',
      ).error,
    ).toMatchObject({
      code: 'target-not-below-stock',
      argument: 'target molarity',
    });
  });
  it.each([
    ['0', 'not-above-zero'],
    ['x', 'quantity-expected'],
    ['1e300 g', 'result-not-finite'],
    ['', 'given-missing'],
  ])('calls a mass by its name in the table, not by that of a function’s argument: %s', (mass, code) => {
    const table: Table = [
      ['formula', 'KBr'],
      ['mass', mass],
      ['volume', '1e-300'],
    ];
    expect(judgeQuantity('molarity', table, '1').error).toMatchObject({ code, argument: 'mass' });
  });
  it('refuses a name twice, a quantity that nobody knows and a table of one column', () => {
    expect(judgeQuantity('mass of solute', [...kbr, ['volume', '250']], '7.14').error?.code).toBe('given-twice');
    expect(judgeQuantity('mass', kbr, '7.14').error?.code).toBe('quantity-unknown');
    expect(judgeQuantity('mass of solute', [['formula']] as never, '7.14').error?.code).toBe('given-shape');
  });
  it('compares two values with units of one kind, and refuses two kinds', () => {
    const error = (measured: string, accepted: string) =>
      judgeQuantity(
        'percent error',
        [
          ['measured', measured],
          ['accepted', accepted],
        ],
        '4.0',
      );
    expect(error('0.26 mol/L', '250 mmol/L').status).toBe('on target');
    expect(error('0.26 mol', '0.25 g').error).toMatchObject({ code: 'unit-other-kind', argument: 'accepted' });
  });
  it('shows both readings of a purity that may be a fraction', () => {
    const purity: Table = [...kbr, ['purity', 0.95]];
    expect(judgeQuantity('mass of solute', purity, '7.52').error).toMatchObject({
      code: 'percent-two-readings',
      argument: 'purity',
    });
  });
  it('takes names in any case and spacing, passes over rows without one, and a blank purity is none', () => {
    const table: Table = [
      ['Formula ', 'KBr'],
      ['', ''],
      ['MOLARITY', 0.3],
      ['volume', '0.2 L'],
      ['purity', ''],
    ];
    expect(statusOf(' Mass  of solute', table, '7.14')).toBe('on target');
  });
});
