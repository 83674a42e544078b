import { describe, expect, it } from 'vitest';
import { callFunction } from '../../src/functions/callFunction.ts';
import { catalogue } from '../../src/functions/catalogue.ts';
import type { CellArgument, Filled } from '../../src/functions/entry.ts';
import { callText } from './callText.ts';
import { expectCells } from './expectCells.ts';

interface Case {
  readonly name: string;
  readonly call: readonly CellArgument[];
  readonly gives: Filled | readonly (readonly Filled[])[];
}
const named = (cases: readonly Case[]) => cases.map((one) => ({ ...one, text: callText(one.name, one.call) }));

/** DILUTIONVOLUME(2, target, volume) is target / 2 × volume: easy to see through. */
const fitting: readonly Case[] = [
  { name: 'DILUTIONVOLUME', call: [[[2]], [[0.5]], [[100]]], gives: 25 },
  { name: 'DILUTIONVOLUME', call: [2, [[0.5], [1], [1.5]], 100], gives: [[25], [50], [75]] },
  { name: 'DILUTIONVOLUME', call: [2, [[0.5, 1, 1.5]], 100], gives: [[25, 50, 75]] },
  { name: 'DILUTIONVOLUME', call: [2, [[0.5], [1]], [[100], [200]]], gives: [[25], [100]] },
  {
    name: 'DILUTIONVOLUME',
    call: [[[2, 4]], [[0.5], [1]], 100],
    gives: [
      [25, 12.5],
      [50, 25],
    ],
  },
  {
    name: 'DILUTIONVOLUME',
    call: [
      2,
      [
        [0.5, 1],
        [1.5, 0.2],
      ],
      [[100, 200]],
    ],
    gives: [
      [25, 100],
      [75, 20],
    ],
  },
  {
    name: 'DILUTIONVOLUME',
    call: [
      2,
      [
        [0.5, 1],
        [1.5, 0.2],
      ],
      [[100], [200]],
    ],
    gives: [
      [25, 50],
      [150, 20],
    ],
  },
  { name: 'DILUTIONVOLUME', call: [[[2]], [[0.5], [1]], [[100]]], gives: [[25], [50]] },
];

const gaps: readonly Case[] = [
  // Every argument that came as a range is blank there: blank.
  { name: 'DILUTIONVOLUME', call: [2, [[0.5], [''], [1]], 100], gives: [[25], [''], [50]] },
  { name: 'DILUTIONVOLUME', call: [2, [[0.5], ['  ']], [[100], [null]]], gives: [[25], ['']] },
  // Only one of them is: the place says what is missing.
  { name: 'DILUTIONVOLUME', call: [2, [[0.5], ['']], [[100], [200]]], gives: [[25], ['⚠ target molarity missing']] },
  { name: 'DILUTIONVOLUME', call: [2, [[0.5], [1]], [[''], [200]]], gives: [['⚠ target volume missing'], [100]] },
  // One slip does not blank the column.
  { name: 'DILUTIONVOLUME', call: [2, [[0.5], [3], [1]], 100], gives: [[25], ['⚠ target not below stock'], [50]] },
  { name: 'MOLARMASS', call: [[['KBr'], ['nacl'], [''], ['KBr']]], gives: [[119.0023], ['⚠ NaCl?'], [''], [119.0023]] },
  {
    name: 'MOLARMASS',
    call: [[['KBr'], ['#REF!'], [true]]],
    gives: [[119.0023], ['⚠ formula: an error'], ['⚠ not a formula']],
  },
  { name: 'SOLUTEMASS', call: ['KBr', 0.3, [[200], ['2.5 kg']]], gives: [[7.140138], ['⚠ volume, not kg']] },
  { name: 'PERCENTERROR', call: [[['1,234'], ['1,5']], 1.25], gives: [['⚠ 1234 or 1.234?'], [20]] },
];

const optional: readonly Case[] = [
  // A blank cell in an optional argument is the same as leaving it out.
  { name: 'SOLUTEMASS', call: ['KBr', 0.3, 200, ''], gives: 7.140138 },
  { name: 'SOLUTEMASS', call: ['KBr', 0.3, 200, undefined], gives: 7.140138 },
  { name: 'SOLUTEMASS', call: ['KBr', 0.3, 200, null], gives: 7.140138 },
  { name: 'SOLUTEMASS', call: ['KBr', 0.3, [[200], [200]], [['50 %'], ['']]], gives: [[14.280276], [7.140138]] },
  { name: 'SOLUTEMASS', call: ['KBr', 0.3, [[200], [100]], [['']]], gives: [[7.140138], [3.570069]] },
  { name: 'PERCENTERROR', call: [0.291, 0.3, ''], gives: 3 },
  { name: 'PERCENTERROR', call: [[[0.291], [0.309]], 0.3, true], gives: [[-3], [3]] },
];

describe('ranges', () => {
  it.each(named(fitting))('$text goes through its ranges together', ({ name, call, gives }) =>
    expectCells(callFunction(name, call), gives),
  );
  it.each(named(gaps))('$text keeps each place to itself', ({ name, call, gives }) =>
    expectCells(callFunction(name, call), gives),
  );
  it.each(named(optional))('$text reads a blank optional argument as left out', ({ name, call, gives }) =>
    expectCells(callFunction(name, call), gives),
  );

  it.each([
    {
      name: 'MOLES',
      call: [Array.from({ length: 8 }, () => ['KBr']), Array.from({ length: 4 }, () => [1])],
      says: 'These ranges don’t fit each other: 8 rows for the formula and 4 rows for the mass. Make both cover the same rows, or give one cell.',
    },
    {
      name: 'DILUTIONVOLUME',
      call: [2, [[0.5, 1, 1.5]], [[100, 200]]],
      says: 'These ranges don’t fit each other: 3 columns for the target molarity and 2 columns for the target volume. Make both cover the same columns, or give one cell.',
    },
    {
      name: 'DILUTIONVOLUME',
      call: [
        2,
        [
          [0.5, 1],
          [0.5, 1],
        ],
        [[100], [200], [300]],
      ],
      says: 'These ranges don’t fit each other: 2 rows and 2 columns for the target molarity and 3 rows for the target volume. Make both cover the same rows, or give one cell.',
    },
    {
      name: 'COMPOSITION',
      call: [[['KBr'], ['KI'], ['KCl']]],
      says: 'Give one cell for the formula, not 3 rows. COMPOSITION fills a whole table, so call it once for each value.',
    },
    {
      name: 'SERIALDILUTION',
      call: [1, [[2, 10]], 3],
      says: 'Give one cell for the factor, not 2 columns. SERIALDILUTION fills a whole table, so call it once for each value.',
    },
    {
      name: 'CHECKENTRY',
      call: [[['1', '2']], 1],
      says: 'Give one column or one cell for the entry, not 2 columns. CHECKENTRY fills a row for each entry, so put the entries in one column.',
    },
  ] satisfies { name: string; call: CellArgument[]; says: string }[])(
    '$name refuses shapes that do not fit, once for the call',
    ({ name, call, says }) => {
      expect(() => callFunction(name, call)).toThrow(new Error(says));
    },
  );

  it('answers in the common shape for every function that fills one cell', () => {
    for (const entry of catalogue) {
      const [{ call, gives }] = entry.examples;
      if (Array.isArray(gives) || entry.arguments.some(({ kind }) => kind === 'table')) continue;
      const [first, ...rest] = call;
      const column = callFunction(entry.name, [[[first as string], [''], [first as string]], ...rest]);
      expectCells(column, [[gives as Filled], [''], [gives as Filled]]);
      const row = callFunction(entry.name, [[[first as string, first as string]], ...rest]);
      expectCells(row, [[gives as Filled, gives as Filled]]);
    }
  });

  it('stretches a cell over 5,000 places', () => {
    const volumes = Array.from({ length: 5000 }, (_, index) => [index + 1]);
    const masses = callFunction('SOLUTEMASS', ['CuSO4·5H2O', '0.100 M', volumes]) as number[][];
    expect(masses).toHaveLength(5000);
    expect((masses[4999]?.[0] ?? 0) / (masses[0]?.[0] ?? 1)).toBeCloseTo(5000, 9);
  });
});

describe('CHECKENTRY over columns', () => {
  const check = (...call: CellArgument[]) => callFunction('CHECKENTRY', call);
  const firsts = (cells: unknown) => (cells as string[][]).map(([status]) => status);

  it('judges each entry against the target of its row, blank ones too', () => {
    expect(firsts(check([['0.30'], [''], ['abc'], [true]], [[0.3], [0.3], [0.3], [0.3]]))).toEqual([
      'on target',
      'blank',
      'unreadable',
      'unreadable',
    ]);
  });
  it('calls a blank entry blank whatever the target beside it is', () => {
    expect(check([[''], ['1']], [[''], ['x']])).toEqual([
      ['blank', ''],
      [expect.stringMatching(/^⚠ /), ''],
    ]);
  });
  it('stretches one entry over several targets and leaves a blank target blank', () => {
    expect(check('5.00', [[5], [''], [4]])).toEqual([
      ['on target', expect.any(String)],
      ['', ''],
      ['not yet', expect.any(String)],
    ]);
  });
  it('needs a tolerance for a target of 0', () => {
    expect(() => check('0', 0)).toThrow(/^A target of 0 needs a tolerance\. /);
    expect(check('0', 0, 5)).toEqual([['on target', expect.any(String)]]);
  });
  it('reads a tolerance below 1 as printed and with its sign', () => {
    expect(firsts(check('10.04', 10, 0.5))).toEqual(['on target']);
    expect(firsts(check('10.06', 10, '0.5 %'))).toEqual(['not yet']);
  });
});

describe('CHECKSTEP over columns', () => {
  const given = [
    ['stock molarity', '2.00'],
    ['target molarity', '0.500'],
    ['target volume', '100'],
  ];
  it('goes through entries with one table of given numbers', () => {
    expect(callFunction('CHECKSTEP', ['stock volume', given, [['25.0'], ['75'], ['25 mL'], ['']]])).toEqual([
      ['on target', expect.any(String), ''],
      ['not yet', expect.any(String), 'water-for-stock'],
      ['on target', expect.any(String), ''],
      ['blank', '', ''],
    ]);
  });
  it('goes through quantities and entries together', () => {
    expect(
      callFunction('CHECKSTEP', [[['stock volume'], ['water volume'], ['']], given, [['25.0'], ['75.0'], ['']]]),
    ).toEqual([
      ['on target', expect.any(String), ''],
      ['on target', expect.any(String), ''],
      ['blank', '', ''],
    ]);
  });
  it('says which names it takes where the table has another or lacks one', () => {
    expect(() => callFunction('CHECKSTEP', ['stock volume', [...given, ['colour', 'blue']], '25'])).toThrow(
      /“colour”.*stock molarity, target molarity, target volume/,
    );
    expect(() => callFunction('CHECKSTEP', ['stock volume', given.slice(1), '25'])).toThrow(
      /stock molarity.*stock molarity, target molarity, target volume/,
    );
  });
});
