import { describe, expect, it } from 'vitest';
import type { JudgedRow } from '../../src/lab/judging/judgedRow.ts';
import { judgeTeam } from '../../src/lab/judging/judgeTeam.ts';
import { withWait } from '../../src/lab/judging/withWait.ts';
import { activityById, allActivities } from '../../src/lab/lesson/activities.ts';
import { firstTeamGivens } from './firstTeam.ts';
import { rightEntries } from './rightEntries.ts';

const activityOf = (id: string) => {
  const activity = activityById(id);
  if (activity === undefined) throw new Error(`no activity ${id}`);
  return activity;
};

/** Rows of a block by step id; steps that are left out of the entries are left out of the block where `only` is set. */
function rowsOf(
  id: string,
  entries: Readonly<Record<string, string>>,
  { only = false, givens = firstTeamGivens(activityOf(id)) }: { only?: boolean; givens?: Record<string, string> } = {},
) {
  const ids = activityOf(id)
    .steps.map((step) => step.id)
    .filter((step) => !only || step in entries);
  const rows = judgeTeam({
    givenNames: Object.keys(givens),
    givenValues: Object.values(givens),
    settings: [['activity', id]],
    steps: ids,
    entries: ids.map((step) => entries[step] ?? ''),
  });
  return Object.fromEntries(ids.map((step, at) => [step, rows[at]]));
}

const waitsForTick = 'Wait before you do this. Check “Aim and cautions” first: read the cautions, then answer there.';
const activities = allActivities().map((activity) => [activity.id, activity] as const);

describe('rows of the bench', () => {
  it.each(activities)('wait for the cautions, whatever is typed, and no other row does: %s', (id, activity) => {
    const right = rightEntries(activity, firstTeamGivens(activity));
    const rows = rowsOf(id, { ...right, 'cautions read': '' });
    for (const step of activity.steps) {
      if (step.kind === 'measured' || step.kind === 'ordered') {
        expect([step.id, rows[step.id]]).toMatchObject([
          step.id,
          { status: 'not yet', lookAt: waitsForTick, slips: [] },
        ]);
      } else if (step.kind !== 'ticked' && step.kind !== 'told') {
        expect([step.id, rows[step.id]?.status]).toEqual([step.id, 'on target']);
      }
    }
  });

  it.each(activities)('are judged where the block has no row of cautions: %s', (id, activity) => {
    const { 'cautions read': _, ...right } = rightEntries(activity, firstTeamGivens(activity));
    const rows = rowsOf(id, right, { only: true });
    for (const { id: step, kind } of activity.steps) {
      if (kind !== 'ticked' && kind !== 'told') expect([step, rows[step]?.status]).toEqual([step, 'on target']);
    }
  });

  const solid = activityOf('solution from a solid');
  const right = rightEntries(solid, firstTeamGivens(solid));
  const rowsWith = (entries: Readonly<Record<string, string>>) => rowsOf(solid.id, { ...right, ...entries });

  it('wait whatever their own entry is, but for a blank one', () => {
    for (const entry of [right['mass weighed'] ?? '', '3', 'heavy', '5 mL'])
      expect(rowsWith({ 'cautions read': 'no', 'mass weighed': entry })['mass weighed']).toMatchObject({
        status: 'not yet',
        lookAt: waitsForTick,
      });
    expect(rowsWith({ 'cautions read': '', 'mass weighed': '' })['mass weighed']).toMatchObject({
      status: 'blank',
      lookAt: waitsForTick,
    });
    for (const entry of ['abc', '12', 'i h g f e d c b a'])
      expect(rowsWith({ 'cautions read': '', procedure: entry }).procedure?.status).toBe('not yet');
  });

  it('wait for the first earlier row that needs another look', () => {
    const rows = rowsWith({ 'moles of solute': '50', 'mass of solute': '0.1' });
    for (const id of ['procedure', 'mass weighed']) {
      expect([id, rows[id]?.status, rows[id]?.lookAt]).toEqual([
        id,
        'not yet',
        'Wait before you do this. Check “Moles of solute” first.',
      ]);
    }
    const upside = rowsWith({ procedure: right.procedure?.split(' ').reverse().join(' ') ?? '' });
    expect(upside.procedure?.status).toBe('not yet');
    expect(upside['mass weighed']?.lookAt).toBe('Wait before you do this. Check “How to make it” first.');
  });

  it('never wait for a chosen answer, nor for a reading that is far off', () => {
    const everyday = activityOf('stock and dilution');
    const all = rightEntries(everyday, firstTeamGivens(everyday));
    // What was weighed stays as it is, and what is worked from it is right.
    const { 'stock made': _, 'diluted molarity': __, ...before } = all;
    const heavy = rowsOf(everyday.id, { ...before, 'mass weighed': '15.00' });
    expect(heavy['mass weighed']?.status).toBe('not yet');
    expect(heavy['dilution procedure']?.status).toBe('on target');
    const ids = everyday.steps.map(({ id }) => id);
    const turned = judgeTeam({
      givenNames: Object.keys(firstTeamGivens(everyday)),
      givenValues: Object.values(firstTeamGivens(everyday)),
      settings: [['activity', everyday.id]],
      steps: ['particles', ...ids.filter((id) => id !== 'particles')],
      entries: ['e', ...ids.filter((id) => id !== 'particles').map((id) => all[id] ?? '')],
    });
    expect(turned[0]?.status).toBe('not yet');
    expect(turned.slice(1, -1).map(({ status }) => status)).toEqual(ids.slice(2).map(() => 'on target'));
  });

  it('that have a given which cannot be used say that, and wait for nothing', () => {
    const bad = rowsOf(
      'bench reading',
      { 'cautions read': '', 'molarity read': '0.25' },
      { givens: { formula: 'KBr', molarity: 'half', flask: '200' } },
    );
    expect(bad['molarity read']).toMatchObject({ status: 'unreadable', lookAt: expect.stringMatching(/^⚠ molarity/) });
  });
});

describe('withWait', () => {
  const everyday = activityOf('stock and dilution');
  const row = (id: string, found: Partial<JudgedRow>): JudgedRow => ({
    step: everyday.steps.find((step) => step.id === id),
    status: 'on target',
    lookAt: 'as it was',
    slips: [],
    value: undefined,
    unrounded: [],
    root: id,
    ...found,
  });
  it.each(['not yet', 'follows', 'unreadable'] as const)('holds a row back for one that is %s', (status) => {
    const held = withWait(row('mass weighed', { slips: ['power-of-ten'] }), [
      row('molar mass', { status: 'close' }),
      row('mass of solute', { status, root: 'Moles of solute' }),
    ]);
    expect(held).toMatchObject({
      status: 'not yet',
      lookAt: 'Wait before you do this. Check “Moles of solute” first.',
      slips: [],
    });
  });
  it.each(['on target', 'close', 'blank', ''] as const)('holds none back for one that is %j', (status) => {
    const free = row('mass weighed', {});
    expect(withWait(free, [row('mass of solute', { status })])).toBe(free);
  });
});
