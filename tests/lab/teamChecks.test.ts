import { describe, expect, it } from 'vitest';
import { closedSetting, closedText } from '../../src/lab/judging/isClosed.ts';
import { type TeamTable, teamChecks } from '../../src/lab/judging/teamChecks.ts';
import { activityById } from '../../src/lab/lesson/activities.ts';
import { closedRow } from '../../src/lab/texts/feedback.ts';
import { layoutVersion } from '../../src/workbook/layout.ts';

const givens = {
  formula: 'CuSO4·5H2O',
  'stock molarity': '0.300',
  flask: '200',
  'target molarity': '0.0300',
  'target volume': '250',
  ion: 'Cu2+',
  purity: '',
};
type Changes = Partial<Omit<TeamTable, 'steps' | 'entries'>> & { givens?: Record<string, unknown> };

/** Checks of rows by step id, in a block with a heading row and a closing row. */
function checks(rows: Readonly<Record<string, unknown>>, { givens: own, ...changes }: Changes = {}) {
  const named = { ...givens, ...own };
  const ids = Object.keys(rows);
  const table = teamChecks({
    givenNames: Object.keys(named),
    givenValues: Object.values(named) as string[],
    settings: [
      ['activity', 'stock and dilution'],
      ['layout', String(layoutVersion)],
    ],
    steps: ['', ...ids, ''],
    entries: ['Entry', ...(Object.values(rows) as string[]), ''],
    ...changes,
  });
  expect(table).toHaveLength(ids.length + 2);
  expect(table[table.length - 1]).toEqual({ check: '', lookAt: '', hint: '' });
  return Object.fromEntries(
    ids.map((id, index) => [id, table[index + 1] ?? { check: 'missing', lookAt: '', hint: '' }]),
  );
}
const statuses = (rows: Record<string, unknown>, changes?: Changes) =>
  Object.values(checks(rows, changes)).map(({ check }) => check);

const right = {
  'molar mass': '249.68',
  'moles of solute': '0.0600',
  'mass of solute': '15.0',
  'mass weighed': '15.02',
  'stock made': '0.301',
  'dilution factor': '10.0',
  'stock volume': '25.0',
  'water volume': '225',
  'diluted molarity': '0.0301',
  'ion molarity': '0.0300',
};

describe('a class that was closed at the bell', () => {
  const rows = {
    'cautions read': '',
    'molar mass': '249.68',
    'moles of solute': '60',
    'mass of solute': '',
    'mass weighed': 'x',
    'in your words': 'We rinsed it.',
  };
  const closed = (keys: string, key = 'c1-t1') =>
    checks(rows, {
      settings: [
        ['activity', 'stock and dilution'],
        ['layout', String(layoutVersion)],
        [closedSetting, keys],
      ],
      givens: { key },
      helpWanted: ['', '', '', 1, '', '', '', ''],
    });
  const open = closed('');
  it('asks nothing in rows that are still open, and leaves those that are right or told as they are', () => {
    const now = closed('c2-t1; c1-t1');
    expect(Object.values(now).map(({ check }) => check)).toEqual([
      closedRow.check,
      'on target',
      closedRow.check,
      closedRow.check,
      closedRow.check,
      '',
    ]);
    expect(now['moles of solute']).toEqual({ ...open['moles of solute'], ...closedRow });
    expect(open['moles of solute']?.lookAt).not.toBe(closedRow.lookAt);
    expect(now['molar mass']).toEqual(open['molar mass']);
  });
  it('keeps the cautions in sight', () => {
    expect(closed('c1-t1')['cautions read']?.lookAt).toBe(open['cautions read']?.lookAt);
    expect(open['cautions read']?.lookAt).toContain('goggles');
  });
  it('asks nothing in a row that nobody knows either', () => {
    const settings = [
      ['activity', 'stock and dilution'],
      [closedSetting, 'c1-t1'],
    ];
    expect(checks({ 'boiling point': '100' }, { settings, givens: { key: 'c1-t1' } })['boiling point']).toEqual({
      ...closedRow,
      hint: '',
    });
  });
  it('is told by the key of the block, and by nothing like it', () => {
    for (const [keys, key] of [
      ['c2-t1', 'c1-t1'],
      ['c1-t11; xc1-t1', 'c1-t1'],
      ['', ''],
      [';;', ''],
    ] as const)
      expect(closed(keys, key)).toEqual(closed('', key));
    expect(closed(closedText(['a, b', 'é/ü']), 'a, b')).not.toEqual(closed('', 'a, b'));
  });
});

describe('teamChecks', () => {
  it('gives headings in the first row and blanks beside every other row without a step', () => {
    const table = teamChecks({
      givenNames: ['formula'],
      givenValues: ['KBr'],
      settings: [],
      steps: ['', 'molar mass', '', ''],
      entries: ['Entry', '119.00', 'a note', ''],
    });
    expect(table.map(({ check }) => check)).toEqual(['Check', 'on target', '', '']);
    expect(table[0]).toEqual({ check: 'Check', lookAt: 'Feedback', hint: 'Hint' });
    expect(table[2]).toEqual({ check: '', lookAt: '', hint: '' });
  });
  it('finds the whole everyday block on target', () => {
    expect(statuses(right)).toEqual(Object.keys(right).map(() => 'on target'));
  });
  it('judges a block without a heading row from its first row', () => {
    const table = teamChecks({
      givenNames: ['formula'],
      givenValues: ['KBr'],
      settings: [],
      steps: ['molar mass'],
      entries: ['119'],
    });
    expect(table.map(({ check }) => check)).toEqual(['on target']);
  });
  it('keeps the order of rows out of it', () => {
    const turned = Object.fromEntries(Object.entries(right).reverse());
    expect(statuses(turned)).toEqual(Object.keys(right).map(() => 'on target'));
  });
});

describe('teamChecks with numbers carried forward', () => {
  it('takes what follows from the team’s own rounded entries', () => {
    // 4 % purity moves nothing here: 0.0125 mol is typed as 0.0125, M as 58.44; 0.731 or 0.7305 g both follow.
    const own = { formula: 'NaCl', 'stock molarity': '0.1666', flask: '75', purity: '' };
    const found = statuses(
      { 'molar mass': '58.44', 'moles of solute': '0.0125', 'mass of solute': '0.7305' },
      { givens: own },
    );
    expect(found).toEqual(['on target', 'on target', 'on target']);
    // 2.60 ÷ 0.383 is 6.7885; typed as 6.79 it gives 36.8 mL, without typing 36.83 mL.
    const diluted = { 'stock molarity': '2.60', 'target molarity': '0.383', 'target volume': '250' };
    expect(statuses({ 'dilution factor': '6.79', 'stock volume': '36.82' }, { givens: diluted })).toEqual([
      'on target',
      'on target',
    ]);
  });
  it('says that a row follows from a wrong one, and which row to look at first', () => {
    const found = checks({ ...right, 'moles of solute': '60.0', 'mass of solute': '14981', 'mass weighed': '' });
    expect(found['moles of solute']).toMatchObject({ check: 'not yet' });
    expect(found['moles of solute']?.lookAt).toContain('volume left in mL');
    expect(found['mass of solute']).toMatchObject({ check: 'follows' });
    expect(found['mass of solute']?.lookAt).toContain('“Moles of solute”');
  });
  it('points through a row that follows at the row where it begins', () => {
    const found = checks({ 'dilution factor': '0.100', 'stock volume': '2500', 'water volume': '-2250' });
    expect(found['dilution factor']).toMatchObject({ check: 'not yet' });
    expect(found['stock volume']).toMatchObject({ check: 'follows' });
    expect(found['water volume']).toMatchObject({ check: 'follows' });
    for (const row of ['stock volume', 'water volume']) expect(found[row]?.lookAt).toContain('“Dilution factor”');
  });
  it('puts on target before follows where both fit', () => {
    expect(statuses({ 'moles of solute': '60.0', 'mass of solute': '15.0' })).toEqual(['not yet', 'on target']);
  });
  it('puts close before follows, and follows before a slip', () => {
    expect(statuses({ 'molar mass': '249.9', 'mass of solute': '14.994' })).toEqual(['not yet', 'on target']);
    expect(statuses({ 'molar mass': '251.5', 'mass of solute': '15.1' })).toEqual(['not yet', 'close']);
    // The anhydrous molar mass, then the mass that follows from it: 9.58 g is a slip of its own as well.
    const found = checks({ 'molar mass': '159.60', 'mass of solute': '9.58' });
    expect(found['molar mass']?.lookAt).toContain(
      'Your value matches the molar mass without the water of hydration. What comes after the dot in the formula?',
    );
    expect(found['mass of solute']).toMatchObject({ check: 'follows' });
  });
  it('works a row from the entry of a measured row, and asks for it where there is none', () => {
    const found = checks({ 'mass weighed': '', 'stock made': '0.301' });
    expect(found['stock made']).toMatchObject({ check: 'not yet' });
    expect(found['stock made']?.lookAt).toContain('“Mass you weighed” first');
    expect(statuses({ 'mass weighed': '14.80', 'stock made': '0.296' })).toEqual(['on target', 'on target']);
  });
  it('takes what was weighed as a fact, however far from the plan', () => {
    // 30.00 g ÷ 249.68 g/mol ÷ 0.200 L; 18.00 g gives 0.360 mol/L.
    expect(statuses({ 'mass weighed': '30.00', 'stock made': '0.601' })).toEqual(['not yet', 'on target']);
    const heavy = checks({
      'mass weighed': '18.00',
      'stock made': '0.360',
      'stock volume': '25.0',
      'diluted molarity': '0.0360',
    });
    expect(heavy['mass weighed']?.check).toBe('not yet');
    expect(heavy['mass weighed']?.lookAt).toContain(
      'This reading is too high for your numbers. Was the mass of the empty boat or dish subtracted? If it was, take some solid out and read again.',
    );
    expect(heavy['stock made']).toEqual({ check: 'on target', lookAt: 'Yes, this fits your numbers.', hint: '' });
    expect(heavy['diluted molarity']?.check).toBe('on target');
    expect(statuses({ 'mass weighed': '15', 'stock made': '0.300' })).toEqual(['close', 'on target']);
  });
  it('names the molarity of the plan where that of the weighed mass is asked', () => {
    const made = (weighed: string, typed: string) =>
      checks({ 'mass weighed': weighed, 'stock made': typed })['stock made'];
    for (const typed of ['0.300', '0.30', '0.3'])
      expect(made('18.00', typed)).toEqual({
        check: 'not yet',
        lookAt: 'Your value matches the planned molarity. What mass did the balance show?',
        hint: '',
      });
    expect(made('18.00', '0.301')?.lookAt).not.toContain('plan');
    // Within what rounding may do, but the plan all the same; one figure fewer is that first.
    expect(made('15.02', '0.300')).toMatchObject({
      check: 'not yet',
      lookAt: expect.stringContaining('planned molarity'),
    });
    expect(made('15.02', '0.30')).toMatchObject({ check: 'close', lookAt: 'Close. Give the value to three figures.' });
    expect(made('15.02', '0.302')).toMatchObject({ check: 'close', lookAt: expect.stringContaining('extra digits') });
    expect(made('15.30', '0.300')?.lookAt).toContain('planned molarity');
  });
  it('says in the row for the mass that a molar mass without water was worked with', () => {
    expect(checks({ 'mass of solute': '9.58' })['mass of solute']?.lookAt).toContain(
      'matches a result with the molar mass of the salt without its water',
    );
  });
  it('names grams in the row for moles, also of an impure solid', () => {
    expect(checks({ 'moles of solute': '15.0' })['moles of solute']?.lookAt).toContain('the mass in grams');
    const impure = { givens: { purity: '94.5' } };
    expect(checks({ 'moles of solute': '15.9' }, impure)['moles of solute']?.lookAt).toContain('the mass in grams');
    expect(checks({ 'moles of solute': '15.2' })['moles of solute']?.lookAt).not.toContain('matches');
  });
  it('names a dilution factor from the sizes of the two flasks', () => {
    for (const typed of ['0.800', '1.25'])
      expect(checks({ 'dilution factor': typed })['dilution factor']?.lookAt).toContain(
        'Your value matches the ratio of the two flask sizes. Does all of the stock go into the second flask?',
      );
    expect(checks({ 'dilution factor': '1.27' })['dilution factor']?.lookAt).not.toContain('matches');
  });
});

describe('teamChecks of a row worked from an entry that cannot be', () => {
  it('points at that row and calls no given bad', () => {
    const found = checks({ ...right, 'stock volume': '2500', 'diluted molarity': '0.0301' });
    expect(found['diluted molarity']?.check).toBe('not yet');
    expect(found['diluted molarity']?.lookAt).toContain('“Stock volume needed” first');
    expect(checks({ 'mass weighed': '0', 'stock made': '0.301' })['stock made']?.lookAt).toContain(
      '“Mass you weighed” first',
    );
  });
});

describe('teamChecks at the bench', () => {
  it('says to wait while an earlier row needs another look', () => {
    const found = checks({ 'moles of solute': '60.0', 'mass of solute': '14981', 'mass weighed': '' });
    expect(found['mass weighed']).toMatchObject({ check: 'blank' });
    expect(found['mass weighed']?.lookAt).toMatch(/^Wait.*“Moles of solute”/);
    const typed = checks({ 'moles of solute': '60.0', 'mass of solute': '14981', 'mass weighed': '14980' });
    expect(typed['mass weighed']?.check).toBe('not yet');
    expect(typed['mass weighed']?.lookAt).toMatch(/^Wait/);
  });
  it('says nothing where the rows before are right, close or still blank', () => {
    expect(checks({ 'mass of solute': '', 'mass weighed': '' })['mass weighed']?.lookAt).toBe('');
    expect(checks({ 'mass of solute': '15.1', 'mass weighed': '' })['mass weighed']?.lookAt).toBe('');
  });
  it('keeps rows after it out of it', () => {
    expect(checks({ 'mass weighed': '', 'dilution factor': '0.1' })['mass weighed']?.lookAt).toBe('');
  });
});

describe('teamChecks of other kinds of step', () => {
  it('never scores a told step', () => {
    expect(checks({ 'in your words': 'It got paler.' })['in your words']).toMatchObject({ check: '', lookAt: '' });
  });
  it('judges an order and a choice by their letters', () => {
    expect(statuses({ 'stock procedure': '', particles: '' })).toEqual(['blank', 'blank']);
    expect(statuses({ 'stock procedure': '42', particles: '42' })).toEqual(['unreadable', 'unreadable']);
  });
});

describe('teamChecks of what cannot be used', () => {
  it('names the given that is bad, in the rows that use it alone', () => {
    const found = checks(
      { 'molar mass': '249.68', 'moles of solute': '0.0600', 'dilution factor': '10.0' },
      { givens: { flask: 'big' } },
    );
    expect(found['molar mass']?.check).toBe('on target');
    expect(found['moles of solute']).toMatchObject({
      check: 'unreadable',
      lookAt: '⚠ flask: your team’s number is missing or can’t be read. Tell your teacher.',
    });
    expect(found['dilution factor']?.check).toBe('on target');
  });
  it('names a given that is missing, or that stands there twice', () => {
    const missing = checks({ 'dilution factor': '' }, { givens: { 'target molarity': '' } });
    expect(missing['dilution factor']).toMatchObject({
      check: 'unreadable',
      lookAt: '⚠ target molarity: your team’s number is missing or can’t be read. Tell your teacher.',
    });
    const table = teamChecks({
      givenNames: ['formula', 'formula'],
      givenValues: ['KBr', 'KCl'],
      settings: [],
      steps: ['molar mass'],
      entries: ['119.00'],
    });
    expect(table).toEqual([
      {
        check: 'unreadable',
        lookAt: '⚠ formula: the one for your team is missing or can’t be read. Tell your teacher.',
        hint: '',
      },
    ]);
  });
  it('names the given of a relation that cannot hold', () => {
    const found = checks({ 'stock volume': '5' }, { givens: { 'target molarity': '2' } });
    expect(found['stock volume']).toMatchObject({
      check: 'unreadable',
      lookAt: '⚠ target molarity: your team’s number is missing or can’t be read. Tell your teacher.',
    });
  });
  it('names a step that nobody knows', () => {
    expect(checks({ 'boiling point': '100' })['boiling point']).toMatchObject({
      check: 'unreadable',
      lookAt: '⚠ boiling point: this row is not known here. Tell your teacher.',
    });
  });
  it('names a setting that cannot be read, in the rows that use it alone', () => {
    const settings = [
      ['activity', 'stock and dilution'],
      ['figures', 'three'],
    ];
    const found = checks({ 'molar mass': '249.68', 'moles of solute': '0.0600' }, { settings });
    expect(found['molar mass']?.check).toBe('on target');
    expect(found['moles of solute']).toMatchObject({
      check: 'unreadable',
      lookAt: '⚠ figures: this setting can’t be read. Tell your teacher.',
    });
  });
});

describe('teamChecks by its settings', () => {
  const settings = (...more: [string, unknown][]) => ({
    settings: [['activity', 'stock and dilution'], ['seed', '7'], ...more] as [string, string][],
  });
  it('asks for the figures of the settings, except of a molar mass', () => {
    const rows = { 'molar mass': '249.68', 'moles of solute': '0.0604' };
    expect(statuses(rows, settings(['figures', '2']))).toEqual(['on target', 'on target']);
    expect(statuses(rows, settings(['figures', '4']))).toEqual(['on target', 'close']);
  });
  it('rounds atomic weights as the settings say', () => {
    expect(statuses({ 'molar mass': '249.2' }, settings(['atomic-weight decimals', '1']))).toEqual(['not yet']);
    expect(statuses({ 'molar mass': '249.7' }, settings(['atomic-weight decimals', 1]))).toEqual(['on target']);
  });
  it('takes a molar mass from a short table for right where the class has 35.5 for chlorine', () => {
    const salt = { givens: { formula: 'NaCl' } };
    const rows = { 'molar mass': '58.5', 'mass of solute': '3.51' };
    expect(statuses(rows, salt)).toEqual(['close', 'on target']);
    for (const cell of ['35.5', 35.5, ' 35,5 ', '35.50'])
      expect(statuses(rows, { ...settings(['chlorine on the table', cell]), ...salt })).toEqual([
        'on target',
        'on target',
      ]);
    for (const cell of ['35.45', '', '35.6', 'yes'])
      expect(statuses(rows, { ...settings(['chlorine on the table', cell]), ...salt })[0]).toBe('close');
    // 63.5 + 32 + 64 + 90; a mass of 0.0555 mol is 13.8 g with it and 13.9 g with 249.68, each honestly rounded.
    const own = { ...settings(['chlorine on the table', '35.5']), givens: { 'stock molarity': '0.2775' } };
    expect(statuses({ 'molar mass': '249.5', 'mass of solute': '13.847' }, own)).toEqual(['on target', 'on target']);
    expect(statuses({ 'molar mass': '249.2' }, own)).toEqual(['not yet']);
  });
  it('reads numbers by the decimal mark of the settings', () => {
    const rows = { 'moles of solute': '0,0600', 'mass of solute': '15,0' };
    expect(statuses(rows, settings(['decimal mark', 'comma']))).toEqual(['on target', 'on target']);
    expect(statuses({ 'mass of solute': '15,000' }, settings(['decimal mark', 'comma']))).toEqual(['on target']);
    expect(statuses({ 'mass of solute': '15,000' }, settings())).toEqual(['not yet']);
  });
  it.each([
    ['comma', 'mass of solute', '14.981'],
    ['point', 'mass of solute', '14,981'],
    ['comma', 'molar mass', '249.680'],
    ['comma', 'water volume', '225.000'],
  ] as const)('asks about the mark, and names no slip, where a %s decides and %s is %s', (mark, step, entry) => {
    const found = checks({ [step]: entry }, settings(['decimal mark', mark]))[step];
    expect(found).toMatchObject({ check: 'not yet', lookAt: expect.stringContaining('mark in your number') });
  });
  it('asks about the mark of a reading too', () => {
    const rows = {
      'molar mass': '249,68',
      'moles of solute': '0,0600',
      'mass of solute': '15,0',
    };
    const read = checks({ ...rows, 'mass weighed': '15.020' }, settings(['decimal mark', 'comma']))['mass weighed'];
    expect(read).toMatchObject({ check: 'not yet', lookAt: expect.stringContaining('mark in your number') });
  });
  it('says why it reads no two numbers, in calculated and measured rows', () => {
    const one = checks({ ...right, 'mass of solute': '15.0 or 15.1' })['mass of solute'];
    const other = checks({ ...right, 'mass weighed': '15.02 or 15.03' })['mass weighed'];
    for (const found of [one, other]) {
      expect(found).toMatchObject({ check: 'unreadable', lookAt: expect.stringContaining('more than one number') });
    }
  });
  it('takes what people write around a number', () => {
    const remarks = {
      'molar mass': '249.68 g/mol of CuSO4·5H2O',
      'moles of solute': '0.0600mols',
      'mass of solute': 'about 15.0 g CuSO4·5H2O',
      'mass weighed': '15.02 g (balance two)',
      'stock made': '0.301 mole/litre',
      'dilution factor': '×10.0',
      'stock volume': '25.0 ml stock',
      'water volume': '~225 cc',
      'diluted molarity': '3.01x10-2 moldm-3',
      'ion molarity': '3.00 e-2 M Cu2+',
    };
    expect(statuses(remarks)).toEqual(Object.keys(remarks).map(() => 'on target'));
  });
  it('judges figures where asked, of entries typed as text alone', () => {
    const judged = settings(['judge figures', 'yes']);
    expect(statuses({ 'mass of solute': '15' }, settings())).toEqual(['on target']);
    const found = checks({ 'mass of solute': '15' }, judged)['mass of solute'];
    expect(found?.check).toBe('close');
    expect(found?.lookAt).toContain('three figures');
    expect(statuses({ 'mass of solute': '14.98' }, judged)).toEqual(['close']);
    expect(statuses({ 'mass of solute': 15 }, judged)).toEqual(['on target']);
    expect(statuses({ 'mass of solute': '15.0' }, judged)).toEqual(['on target']);
    // A whole number's zeros count as the student means them.
    const big = { givens: { 'stock molarity': '2.00', flask: '1000' } };
    expect(statuses({ 'moles of solute': '2.00' }, { ...judged, ...big })).toEqual(['on target']);
    expect(
      statuses(
        { 'dilution factor': '100' },
        { ...judged, givens: { 'stock molarity': '2.00', 'target molarity': '0.0200' } },
      ),
    ).toEqual(['on target']);
  });
  it('gives hints up to the highest level', () => {
    const rows = { 'moles of solute': '' };
    const hint = (wanted: unknown, level?: string) =>
      checks(rows, {
        ...(level ? settings(['highest help level', level]) : settings()),
        helpWanted: ['', wanted as number, ''],
      })['moles of solute']?.hint;
    expect(hint('')).toBe('');
    expect(hint(0)).toBe('');
    const [first, second, third] = [hint(1), hint('2'), hint(3)];
    expect(new Set([first, second, third]).size).toBe(3);
    expect(third).toContain('0.300');
    expect(hint(3, '1')).toBe(first);
    expect(hint(3, '0')).toBe('');
    for (const wanted of [9, 4, -1, 1.5, '1.5', '12', 'yes', 'please', true])
      expect(hint(wanted), String(wanted)).toBe('Choose 0, 1, 2 or 3.');
    expect(hint('3: set-up')).toBe(third);
    expect(hint('  ')).toBe('');
  });
  it('reads the level from a number, and from text that begins with one', () => {
    const hint = (wanted: unknown) =>
      checks({ 'moles of solute': '' }, { ...settings(), helpWanted: ['', wanted as number, ''] })['moles of solute']
        ?.hint;
    for (const wanted of [2, '2', ' 2 ', '2 please', '2: the relation'])
      expect(hint(wanted), String(wanted)).toBe(hint(2));
    expect(new Set([hint(0), hint(1), hint(2), hint(3)]).size).toBe(4);
    for (const wanted of ['2.5', '2,5', 2.5, '2/3', '23', 23, 7, true, false, new Date(0), 'level 2'])
      expect(hint(wanted), String(wanted)).toBe('Choose 0, 1, 2 or 3.');
    for (const wanted of ['', ' ', null, undefined]) expect(hint(wanted), String(wanted)).toBe('');
  });
  it('puts the team’s own entries into the set-up, with the mark of the class', () => {
    const hintOf = (rows: Record<string, unknown>, mark: string) =>
      checks(rows, { ...settings(['decimal mark', mark]), helpWanted: ['', 3, 3, ''] })['stock made']?.hint;
    expect(hintOf({ 'mass weighed': '15,02', 'stock made': '' }, 'comma')).toContain('15,02 g');
    expect(hintOf({ 'mass weighed': 15.02, 'stock made': '' }, 'comma')).toContain('15,02 g');
    expect(hintOf({ 'mass weighed': '15.02', 'stock made': '' }, 'point')).toContain('15.02 g');
    expect(hintOf({ 'mass weighed': '', 'stock made': '' }, 'point')).toContain('“Mass you weighed”');
  });
  it('takes a row that stands there twice from its first line, in its check and in hints', () => {
    const table = teamChecks({
      givenNames: Object.keys(givens),
      givenValues: Object.values(givens),
      settings: [['activity', 'stock and dilution']],
      steps: ['Mass weighed', 'stock made', '', 'mass weighed'],
      entries: ['15.02', '0.301', 'a note', '9.99'],
      helpWanted: ['', 3, '', ''],
    });
    expect(table[1]).toMatchObject({ check: 'on target', hint: expect.stringContaining('15.02 g') });
  });
  it('gives a team hints up to its own highest level where that is lower', () => {
    const hint = (own: unknown, level: string) =>
      checks(
        { 'moles of solute': '' },
        { ...settings(['highest help level', level]), givens: { 'highest help level': own }, helpWanted: ['', 3, ''] },
      )['moles of solute']?.hint;
    const [first, second, third] = [hint('', '1'), hint('', '2'), hint('', '3')];
    expect(hint('1', '3')).toBe(first);
    expect(hint(2, '3')).toBe(second);
    expect(hint('3', '2')).toBe(second);
    expect(hint('0', '3')).toBe('');
    // A cell that names no level changes nothing.
    for (const own of ['', undefined, 'all', 7]) expect(hint(own, '3')).toBe(third);
  });
  it('lets the teacher’s own words win', () => {
    const found = checks(
      { 'moles of solute': '' },
      { ...settings(), helpWanted: ['', 1, ''], ownHints: [['moles of solute', 1, 'Think of eggs by the dozen.', '']] },
    );
    expect(found['moles of solute']?.hint).toBe('Think of eggs by the dozen.');
  });
});

describe('teamChecks of bare quantities', () => {
  const bare = (rows: Record<string, string>, own: Record<string, string>) =>
    teamChecks({
      givenNames: Object.keys(own),
      givenValues: Object.values(own),
      settings: [],
      steps: Object.keys(rows),
      entries: Object.values(rows),
    }).map(({ check }) => check);
  it('take the givens of their own names and build on each other', () => {
    const own = { formula: 'KBr', molarity: '0.300', volume: '200' };
    expect(bare({ 'molar mass': '119.00', 'moles of solute': '0.0600', 'mass of solute': '7.14' }, own)).toEqual([
      'on target',
      'on target',
      'on target',
    ]);
    expect(bare({ 'moles of solute': '60', 'mass of solute': '7140' }, own)).toEqual(['not yet', 'follows']);
    expect(bare({ 'percent error': '4.0' }, { measured: '0.26', accepted: '0.25' })).toEqual(['on target']);
  });
});

describe('the everyday activity', () => {
  it('has a row for every kind of step, all of which teamChecks knows', () => {
    const steps = activityById('stock and dilution')?.steps ?? [];
    expect(new Set(steps.map(({ kind }) => kind)).size).toBe(6);
    const blank = checks(Object.fromEntries(steps.map(({ id }) => [id, ''])));
    for (const { id, kind } of steps) expect(blank[id]?.check).toBe(kind === 'told' ? '' : 'blank');
  });
});
