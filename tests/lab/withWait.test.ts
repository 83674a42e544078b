import { describe, expect, it } from 'vitest';
import type { JudgedRow } from '../../src/lab/judging/judgedRow.ts';
import { withWait } from '../../src/lab/judging/withWait.ts';
import { activityById } from '../../src/lab/lesson/activities.ts';

const steps = activityById('stock and dilution')?.steps ?? [];

/** A row of the everyday activity as it may be judged. */
function row(kind: string, found: Partial<JudgedRow>): JudgedRow {
  const step = steps.find((one) => one.kind === kind);
  if (!step) throw new Error(`The everyday activity has no row that is ${kind}.`);
  return { step, status: 'blank', lookAt: '', slips: [], value: undefined, unrounded: [], root: step.title, ...found };
}
const ticked = row('ticked', { status: 'on target' });
const bench = row('measured', { status: 'blank' });
const waits = (...earlier: readonly JudgedRow[]) => withWait(bench, [ticked, ...earlier]).lookAt;

describe('a row at the bench', () => {
  it('goes on where nothing above needs another look', () => {
    for (const status of ['on target', 'close', 'blank', ''] as const) {
      expect(waits(row('calculated', { status, value: 1 }))).toBe('');
    }
  });
  it.each(['not yet', 'follows', 'unreadable'] as const)(
    'waits for a calculated row that is “%s”, and names it',
    (status) => {
      const above = row('calculated', { status, value: 1 });
      expect(waits(above)).toContain(`“${above.root}”`);
    },
  );
  it('does not wait for what was measured, however far from the plan: that is a fact', () => {
    expect(waits(row('measured', { status: 'not yet', value: 99 }))).toBe('');
  });
  it('waits for a measurement that cannot be read', () => {
    const above = row('measured', { status: 'unreadable', value: undefined });
    expect(waits(above)).toContain(`“${above.root}”`);
  });
  it('does not wait for an answer chosen from a list', () => {
    const chosen = { ...row('ordered', {}).step, kind: 'chosen' } as NonNullable<JudgedRow['step']>;
    expect(waits({ ...row('ordered', { status: 'not yet' }), step: chosen })).toBe('');
  });
  it('waits for the order of its work', () => {
    const above = row('ordered', { status: 'not yet' });
    expect(waits(above)).toContain(`“${above.root}”`);
  });
  it('waits for the cautions before anything else', () => {
    const unread = row('ticked', { status: 'blank' });
    expect(withWait(bench, [unread, row('calculated', { status: 'not yet' })]).lookAt).toContain(unread.root);
  });
  it('is not right before its turn, whatever is typed, and says what it waits for in place of anything else', () => {
    const above = row('calculated', { status: 'not yet' });
    const typed = { ...bench, status: 'on target', slips: ['power-of-ten'] } as const;
    expect(withWait(typed, [ticked, above])).toMatchObject({ status: 'not yet', slips: [] });
    expect(withWait(typed, [ticked, above]).lookAt).toContain(`“${above.root}”`);
    expect(withWait(typed, [ticked, { ...above, status: 'on target' }])).toBe(typed);
  });
  it('stays blank while it waits', () => {
    expect(withWait(bench, [ticked, row('calculated', { status: 'not yet' })]).status).toBe('blank');
  });
  it('says what is wrong with its own numbers before it says what it waits for', () => {
    const unusable = { ...bench, status: 'not yet', isUnusable: true } as const;
    expect(withWait(unusable, [ticked, row('calculated', { status: 'not yet' })])).toBe(unusable);
  });
});

describe('a row at the desk', () => {
  it('waits for nothing', () => {
    const above = row('calculated', { status: 'not yet' });
    const desk = row('calculated', { status: 'blank' });
    expect(withWait(desk, [above])).toBe(desk);
  });
});
