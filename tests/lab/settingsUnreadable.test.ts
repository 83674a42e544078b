import { describe, expect, it } from 'vitest';
import { judgeTeam } from '../../src/lab/judging/judgeTeam.ts';
import { readingNotes } from '../../src/lab/judging/readingNotes.ts';
import { readingTolerance } from '../../src/lab/judging/readingTolerance.ts';
import { toolsOfReading } from '../../src/lab/judging/toolsOfReading.ts';
import { activityById } from '../../src/lab/lesson/activities.ts';
import type { Activity } from '../../src/lab/lesson/activity.ts';
import { startingGivens } from '../../src/lab/lesson/startingGivens.ts';
import { badGiven, badSetting } from '../../src/lab/texts/feedback.ts';
import { grams, millilitres } from '../../src/measurement/quantity.ts';
import { layoutVersion } from '../../src/workbook/layout.ts';

const tools = [
  { tool: 'balance', mass: grams(5) },
  { tool: 'flask', volume: millilitres(100) },
] as const;
const refusal = (settings: Readonly<Record<string, string>>) => {
  const read = readingTolerance({ expected: 1, tools }, settings);
  if (read.ok) throw new Error('Expected a setting that cannot be read.');
  return read.error;
};
/** Rows of an activity by step id, with settings and givens as they may stand in a Plan. */
function rows(
  id: string,
  {
    settings = {},
    givens = {},
    entries = {},
  }: {
    readonly settings?: Readonly<Record<string, string>>;
    readonly givens?: Readonly<Record<string, string>>;
    readonly entries?: Readonly<Record<string, string>>;
  },
) {
  const activity = activityById(id) as Activity;
  const all = { ...startingGivens(activity), ...givens };
  const ids = activity.steps.map((step) => step.id);
  const judged = judgeTeam({
    givenNames: Object.keys(all),
    givenValues: Object.values(all),
    settings: [['activity', id], ['layout', String(layoutVersion)], ...Object.entries(settings)],
    steps: ids,
    entries: ids.map((step) => ({ 'cautions read': `yes, ${all.formula}`, ...entries })[step] ?? ''),
  });
  return Object.fromEntries(ids.map((step, at) => [step, judged[at]]));
}

describe('a setting of readings that cannot be read', () => {
  it.each([
    ['allowance for technique', '51 %', '2'],
    ['allowance for technique', 'a little', '2'],
    ['glassware class', 'C', 'A or B'],
    ['glassware standard', 'school', 'ISO or ASTM'],
    ['balance', 'fine', '0.01 g'],
    ['balance', '0 g', '0.01 g'],
  ])('is named with what stands there and what could: %s, %s', (name, typed, example) => {
    const { argument, expected, received } = refusal({ [name]: typed });
    expect(argument).toBe(name);
    expect(received).toContain(typed);
    expect(expected).toContain(example);
  });
  it('takes an allowance of up to half, and a class or a standard in small letters', () => {
    for (const settings of [
      { 'allowance for technique': '50 %' },
      { 'allowance for technique': '0' },
      { 'glassware class': ' as ', 'glassware standard': 'astm' },
    ])
      expect(readingTolerance({ expected: 1, tools }, settings).ok).toBe(true);
  });
});

describe('a setting that a row is worked with', () => {
  const entries = { 'molar mass': '119.00', 'moles of solute': '0.0600', 'mass of solute': '7.14' };

  it('is named beside the rows that need it, and beside no other', () => {
    const weights = rows('stock and dilution', { settings: { 'atomic-weight decimals': 'many' }, entries });
    const bad = badSetting('atomic-weight decimals');
    expect([weights['molar mass'], weights['mass of solute']]).toMatchObject([
      { status: 'unreadable', lookAt: bad },
      { status: 'unreadable', lookAt: bad },
    ]);
    expect(weights['moles of solute']?.status).toBe('on target');
    const figures = rows('stock and dilution', { settings: { figures: 'some' }, entries });
    expect(figures['moles of solute']).toMatchObject({ status: 'unreadable', lookAt: badSetting('figures') });
    expect(figures['molar mass']?.status).toBe('on target');
  });
  it('is not asked about ions for their molarity', () => {
    const settings = { 'atomic-weight decimals': 'many' };
    // The stock of 0.300 mol/L KBr, diluted to 0.0450: one Br- from each formula unit.
    const { 'ion molarity': ion } = rows('stock and dilution', { settings, entries: { 'ion molarity': '0.0450' } });
    expect(ion?.lookAt).not.toBe(badSetting('atomic-weight decimals'));
  });
});

describe('the size of a vessel that cannot be read', () => {
  it('is named in the row of the reading', () => {
    const entries = { 'molarity read': '0.250' };
    expect(rows('bench reading', { givens: { flask: 'big' }, entries })['molarity read']).toMatchObject({
      status: 'unreadable',
      lookAt: badGiven('flask'),
    });
    expect(rows('bench reading', { entries })['molarity read']?.lookAt).not.toContain('⚠');
  });
  it('fails by the name of the given, in the decimal mark of the lesson', () => {
    const settings = { decimalMark: 'comma' } as Parameters<typeof toolsOfReading>[1]['settings'];
    const used = (volume: string) =>
      toolsOfReading(
        { tools: [{ tool: 'balance' }, { tool: 'flask', volume: 'flask' }], instrument: 'balance', expected: 7 },
        { givens: { flask: volume }, settings },
      );
    expect(used('big')).toMatchObject({ ok: false, error: { argument: 'flask' } });
    expect(used('0,250 L')).toEqual({
      ok: true,
      value: [
        { tool: 'balance', mass: 7 },
        { tool: 'flask', volume: 250 },
      ],
    });
  });
  it('is what is expected where the vessel itself is read, and a bench has none', () => {
    const around = { givens: {}, settings: {} } as Parameters<typeof toolsOfReading>[1];
    const used = (instrument: 'flask' | 'balance' | 'bench') => toolsOfReading({ instrument, expected: 25 }, around);
    expect(used('flask')).toEqual({ ok: true, value: [{ tool: 'flask', volume: 25 }] });
    expect(used('balance')).toEqual({ ok: true, value: [{ tool: 'balance', mass: 25 }] });
    expect(used('bench')).toEqual({ ok: true, value: [] });
  });
  it('is taken for 100 mL in the notes of the Plan, where no size is given or it cannot be read', () => {
    const activity = activityById('bench reading') as Activity;
    const notes = (givens: Readonly<Record<string, string>>) => {
      const read = readingNotes(activity, { settings: {}, givens });
      if (!read.ok) throw new Error(read.error.argument);
      return read.value[0]?.lines.join('\n');
    };
    expect(notes({})).toBe(notes({ flask: '100' }));
    expect(notes({ flask: 'big' })).toBe(notes({ flask: '100' }));
    expect(notes({ flask: '250' })).not.toBe(notes({ flask: '100' }));
  });
});

describe('the lines of a table of densities', () => {
  /** Sucrose, 0.500 mol/L, 25 mL, between 14 % (1.0549 g/mL) and 18 % (1.0721 g/mL): 26.598 g by hand. */
  const lines = {
    formula: 'C12H22O11',
    molarity: '0.500',
    portion: '25',
    'lighter percent': '14',
    'lighter density': '1.0549',
    'heavier percent': '18',
    'heavier density': '1.0721',
  };
  const portion = (givens: Readonly<Record<string, string>>) =>
    rows('measured density', { givens: { ...lines, ...givens }, entries: { 'portion weighed': '26.60' } })[
      'portion weighed'
    ];

  it('may have their units with them', () => {
    const procedure = portion({})?.lookAt;
    const withUnits = portion({
      molarity: '500 mmol/L',
      portion: '0.025 L',
      'lighter percent': '14 %',
      'lighter density': '1.0549 g/mL',
      'heavier percent': '18 %',
      'heavier density': '1.0721 kg/L',
    });
    expect(withUnits?.lookAt).toBe(procedure);
    expect(withUnits?.lookAt).not.toContain('⚠');
  });
  it('are named where one cannot be read, or where they cannot be two lines', () => {
    for (const name of ['molarity', 'lighter percent', 'lighter density', 'heavier percent', 'heavier density'])
      expect(portion({ [name]: 'some' })).toMatchObject({ status: 'unreadable', lookAt: badGiven(name) });
    for (const given of [{ 'heavier percent': '14' }, { 'heavier percent': '140' }, { molarity: '0' }]) {
      const refused = portion(given);
      expect(refused?.status).toBe('unreadable');
      expect(Object.keys(lines).map(badGiven)).toContain(refused?.lookAt);
    }
    expect(portion({ molarity: '0' })?.lookAt).toBe(badGiven('molarity'));
  });
});
