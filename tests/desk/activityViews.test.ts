import { expect, it } from 'vitest';
import { activityViews } from '../../src/desk/lesson/activityViews.ts';
import { solutesFor } from '../../src/desk/lesson/solutesFor.ts';
import { activityById } from '../../src/lab/lesson/activities.ts';
import type { Activity } from '../../src/lab/lesson/activity.ts';

const activityOf = (id: string) => activityById(id) as Activity;
const viewOf = (id: string) => activityViews().find((one) => one.id === id);

// One test for all of it, since the views are made once and kept: only who asks first sees them made.
it('shows of each activity what it is, what it asks for, and its substances where not any solute will do', () => {
  const { title, aim } = activityOf('stock and dilution');
  expect(viewOf('stock and dilution')).toMatchObject({ title, aim, periods: 2 });
  const given = (name: string, id = 'stock and dilution') => viewOf(id)?.givens.find((one) => one.name === name);
  expect(given('flask')).toMatchObject({ flask: true, optional: false, start: '200', unit: 'mL' });
  expect(given('stock molarity')).not.toHaveProperty('flask');
  expect(given('purity')).toMatchObject({ optional: true });
  expect(given('purity')).not.toHaveProperty('start');
  expect(given('formula')).toMatchObject({ optional: false, start: 'KBr' });
  // A table of densities fills it in.
  expect(given('lighter percent', 'measured density')).toMatchObject({ optional: true });
  expect(viewOf('stock and dilution')).not.toHaveProperty('solutes');
  for (const id of ['solution from a hydrate', 'concentrated reagent', 'measured density'])
    expect(viewOf(id)?.solutes).toEqual(solutesFor(activityOf(id)));
  expect(activityViews()).toBe(activityViews());
});
