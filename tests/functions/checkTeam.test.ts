import { describe, expect, it } from 'vitest';
import { callFunction } from '../../src/functions/callFunction.ts';
import type { CellArgument } from '../../src/functions/entry.ts';

const givenNames = [['formula', 'molarity', 'volume', 'stock molarity', 'target molarity', 'target volume']];
const givenValues = [['KNO3', '0.250', '200', '0.250', '0.0500', '100']];
const settings = [
  ['figures', '3'],
  ['atomic-weight decimals', '2'],
  ['decimal mark', 'point'],
  ['highest help level', '3'],
  ['a setting of the Plan that no check reads', 'x'],
];
interface Row {
  readonly step: string;
  readonly entry?: string | number;
  readonly help?: number | string;
}
const column = (values: readonly (string | number)[]) => values.map((value) => [value]);

/** The block between a heading row and a closing row, as a class sheet has it. */
function check(rows: readonly Row[], changes: { readonly [place: number]: CellArgument } = {}) {
  const block = [{ step: '', entry: 'your entry', help: 'help wanted' }, ...rows, { step: '', entry: '', help: '' }];
  const call: CellArgument[] = [
    givenNames,
    givenValues,
    settings,
    column(block.map(({ step }) => step)),
    column(block.map(({ entry = '' }: Row) => entry)),
    column(block.map(({ help = '' }: Row) => help)),
  ];
  for (const [place, cells] of Object.entries(changes)) call[Number(place)] = cells;
  return callFunction('CHECKTEAM', call) as string[][];
}
const checks = (cells: readonly (readonly string[])[]) => cells.map(([status]) => status);

describe('CHECKTEAM', () => {
  // KNO3: 39.0983 + 14.007 + 3 × 15.999 = 101.1023 g/mol; 0.250 mol/L × 0.200 L = 0.0500 mol; 5.055 g. Worked by hand.
  const rows: readonly Row[] = [
    { step: 'molar mass', entry: '101.10' },
    { step: 'moles of solute', entry: '0.0500' },
    { step: 'mass of solute', entry: '5.06 g' },
    { step: 'stock volume', entry: '20.0 mL' },
    { step: 'water volume', entry: '' },
  ];

  it('fills three columns from the heading row to the closing row', () => {
    const cells = check(rows);
    expect(cells).toHaveLength(rows.length + 2);
    expect(cells.every((row) => row.length === 3)).toBe(true);
    expect(cells[0]).toEqual(['Check', 'Feedback', 'Hint']);
    expect(cells[cells.length - 1]).toEqual(['', '', '']);
    expect(checks(cells).slice(1, -1)).toEqual(['on target', 'on target', 'on target', 'on target', 'blank']);
  });

  it('keeps every check where it belongs when rows are inserted or deleted', () => {
    const withGaps = [rows[0], { step: '' }, rows[1], { step: '', entry: 'a note of ours' }, rows[2]] as readonly Row[];
    expect(checks(check(withGaps))).toEqual(['Check', 'on target', '', 'on target', '', 'on target', '']);
    expect(checks(check([rows[2] as Row]))).toEqual(['Check', 'on target', '']);
    expect(checks(check([...rows].reverse()))).toEqual([
      'Check',
      'blank',
      'on target',
      'on target',
      'on target',
      'on target',
      '',
    ]);
  });

  it('takes a block without a heading row', () => {
    expect(checks(check([], { 3: column(['mass of solute']), 4: column(['5.06']), 5: '' }))).toEqual(['on target']);
  });

  it('says follows where a wrong entry was carried on rightly, and names the row', () => {
    const cells = check([
      { step: 'molar mass', entry: '85.10' },
      { step: 'moles of solute', entry: '0.0500' },
      { step: 'mass of solute', entry: '4.26' },
    ]);
    expect(checks(cells)).toEqual(['Check', 'not yet', 'on target', 'follows', '']);
    expect(cells[3]?.[1]).toContain('molar mass');
  });

  it('gives the hint that a row asks for, as far as the settings go', () => {
    const asked = [{ step: 'mass of solute', help: 3 }, { step: 'stock volume', help: '1' }, { step: 'water volume' }];
    const hints = check(asked).map(([, , hint]) => hint);
    expect(hints[1]).toContain('0.250');
    expect(hints[2]).not.toBe('');
    expect(hints[3]).toBe('');
    const none = check(asked, { 2: [['highest help level', '0']] }).map(([, , hint]) => hint);
    expect(none.slice(1)).toEqual(['', '', '', '']);
  });

  it('reads numbers by the decimal mark of the settings and finds no entry unreadable for it', () => {
    const comma = [...settings.slice(0, 2), ['decimal mark', 'comma']];
    const values = [['KNO3', '0,250', '200', '0,250', '0,0500', '100']];
    const cells = check(
      [
        { step: 'mass of solute', entry: '5,055' },
        { step: 'stock volume', entry: '20,0' },
        { step: 'stock volume', entry: '20.0' },
      ],
      { 1: values, 2: comma },
    );
    expect(checks(cells)).toEqual(['Check', 'on target', 'on target', 'on target', '']);
  });

  it('is unreadable where a given is bad or a step unknown, and judges the other rows as ever', () => {
    const cells = check(
      [
        { step: 'mass of solute', entry: '5.06' },
        { step: 'stock volume', entry: '20.0' },
        { step: 'colour', entry: '1' },
      ],
      { 1: [['KNO3', '0.250', 'two hundred', '0.250', '0.0500', '100']] },
    );
    expect(checks(cells)).toEqual(['Check', 'unreadable', 'on target', 'unreadable', '']);
    expect(cells[1]?.[1]).toMatch(/^⚠ .*volume/);
    expect(cells[3]?.[1]).toMatch(/^⚠ .*colour/);
  });

  it('puts the wording of the teacher in place of ours', () => {
    const cells = check([{ step: 'mass of solute', help: 1 }], {
      6: [
        ['step', 'level', 'wording', 'link'],
        ['mass of solute', 1, 'Ask yourself what the balance shows.', ''],
      ],
    });
    expect(cells[1]?.[2]).toBe('Ask yourself what the balance shows.');
  });

  it.each([
    {
      place: 1,
      cells: [['KNO3', '0.250']],
      says: /^The row of given values has 2 cells, but needs as many as the given names, 6\. /,
    },
    { place: 4, cells: [['5.06']], says: /^The column of entries has 1 row, but needs as many as the steps, 3\. / },
    {
      place: 5,
      cells: [[1], [1]],
      says: /^The column of help wanted has 2 rows, but needs as many as the steps, 3\. /,
    },
    {
      place: 2,
      cells: [['figures']],
      says: /^The table of settings has one column, but needs two: name and value\. /,
    },
    { place: 0, cells: [['a'], ['b']], says: /^The row of given names has 2 rows, but needs one row\. / },
  ])('refuses a block that does not fit, place $place', ({ place, cells, says }) => {
    expect(() => check([{ step: 'mass of solute', entry: '5.06' }], { [place]: cells })).toThrow(says);
  });
});
