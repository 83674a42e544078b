import { describe, expect, it } from 'vitest';
import { judgeTeam } from '../../src/lab/judging/judgeTeam.ts';
import { activityById } from '../../src/lab/lesson/activities.ts';
import { layoutVersion } from '../../src/workbook/layout.ts';

const activity = activityById('bench reading');
if (activity === undefined) throw new Error('no bench reading');
const ids = activity.steps.map(({ id }) => id);

/** Planned: 0.250 mol/L in a class B flask of 200 mL, ±0.3 mL, with an allowance of 2 %. */
function rows(entries: Readonly<Record<string, string>>, molarity = '0.250') {
  const judged = judgeTeam({
    givenNames: ['formula', 'molarity', 'flask'],
    givenValues: ['KBr', molarity, '200'],
    settings: [
      ['activity', 'bench reading'],
      ['layout', String(layoutVersion)],
    ],
    steps: ids,
    entries: ids.map((id) => ({ 'cautions read': 'yes, KBr', ...entries })[id] ?? ''),
  });
  return Object.fromEntries(ids.map((id, at) => [id, judged[at]]));
}

describe('a reading that is compared with a number the team was given', () => {
  it('is on target as far as the flask and the allowance go', () => {
    // 2 · 0.3 mL ÷ √3 ÷ 200 mL is 0.17 %; with 2 % that is 2.17 % of 0.250 mol/L, or 0.0054 mol/L.
    for (const [entry, status] of [
      ['0.250', 'on target'],
      ['0.2554', 'on target'],
      ['0.2446 mol/L', 'on target'],
      ['254 mmol/L', 'on target'],
      ['0.256', 'not yet'],
      ['0.244', 'not yet'],
      ['', 'blank'],
      ['quite strong', 'unreadable'],
      ['5.95 g', 'not yet'],
    ] as const) {
      expect([entry, rows({ 'molarity read': entry })['molarity read']?.status]).toEqual([entry, status]);
    }
  });
  it('says which way it is off and never what was expected', () => {
    for (const entry of ['0.300', '0.200', '250', '0.0025']) {
      const words = rows({ 'molarity read': entry })['molarity read']?.lookAt ?? '';
      expect(words).not.toBe('');
      expect(words).not.toMatch(/\d/);
    }
  });
  it('is what the percent error is worked from, and never makes it wrong', () => {
    // 100 · (0.253 − 0.250) ÷ 0.250 is 1.2 %.
    const right = rows({ 'molarity read': '0.253', 'percent error': '1.2' });
    expect(right['percent error']?.status).toBe('on target');
    // 100 · 0.050 ÷ 0.300 is 17 %: divided by what was read.
    expect(rows({ 'molarity read': '0.300', 'percent error': '17' })['percent error']?.slips).toEqual([
      'divided-by-measured',
    ]);
    expect(rows({ 'percent error': '1.2' })['percent error']?.lookAt).toContain('“Molarity read at the bench”');
  });
  it('names a given that cannot be read', () => {
    const bad = rows({ 'molarity read': '0.25', 'percent error': '2' }, 'half');
    expect(bad['molarity read']?.status).toBe('unreadable');
    expect(bad['percent error']).toMatchObject({ status: 'unreadable', lookAt: expect.stringMatching(/^⚠ molarity/) });
  });
});
