import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { hintForQuantity } from '../../src/lab/hints/hintForQuantity.ts';
import { hintForStep } from '../../src/lab/hints/hintForStep.ts';
import { activityById } from '../../src/lab/lesson/activities.ts';
import type { Activity } from '../../src/lab/lesson/activity.ts';
import { defaultSettings, defaultShelf } from '../../src/lab/lesson/defaultSettings.ts';
import { numbersForTeams } from '../../src/lab/numbers/numbersForTeams.ts';
import { cases } from '../depth.ts';
import { rightEntries } from './rightEntries.ts';

const everyday = (): Activity => {
  const activity = activityById('stock and dilution');
  if (!activity) throw new Error('the everyday activity is missing');
  return activity;
};
const activity = everyday();

const numbersIn = (text: string): string[] => text.match(/\d+(?:[.,]\d+)?/g) ?? [];
const formulas: Record<string, string> = {
  KBr: 'Br-',
  CaCl2·2H2O: 'Cl-',
  '(NH4)2SO4': 'NH4+',
  CuSO4·5H2O: 'SO4^2-',
  Na2CO3: 'Na+',
};

describe('hintForStep', () => {
  it('shows no number but those given, those typed above, and the 1000 or 100 of a unit, over many plans', () => {
    const runs = cases({ short: 8, deep: 60 });
    const teams = cases({ short: 40, deep: 200 });
    let plans = 0;
    const drawn = fc.record({
      seed: fc.integer({ min: 0, max: 1_000_000 }),
      formula: fc.constantFrom(...Object.keys(formulas)),
      purity: fc.constantFrom('', '97.3'),
    });
    fc.assert(
      fc.property(drawn, ({ seed, formula, purity }) => {
        const result = numbersForTeams({
          activity: activity.id,
          givens: {
            formula,
            'stock molarity': '0.300',
            flask: '200',
            'target molarity': '0.0450',
            'target volume': '100',
            ion: formulas[formula] ?? '',
            purity,
          },
          ownNumbers: true,
          settings: { ...defaultSettings, seed: String(seed) },
          shelf: defaultShelf,
          classes: [{ name: 'Class', teams: Array.from({ length: teams }, (_, at) => `Team ${at}`) }],
        });
        if (!result.ok) throw new Error(result.error.advice);
        for (const { givens } of result.value.teams) {
          plans += 1;
          const entries = rightEntries(activity, givens);
          for (const step of activity.steps) {
            for (const level of [1, 2, 3]) {
              const hint = hintForStep({ activity, stepId: step.id, level, givens, entries, decimalMark: 'point' });
              if (hint === '') expect.unreachable(`${step.id} has no hint at level ${level}`);
              const sources = step.kind === 'calculated' ? Object.values(step.takes) : [];
              const read = sources.flatMap((source) => ('entryOf' in source ? [entries[source.entryOf] ?? ''] : []));
              const allowed = [...Object.values(givens).flatMap(numbersIn), ...read.flatMap(numbersIn), '1000', '100'];
              const others = numbersIn(hint).filter((number) => !allowed.includes(number));
              // How many of each atom there are is read off the formula, and is no answer.
              if (step.id === 'molar mass' && level === 3) {
                if (!others.every((number) => /^\d{1,2}$/.test(number))) expect.unreachable(hint);
              } else if (others.length > 0) {
                expect.unreachable(`${step.id} at level ${level} shows ${others.join(', ')}: ${hint}`);
              }
              const answer = entries[step.id];
              const shownAnyway =
                answer === undefined || allowed.slice(0, -2).includes(answer) || ['100', '1000'].includes(answer);
              if (!shownAnyway && numbersIn(hint).includes(answer)) expect.unreachable(`${step.id}: ${hint}`);
            }
          }
        }
      }),
      { numRuns: runs },
    );
    expect(plans).toBe(runs * teams);
  });

  const givens = {
    formula: 'KBr',
    'stock molarity': '0.400',
    flask: '0.25 L',
    'target molarity': '0.0600',
    'target volume': '100',
    ion: 'Br-',
    purity: '',
  };
  const hint = (stepId: string, level: number, more: Partial<Parameters<typeof hintForStep>[0]> = {}) =>
    hintForStep({ activity, stepId, level, givens, entries: {}, decimalMark: 'point', ...more });

  it('puts the team’s own numbers in the set-up, in the unit that the relation needs', () => {
    expect(hint('mass of solute', 3)).toBe('0.400 mol/L × (250 mL ÷ 1000) × molar mass of KBr = ?');
    expect(hint('mass of solute', 3, { givens: { ...givens, purity: '98 %' } })).toContain('÷ (98 ÷ 100)');
    expect(hint('molar mass', 3, { givens: { ...givens, formula: 'CuSO4·5H2O' } })).toContain(
      '1 × Cu + 1 × S + 9 × O + 10 × H',
    );
  });

  it('speaks of purity only where the team has one', () => {
    for (const step of ['mass of solute', 'stock made']) {
      expect(hint(step, 2)).not.toMatch(/pure/);
      expect(hint(step, 2, { givens: { ...givens, purity: '94.5' } })).toMatch(
        /\. (?:Your solid is not|Only the) pure/,
      );
    }
  });

  it('helps with telling in words that fit every activity', () => {
    for (const level of [2, 3]) expect(hint('in your words', level)).not.toMatch(/water|dilut|changed|volume/i);
  });

  it('names the row that a set-up is waiting for', () => {
    expect(hint('stock made', 3)).toContain('(your “Mass you weighed”) g');
    expect(hint('stock made', 3, { entries: { 'mass weighed': '11.90' } })).toContain('11.90 g');
    expect(hint('stock made', 3, { entries: { 'mass weighed': 'heaps' } })).toContain('(your “Mass you weighed”) g');
  });

  it('writes what was not typed so with the mark of the class', () => {
    // A cell that holds a number has no mark of its own, and 250,5 mL are worked out from litres.
    const comma = { decimalMark: 'comma', givens: { ...givens, flask: '0,2505 L' } } as const;
    expect(hint('mass of solute', 3, comma)).toContain('(250,5 mL ÷ 1000)');
    expect(hint('stock made', 3, { ...comma, entries: { 'mass weighed': 11.9 } })).toContain('11,9 g');
    expect(hint('stock made', 3, { entries: { 'mass weighed': 11.9 } })).toContain('11.9 g');
  });

  it('gives a bare quantity its hint from givens of its own names', () => {
    const bare = {
      activity: undefined,
      givens: { 'stock molarity': 2, 'target molarity': '0.5', 'target volume': '100' },
    };
    expect(hint('stock volume', 3, bare)).toBe('0.5 mol/L × 100 mL ÷ 2 mol/L = ?');
  });

  it('says nothing at level 0, at an unknown level and for an unknown step', () => {
    for (const level of [0, 4, -1, 1.5, Number.NaN]) expect(hint('molar mass', level)).toBe('');
    expect(hint('no such step', 2)).toBe('');
    expect(hint('toString', 2)).toBe('');
  });

  describe('with the teacher’s own words', () => {
    const own = [
      ['Step', 'Level', 'Wording', 'Link'],
      ['molar mass', '1', '', 'https://example.org/weights'],
      ['molar mass', 2, '=Look at the chart by the door', 'https://example.org/chart'],
      ['Mass of Solute', 1, '', ''],
      ['Mass of Solute', 1, 'Ask the green binder', 'javascript:alert(1)'],
    ];
    it('lets them win where there are some, and adds the link', () => {
      const withOwn = (stepId: string, level: number) => hint(stepId, level, { ownHints: own });
      expect(withOwn('molar mass', 2)).toBe('=Look at the chart by the door https://example.org/chart');
      expect(withOwn('molar mass', 1)).toBe(`${hint('molar mass', 1)} https://example.org/weights`);
      expect(withOwn('mass of solute', 1)).toBe('Ask the green binder');
      expect(withOwn('mass of solute', 2)).toBe(hint('mass of solute', 2));
      expect(withOwn('molar mass', 0)).toBe('');
    });
    it('passes on web addresses only', () => {
      for (const link of [
        'javascript:alert(1)',
        'data:text/html,x',
        'ftp://example.org',
        'https://a b',
        'file:///x',
        '"https://x"',
      ]) {
        expect(hint('molar mass', 1, { ownHints: [['molar mass', 1, 'Look', link]] })).toBe('Look');
      }
    });
  });
});

describe('hintForQuantity', () => {
  it('goes from the idea to the set-up and never works it out', () => {
    const table = [
      ['formula', 'KBr'],
      ['molarity', '0.300'],
      ['volume', '200'],
    ];
    const levels = [1, 2, '3'].map((level) => hintForQuantity('mass of solute', table, level));
    expect(levels.map((result) => result.ok)).toEqual([true, true, true]);
    expect(levels[2]).toEqual({ ok: true, value: '0.300 mol/L × (200 mL ÷ 1000) × molar mass of KBr = ?' });
  });

  it.each([0, 4, 'two', '', null, true])('asks for level 1, 2 or 3 where it gets %s', (level) => {
    expect(hintForQuantity('molar mass', [['formula', 'KBr']], level)).toMatchObject({
      ok: false,
      error: { code: 'hint-level', argument: 'level' },
    });
  });

  it('refuses a table that the check would refuse as well', () => {
    expect(hintForQuantity('molar mass', [['salt', 'KBr']], 1).ok).toBe(false);
    expect(hintForQuantity('molar mass', [['formula', 'kbr']], 3).ok).toBe(false);
  });
});
