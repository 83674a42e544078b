import { describe, expect, it } from 'vitest';
import { judgeTeam } from '../../src/lab/judging/judgeTeam.ts';
import { activityById } from '../../src/lab/lesson/activities.ts';

/** Rows of an activity by step id, with its cautions ticked. */
function rowsOf(
  id: string,
  givens: Readonly<Record<string, string>>,
  entries: Readonly<Record<string, string>>,
  settings: readonly (readonly [string, string])[] = [],
) {
  const ids = activityById(id)?.steps.map((step) => step.id) ?? [];
  const rows = judgeTeam({
    givenNames: Object.keys(givens),
    givenValues: Object.values(givens),
    settings: [['activity', id], ...settings],
    steps: ids,
    entries: ids.map((step) => ({ 'cautions read': `yes, ${givens.formula}`, ...entries })[step] ?? ''),
  });
  return Object.fromEntries(ids.map((step, at) => [step, rows[at]]));
}

const bromide = {
  formula: 'KBr',
  'stock molarity': '0.300',
  flask: '200',
  'target molarity': '0.0450',
  'target volume': '100',
  ion: 'Br-',
  purity: '',
};
/** A tenfold dilution, of a salt with two ions of the kind that is asked. */
const chloride = {
  formula: 'MgCl2·6H2O',
  'stock molarity': '0.500',
  flask: '100',
  'target molarity': '0.0500',
  'target volume': '250',
  ion: 'Cl-',
  purity: '96.0',
};

describe('another given in place of the one a row is about, by hand', () => {
  const lines: readonly (readonly [Record<string, string>, string, string])[] = [
    // 0.300 × 100 mL, 0.0450 × 200 mL; ×119.00.
    [bromide, 'moles of solute', '0.0300'],
    [bromide, 'moles of solute', '0.00900'],
    [bromide, 'mass of solute', '3.57'],
    [bromide, 'mass of solute', '1.07'],
    // 0.0450 × 200 ÷ 0.300, and the molarity of the stock for an ion that occurs once.
    [bromide, 'stock volume', '30.0'],
    [bromide, 'ion molarity', '0.300'],
    // 0.500 × 250 mL, 0.0500 × 100 mL; ×203.295 ÷ 0.960.
    [chloride, 'moles of solute', '0.125'],
    [chloride, 'moles of solute', '0.00500'],
    [chloride, 'mass of solute', '26.5'],
    [chloride, 'mass of solute', '1.06'],
    [chloride, 'stock volume', '10.0'],
    [chloride, 'ion molarity', '1.00'],
  ];
  it.each(lines)('of %j, %s %s', (givens, id, entry) => {
    expect(rowsOf('stock and dilution', givens, { [id]: entry })[id]).toMatchObject({
      status: 'not yet',
      slips: ['other-given-used'],
      lookAt: expect.stringMatching(/^Your value matches .* another of your numbers\. Which .*\?$/),
    });
  });
  it.each([
    // 0.302 × 15.0 ÷ 200; 0.510 × 25.0 ÷ 100.
    [bromide, { 'mass weighed': '7.19', 'stock made': '0.302', 'stock volume': '15.0' }, '0.0227'],
    [chloride, { 'mass weighed': '10.80', 'stock made': '0.510', 'stock volume': '25.0' }, '0.128'],
  ] as const)('of %j in the molarity after dilution', (givens, entries, entry) => {
    const rows = rowsOf('stock and dilution', givens, { ...entries, 'diluted molarity': entry });
    expect(rows['stock made']?.status).toBe('on target');
    expect(rows['diluted molarity']).toMatchObject({ status: 'not yet', slips: ['other-given-used'] });
  });
  it('is no misplaced point, though the dilution is tenfold', () => {
    for (const [id, entry] of [
      ['moles of solute', '0.00500'],
      ['ion molarity', '1.00'],
    ] as const) {
      const row = rowsOf('stock and dilution', chloride, { [id]: entry })[id];
      expect(row?.slips).toEqual(['other-given-used']);
      expect(row?.lookAt).not.toContain('point');
    }
  });
  it('is named beside a slip of the quantity that gives the same', () => {
    // 0.300 mol/L is the molarity itself, and so is 0.300 × 1000 mL.
    const litre = { ...bromide, 'target volume': '1000' };
    expect(rowsOf('stock and dilution', litre, { 'moles of solute': '0.300' })['moles of solute']?.slips).toEqual([
      'volume-ignored',
      'other-given-used',
    ]);
  });
  it('is not found where it is the same number, nor in a row that stands outside a block', () => {
    const same = { ...bromide, 'target volume': '200' };
    expect(rowsOf('stock and dilution', same, { 'moles of solute': '0.0600' })['moles of solute']?.status).toBe(
      'on target',
    );
    const bare = judgeTeam({
      givenNames: ['molarity', 'volume'],
      givenValues: ['0.300', '200'],
      settings: [],
      steps: ['moles of solute'],
      entries: ['0.0300'],
    });
    expect(bare[0]?.slips).toEqual([]);
  });
});

describe('the planned molarity in place of the one really made, by hand', () => {
  // 7.19 g ÷ 119.002 ÷ 0.200 L is 0.302, 7.28 g gives 0.306; × 15.0 ÷ 100. 10.80 × 0.96 ÷ 203.295 ÷ 0.1 is 0.510.
  const made: readonly (readonly [Record<string, string>, Record<string, string>, string, string])[] = [
    [bromide, { 'mass weighed': '7.19', 'stock made': '0.302', 'stock volume': '15.0' }, '0.0450', '0.0453'],
    [bromide, { 'mass weighed': '7.28', 'stock made': '0.306', 'stock volume': '15.0' }, '0.0450', '0.0459'],
    [chloride, { 'mass weighed': '10.80', 'stock made': '0.510', 'stock volume': '25.0' }, '0.0500', '0.0510'],
  ];
  it.each(made)('of %j after %j: %s', (givens, entries, planned, real) => {
    const row = (entry: string) =>
      rowsOf('stock and dilution', givens, { ...entries, 'diluted molarity': entry })['diluted molarity'];
    expect(row(real)?.status).toBe('on target');
    expect(row(planned)).toMatchObject({
      status: 'not yet',
      slips: ['planned-for-made'],
      lookAt: 'Your value matches the planned molarity. What molarity does your stock really have?',
    });
  });
  it('is the plan of the dilution too where another volume was taken', () => {
    // 0.302 × 14.6 ÷ 100 is 0.0441 and 0.300 × 14.6 ÷ 100 is 0.0438; 0.0450 is what the plan says.
    const entries = { 'mass weighed': '7.19', 'stock made': '0.302', 'stock volume': '14.6' };
    for (const planned of ['0.0438', '0.0450']) {
      const row = rowsOf('stock and dilution', bromide, { ...entries, 'diluted molarity': planned });
      expect([planned, row['diluted molarity']?.slips]).toEqual([planned, ['planned-for-made']]);
    }
  });
  it('is on target where the stock came out as planned, and short where figures are missing', () => {
    const entries = { 'mass weighed': '7.14', 'stock made': '0.300', 'stock volume': '15.0' };
    const row = (entry: string, own: Record<string, string> = entries) =>
      rowsOf('stock and dilution', bromide, { ...own, 'diluted molarity': entry })['diluted molarity'];
    expect(row('0.0450')?.status).toBe('on target');
    expect(row('0.045', { ...entries, 'mass weighed': '7.19', 'stock made': '0.302' })).toMatchObject({
      status: 'close',
      lookAt: 'Close. Give the value to three figures.',
    });
  });
  it('wins over another given', () => {
    // 0.307 × 7.5 ÷ 100, with the flask of the stock, is 0.0230, and so is the plan; 0.307 × 7.5 ÷ 200 is asked.
    const alike = { ...bromide, flask: '100', 'target molarity': '0.0230', 'target volume': '200' };
    const entries = { 'mass weighed': '3.65', 'stock made': '0.307', 'stock volume': '7.5' };
    const row = (own: Record<string, string>) =>
      rowsOf('stock and dilution', { ...alike, ...own }, { ...entries, 'diluted molarity': '0.0230' })[
        'diluted molarity'
      ];
    expect(row({})?.slips).toEqual(['planned-for-made']);
    expect(row({ 'target molarity': '0.0240' })?.slips).toEqual(['other-given-used']);
  });
  it('is named in a dilution that is worked from the real stock', () => {
    const settings = [['work the dilution from', 'real stock']] as const;
    const entries = { 'mass weighed': '7.28', 'stock made': '0.306' };
    // 0.300 ÷ 0.0450 in place of 0.306 ÷ 0.0450, and the volumes that go with it.
    for (const [id, entry] of [
      ['dilution factor', '6.67'],
      ['stock volume', '15.0'],
      ['water volume', '85.0'],
    ] as const) {
      const row = rowsOf('stock and dilution', bromide, { ...entries, [id]: entry }, settings)[id];
      expect([id, row?.status, row?.slips]).toEqual([id, 'not yet', ['planned-for-made']]);
      expect(row?.lookAt).toContain(
        'Your value matches a result with the planned molarity of the stock. What molarity does your stock really have?',
      );
    }
  });
});

describe('the ion row', () => {
  it('takes the molarity that the stock really gives while the row before still has the planned one', () => {
    const entries = {
      'mass weighed': '7.28',
      'stock made': '0.306',
      'stock volume': '15.0',
      'diluted molarity': '0.0450',
    };
    const status = (entry: string) =>
      rowsOf('stock and dilution', bromide, { ...entries, 'ion molarity': entry })['ion molarity']?.status;
    expect(rowsOf('stock and dilution', bromide, entries)['diluted molarity']?.status).toBe('not yet');
    expect([status('0.0459'), status('0.0450'), status('0.0480')]).toEqual(['on target', 'on target', 'not yet']);
  });

  it('is right with the molarity planned, and with the one that was really made', () => {
    const entries = {
      'mass weighed': '7.28',
      'stock made': '0.306',
      'stock volume': '15.0',
      'diluted molarity': '0.0459',
    };
    for (const entry of ['0.0450', '0.0459'])
      expect(rowsOf('stock and dilution', bromide, { ...entries, 'ion molarity': entry })['ion molarity']?.status).toBe(
        'on target',
      );
    const twice = {
      'mass weighed': '10.80',
      'stock made': '0.510',
      'stock volume': '25.0',
      'diluted molarity': '0.0510',
    };
    for (const entry of ['0.100', '0.102'])
      expect(rowsOf('stock and dilution', chloride, { ...twice, 'ion molarity': entry })['ion molarity']?.status).toBe(
        'on target',
      );
    const solid = { formula: 'KBr', molarity: '0.250', flask: '200', ion: 'Br-' };
    const stock = { 'mass weighed': '6.06', 'stock made': '0.255' };
    for (const entry of ['0.250', '0.255'])
      expect(rowsOf('solution from a solid', solid, { ...stock, 'ion molarity': entry })['ion molarity']?.status).toBe(
        'on target',
      );
  });
  it('is right with the spare digits of the one that was made', () => {
    // 10.85 × 0.96 ÷ 203.295 ÷ 0.1 is 0.51236; × 25 ÷ 250 is 0.051236, typed 0.0512; twice that is 0.1025.
    const entries = {
      'mass weighed': '10.85',
      'stock made': '0.512',
      'stock volume': '25.0',
      'diluted molarity': '0.0512',
    };
    for (const entry of ['0.102', '0.1024'])
      expect(
        rowsOf('stock and dilution', chloride, { ...entries, 'ion molarity': entry })['ion molarity']?.status,
      ).toBe('on target');
  });
  it('follows from one that needs another look, and knows its slips with the real one', () => {
    const entries = {
      'mass weighed': '7.28',
      'stock made': '0.306',
      'stock volume': '15.0',
      'diluted molarity': '0.0612',
    };
    expect(
      rowsOf('stock and dilution', bromide, { ...entries, 'ion molarity': '0.0612' })['ion molarity'],
    ).toMatchObject({ status: 'follows', root: 'Molarity after dilution' });
    const twice = {
      'mass weighed': '10.80',
      'stock made': '0.510',
      'stock volume': '25.0',
      'diluted molarity': '0.0510',
    };
    expect(
      rowsOf('stock and dilution', chloride, { ...twice, 'ion molarity': '0.0510' })['ion molarity']?.slips,
    ).toEqual(['ion-count-ignored']);
  });
});

describe('a serial dilution', () => {
  const permanganate = { formula: 'KMnO4', 'stock molarity': '0.0200', portion: '10', flask: '100' };
  const sulfate = { formula: 'CuSO4·5H2O', 'stock molarity': '0.500', portion: '20', flask: '100' };
  it.each([
    // 0.0200 ÷ 20 and ÷ 30; 0.500 ÷ 10 and ÷ 15.
    [permanganate, ['0.00200', '0.00100', '0.000667']],
    [sulfate, ['0.100', '0.0500', '0.0333']],
  ] as const)('knows factors that were added up: %j', (givens, [first, second, third]) => {
    const rows = rowsOf('serial dilution', givens, {
      'first flask': first,
      'second flask': second,
      'third flask': third,
    });
    expect(rows['first flask']).toMatchObject({ status: 'on target', slips: [] });
    for (const id of ['second flask', 'third flask']) {
      expect([id, rows[id]?.slips]).toEqual([id, ['factors-added']]);
      expect(rows[id]?.lookAt).toBe(
        'Your value matches the stock divided by the sum of the factors. Each flask dilutes the one before. Do the factors add up or multiply?',
      );
    }
  });
  it('compares with the flask before, and with the stock in the first flask alone', () => {
    const rows = rowsOf('serial dilution', permanganate, {
      'first flask': '0.00200',
      'second flask': '0.00200',
      'third flask': '0.00200',
    });
    for (const id of ['second flask', 'third flask']) {
      expect([id, rows[id]?.slips]).toEqual([id, ['molarity-unchanged']]);
      expect(rows[id]?.lookAt).toMatch(/^Your value matches the molarity in the flask before\./);
    }
    expect(rowsOf('serial dilution', permanganate, { 'first flask': '0.0200' })['first flask']?.lookAt).toMatch(
      /^Your value matches the molarity of the stock\./,
    );
  });
});

describe('slips of the rows of a block', () => {
  it('stand there by id where a value matches one, and nowhere else', () => {
    const rows = rowsOf('stock and dilution', bromide, {
      'molar mass': '119.00',
      'moles of solute': '60.0',
      'mass of solute': '7140',
      'dilution factor': '0.150',
      'stock volume': '15.1',
      'ion molarity': 'none',
    });
    expect(rows['moles of solute']?.slips).toEqual(['volume-in-mL']);
    expect(rows['dilution factor']?.slips).toEqual(['ratio-inverted']);
    for (const id of ['molar mass', 'mass of solute', 'stock volume', 'ion molarity', 'mass weighed', 'particles'])
      expect([id, rows[id]?.slips]).toEqual([id, []]);
  });
});

describe('a reading that is off, by what was read', () => {
  const solid = (weighed: string) => rowsOf('stock and dilution', bromide, { 'mass weighed': weighed })['mass weighed'];
  it('asks to add solid where too little is on the balance, and to go on only near the plan', () => {
    // 7.14 g are planned.
    expect(solid('6.80')?.lookAt).toMatch(/too low .* Add a little more solid, or carry on\.$/);
    expect(solid('3.57')?.lookAt).toMatch(/too low .* Add more solid, a little at a time, and read again\.$/);
    expect(solid('7.60')?.lookAt).toMatch(/too high .* take a little solid out, or carry on\.$/);
    expect(solid('9.00')?.lookAt).toMatch(/too high .* take some solid out and read again\.$/);
    for (const weighed of ['3.57', '6.80', '7.60', '9.00']) expect(solid(weighed)?.lookAt).not.toContain('stay');
  });
  it('lets a team go on within a tenth of the plan, the tenth itself included', () => {
    // 6.426 and 7.854 g are a tenth off.
    for (const [weighed, goesOn] of [
      ['6.43', true],
      ['6.42', false],
      ['7.85', true],
      ['7.86', false],
    ] as const)
      expect([weighed, solid(weighed)?.lookAt.includes('carry on')]).toEqual([weighed, goesOn]);
  });
  it('speaks of the flask where a molarity is read, and of no boat', () => {
    const salt = { formula: 'NaCl', molarity: '0.250', flask: '200' };
    const read = (entry: string) => rowsOf('bench reading', salt, { 'molarity read': entry })['molarity read']?.lookAt;
    expect(read('0.256')).toMatch(/too high .* the mark, and how much solid .* carry on\.$/);
    expect(read('0.244')).toMatch(/too low .* solid in the flask.* carry on\.$/);
    expect(read('0.300')).toMatch(/Read again before you go on\.$/);
    for (const entry of ['0.256', '0.244', '0.300']) expect(read(entry)).not.toMatch(/boat|dish/);
  });
  it('speaks of drying where a residue is weighed, and of the pipette where a portion is', () => {
    const salt = { formula: 'NaCl', molarity: '0.500', portion: '25' };
    // 0.731 g.
    const residue = (entry: string) =>
      rowsOf('weighed residue', salt, { 'residue weighed': entry })['residue weighed']?.lookAt;
    expect(residue('0.80')).toMatch(/Is it completely dry.* carry on\.$/);
    expect(residue('0.60')).toMatch(/spit out of the dish.* Weigh again before you go on\.$/);
    const sugar = {
      formula: 'C12H22O11',
      molarity: '0.500',
      portion: '25',
      'lighter percent': '14',
      'lighter density': '1.0549',
      'heavier percent': '18',
      'heavier density': '1.0721',
    };
    // 26.60 g.
    const portion = (entry: string) =>
      rowsOf('measured density', sugar, { 'portion weighed': entry })['portion weighed']?.lookAt;
    expect(portion('27.50')).toMatch(/with its lid/);
    expect(portion('25.50')).toMatch(/Was the pipette filled to its mark/);
  });
});
