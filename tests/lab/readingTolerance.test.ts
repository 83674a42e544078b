import { describe, expect, it } from 'vitest';
import { judgeReading, type Reading } from '../../src/lab/judging/judgeReading.ts';
import { readingNotes } from '../../src/lab/judging/readingNotes.ts';
import { readingTolerance } from '../../src/lab/judging/readingTolerance.ts';
import { activityById } from '../../src/lab/lesson/activities.ts';
import { startingGivens } from '../../src/lab/lesson/startingGivens.ts';
import { grams, millilitres } from '../../src/measurement/quantity.ts';

const noAllowance = { 'allowance for technique': '0' };
const limitOf = (reading: Parameters<typeof readingTolerance>[0], settings: Parameters<typeof readingTolerance>[1]) => {
  const result = readingTolerance(reading, settings);
  if (!result.ok) throw new Error(result.error.code);
  return result.value;
};

describe('readingTolerance', () => {
  it('gives twice 0.13 mg for a mass by difference on a balance of ±0.15 mg (EURACHEM/CITAC QUAM, example A2)', () => {
    const { limit } = limitOf(
      { expected: 0.3888, tools: [{ tool: 'balance', mass: grams(0.3888) }] },
      {
        ...noAllowance,
        balance: '0.00015 g',
      },
    );
    expect(limit / 2).toBeCloseTo(0.0001225, 7);
    expect((limit / 2).toFixed(5)).toBe('0.00012');
  });

  it.each([
    // u(V)/V and u(m)/m by JCGM 100, 4.3.7 and 5.1.6, worked by hand; figures of glassware from ISO 1042 and ISO 648.
    { glass: 'A', flask: 100, tolerance: 0.1 },
    { glass: 'B', flask: 250, tolerance: 0.3 },
    { glass: 'A', flask: 1000, tolerance: 0.4 },
  ])('combines a weighing with a $flask mL flask of class $glass', ({ glass, flask, tolerance }) => {
    const { limit } = limitOf(
      {
        expected: 0.25,
        tools: [
          { tool: 'balance', mass: grams(5) },
          { tool: 'flask', volume: millilitres(flask) },
        ],
      },
      { ...noAllowance, balance: '0.01 g', 'glassware class': glass, 'glassware standard': 'ISO' },
    );
    const weighing = ((0.01 / Math.sqrt(3)) * Math.sqrt(2)) / 5;
    const filling = tolerance / Math.sqrt(3) / flask;
    expect(limit).toBeCloseTo(2 * 0.25 * Math.hypot(weighing, filling), 12);
  });

  it('adds the allowance as a share of what is expected', () => {
    const tools = [{ tool: 'balance', mass: grams(8) }] as const;
    const without = limitOf({ expected: 8, tools }, noAllowance).limit;
    expect(limitOf({ expected: 8, tools }, { 'allowance for technique': '2.5 %' }).limit).toBeCloseTo(
      without + 0.2,
      12,
    );
    expect(limitOf({ expected: 8, tools }, { 'allowance for technique': '2,5' }).limit).toBeCloseTo(without + 0.2, 12);
  });

  it('says how it came about, without what is expected', () => {
    const { words } = limitOf(
      {
        expected: 0.2987,
        tools: [
          { tool: 'balance', mass: grams(7.117) },
          { tool: 'pipette', volume: millilitres(15) },
        ],
      },
      {},
    );
    expect(words).toContain('±0.01 g');
    expect(words).toContain('15 mL pipette (±0.06 mL, as for 20 mL)');
    expect(words).toContain('JCGM 100');
    expect(words).toContain('2 %');
    expect(words).not.toMatch(/0\.2987|7\.117/);
  });

  it.each([
    ['balance', 'soon'],
    ['balance', '0.01 mL'],
    ['balance', '0'],
    ['allowance for technique', 'some'],
    ['allowance for technique', '80 %'],
    ['allowance for technique', 'about 2 %'],
    ['allowance for technique', '2 % or so'],
    ['allowance for technique', '2 % 5'],
    ['glassware class', 'C'],
    ['glassware standard', 'DIN'],
  ])('names the setting %s where it says %s', (name, value) => {
    const tools = [
      { tool: 'balance', mass: grams(1) },
      { tool: 'flask', volume: millilitres(100) },
    ] as const;
    expect(readingTolerance({ expected: 1, tools }, { [name]: value })).toMatchObject({
      ok: false,
      error: { code: 'lesson-setting', argument: name },
    });
  });
});

describe('judgeReading', () => {
  const reading: Reading = {
    expected: 8,
    unit: 'g',
    of: 'balance',
    tools: [{ tool: 'balance', mass: grams(8) }],
    settings: { 'allowance for technique': '2 %', balance: '0.01 g' },
    decimalMark: 'point',
  };
  const { limit } = limitOf(reading, reading.settings);

  it('accepts up to the limit on both sides and no further', () => {
    for (const share of [-1, -0.5, 0, 0.5, 1])
      expect(judgeReading(8 + share * limit, reading).status).toBe('on target');
    expect(judgeReading(8 + 1.001 * limit, reading).status).toBe('not yet');
    expect(judgeReading(8 - 1.001 * limit, reading).status).toBe('not yet');
  });

  it('asks in the direction of the gap, and about the unit where it is wide', () => {
    const said = ['8.4', '7.6', '8000', '0.008', '8 mL'].map((entry) => judgeReading(entry, reading).lookAt);
    expect(new Set(said).size).toBe(5);
    for (const words of said) expect(words).not.toMatch(/\d/);
  });

  it('reads units, blanks and words as every row does', () => {
    expect(judgeReading('8000 mg', reading).status).toBe('on target');
    expect(judgeReading('', reading)).toEqual({ status: 'blank', lookAt: '' });
    expect(judgeReading('eight', reading).status).toBe('unreadable');
    expect(judgeReading(true, reading).status).toBe('unreadable');
    expect(judgeReading('8,00', { ...reading, decimalMark: 'comma' }).status).toBe('on target');
  });

  it.each([
    ['8.00', '0.01 g', 'on target'],
    ['8.00 g', '0.01 g', 'on target'],
    ['8000 mg', '0.01 g', 'on target'],
    [8, '0.01 g', 'on target'],
    ['8', '0.01 g', 'close'],
    ['8.0', '0.01 g', 'close'],
    ['8.000', '0.01 g', 'close'],
    ['8.000', '0.001 g', 'on target'],
    ['8.05', '0.05 g', 'on target'],
    ['8', '1 g', 'on target'],
    ['8.4', '0.01 g', 'not yet'],
  ])('of %j on a balance that reads to %s is %s', (entry, balance, status) => {
    const found = judgeReading(entry, { ...reading, settings: { ...reading.settings, balance } });
    expect(found.status).toBe(status);
    if (status === 'close') expect(found.lookAt).toBe('Close. Write down every digit that the balance shows.');
  });

  it('names a setting that it cannot use', () => {
    expect(judgeReading('8', { ...reading, settings: { balance: 'the good one' } })).toEqual({
      status: 'unreadable',
      isUnusable: true,
      lookAt: '⚠ balance: this setting can’t be read. Tell your teacher.',
    });
  });
});

describe('readingNotes', () => {
  it('explains every reading of an activity for the Plan', () => {
    const notesOf = (id: string) => {
      const activity = activityById(id);
      if (!activity) throw new Error(`no activity ${id}`);
      return readingNotes(activity, { settings: {}, givens: startingGivens(activity) });
    };
    expect(notesOf('stock and dilution')).toEqual({
      ok: true,
      value: [
        {
          step: 'Mass you weighed',
          lines: [
            'From the balance (±0.01 g, read empty and loaded):',
            'twice their standard uncertainty (JCGM 100), plus 2 % for technique.',
            // 2 · √2 · 0.01 g ÷ √3 is 0.0163 g; with 2 % of 1 g that is 0.036 g, of 10 g it is 0.22 g.
            'So 1 g may be off by 0.036 g, and 10 g may be off by 0.22 g.',
          ],
        },
      ],
    });
    const dried = notesOf('weighed residue');
    expect(dried.ok && dried.value[0]?.lines[0]).toContain('and the 25 mL pipette (±0.06 mL)');
    expect(notesOf('dilution')).toEqual({ ok: true, value: [] });
  });
});
