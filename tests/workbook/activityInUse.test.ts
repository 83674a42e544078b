import { expect, it } from 'vitest';
import { activityInUse } from '../../src/workbook/activityInUse.ts';
import { lesson, setup, teams } from './lesson.ts';

const rowsFor = (given: readonly (typeof teams)[number][]) =>
  activityInUse(lesson.activity, { setup, teams: given }).steps.map(({ id }) => id);
const withIon = (ion: string | undefined) =>
  teams.slice(0, 2).map((team, index) => {
    const { ion: _, ...givens } = team.givens;
    return { ...team, givens: index === 1 && ion !== undefined ? { ...givens, ion } : givens };
  });

it('a row about an ion is left out where no team has one to look at, and stays as soon as one has', () => {
  const all = rowsFor(teams);
  expect(rowsFor(withIon('Br-'))).toEqual(all);
  const left = rowsFor(withIon(undefined));
  expect(all.filter((id) => !left.includes(id))).toHaveLength(1);
  expect(rowsFor(withIon('  '))).toEqual(left);
  // Before there are teams the plan shows every row.
  expect(rowsFor([])).toEqual(all);
});
