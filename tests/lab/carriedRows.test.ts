import { describe, expect, it } from 'vitest';
import { carriedRows } from '../../src/lab/judging/carriedRows.ts';
import type { JudgedRow } from '../../src/lab/judging/judgedRow.ts';
import { activityById } from '../../src/lab/lesson/activities.ts';
import type { CalculatedStep } from '../../src/lab/lesson/activity.ts';

function stepOf(activity: string, id: string): CalculatedStep {
  const step = activityById(activity, { fromRealStock: true })?.steps.find((one) => one.id === id);
  if (step?.kind !== 'calculated') throw new Error(`${activity} calculates no “${id}”.`);
  return step;
}
const row = (more: Partial<JudgedRow>): JudgedRow => ({
  step: undefined,
  status: 'on target',
  lookAt: '',
  slips: [],
  value: undefined,
  unrounded: [],
  root: '',
  ...more,
});
const setsFor = (step: CalculatedStep, rows: Readonly<Record<string, JudgedRow>>) =>
  carriedRows(step, { rowOf: (id) => rows[id] });

describe('what a row may have been carried forward from', () => {
  const mass = stepOf('solution from a solid', 'mass of solute');
  const right = {
    'molar mass': row({ value: 119, unrounded: [119.0023], root: 'Molar mass' }),
    'moles of solute': row({ value: 0.06, root: 'Moles of solute' }),
  };
  it('is each row above that holds a number, alone and together with the others', () => {
    expect(setsFor(mass, right)).toEqual([
      { carried: { 'molar mass': 119 }, sound: true, lookAt: '' },
      { carried: { 'moles of solute': 0.06 }, sound: true, lookAt: '' },
      { carried: { 'molar mass': 119, 'moles of solute': 0.06 }, sound: true, lookAt: '' },
    ]);
  });
  it('is nothing where no row above holds one, or is not there', () => {
    expect(setsFor(mass, {})).toEqual([]);
    expect(setsFor(mass, { 'molar mass': row({ status: 'blank' }) })).toEqual([]);
  });
  it('is to be looked at first where it is not on target itself, and close is not', () => {
    for (const status of ['close', 'not yet', 'follows'] as const) {
      const rows = { ...right, 'moles of solute': row({ status, value: 0.6, root: 'Moles of solute' }) };
      expect(setsFor(mass, rows)).toEqual([
        { carried: { 'molar mass': 119 }, sound: true, lookAt: '' },
        { carried: { 'moles of solute': 0.6 }, sound: false, lookAt: 'Moles of solute' },
        { carried: { 'molar mass': 119, 'moles of solute': 0.6 }, sound: false, lookAt: 'Moles of solute' },
      ]);
    }
  });
});

describe('a row that stands for a number given, as the molarity really made does', () => {
  const particles = activityById('stock and dilution', { fromRealStock: true })?.steps.find(
    (step): step is CalculatedStep => step.kind === 'calculated' && step.buildsOn.molarity !== undefined,
  );
  it('gives also what a right entry is rounded from', () => {
    if (particles === undefined) throw new Error('No row is worked from the molarity really made.');
    const made = particles.buildsOn.molarity ?? '';
    const values = (more: Partial<JudgedRow>) =>
      setsFor(particles, { [made]: row({ root: 'Made', ...more }) }).map(({ carried, sound, lookAt }) => [
        carried.molarity,
        sound,
        lookAt,
      ]);
    expect(values({ value: 0.298, unrounded: [0.2978] })).toEqual([
      [0.298, true, ''],
      [0.2978, true, ''],
    ]);
    // From what it should have been, whoever typed something else in the row above works honestly.
    const wrong = values({ status: 'not yet', value: 0.5, unrounded: [0.2978] });
    expect(wrong).toContainEqual([0.2978, true, '']);
    expect(wrong).toContainEqual([0.5, false, 'Made']);
    expect(wrong).not.toContainEqual([0.5, true, '']);
    expect(values({ status: 'not yet', value: 0.5 })).toEqual([[0.5, false, 'Made']]);
  });
});
