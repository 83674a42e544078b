import { describe, expect, it } from 'vitest';
import type { Setup } from '../../src/lab/lesson/setup.ts';
import { keptTeams } from '../../src/workbook/keptTeams.ts';
import type { PlanReading } from '../../src/workbook/readLesson.ts';
import { lesson, setup, teams } from './lesson.ts';

/** The Plan as it was built from these lines. */
const before = (lines = teams): PlanReading => ({
  setup,
  teams: lines,
  givenNames: lesson.givenNames,
  places: {
    settings: { row: 5, column: 1, rows: 20, columns: 2 },
    closed: { row: 24, column: 1, rows: 1, columns: 2 },
    keys: { row: 26, column: 1, rows: 40, columns: 1 },
    givenHeadings: { row: 26, column: 4, rows: 1, columns: 7 },
    teamColumns: {},
  },
  hasOwnColumns: false,
  invented: false,
  layout: '1',
  keysUsedTwice: [],
  problems: [],
  absent: [],
  closed: [],
});
/** Numbers that nobody has: what a team shows of these was given anew. */
const drafted = teams.map((team) => ({ ...team, givens: { ...team.givens, flask: '999' } }));
const isNew = (wanted: Setup) =>
  keptTeams({ drafted, before: before(), setup: wanted }).map(({ givens }) => givens.flask === '999');
const shelf = (changed: Partial<Setup['shelf']>): Setup => ({ ...setup, shelf: { ...setup.shelf, ...changed } });

describe('numbers of a Plan that is built again', () => {
  it.each<[string, Setup]>([
    ['the activity', { ...setup, activity: 'dilution' }],
    ['a given', { ...setup, givens: { ...setup.givens, flask: '500' } }],
    ['whether teams have their own', { ...setup, ownNumbers: !setup.ownNumbers }],
    ['the seed', { ...setup, settings: { ...setup.settings, seed: 'another' } }],
    ['the flasks', shelf({ flasksMl: [...setup.shelf.flasksMl, 2000] })],
    ['the pipettes', shelf({ pipettesMl: [...setup.shelf.pipettesMl, 3] })],
    ['how finely the balance reads', shelf({ balanceReadabilityG: setup.shelf.balanceReadabilityG / 10 })],
    ['how much the balance carries', shelf({ balanceMaxG: setup.shelf.balanceMaxG + 10 })],
  ])('are made anew where %s changes', (_, wanted) => {
    expect(isNew(wanted)).toEqual(teams.map(() => true));
  });
  it.each<[string, Setup]>([
    ['nothing changes', setup],
    ['another decimal mark is wanted', { ...setup, settings: { ...setup.settings, 'decimal mark': 'comma' } }],
    ['a given is left blank that was not there', { ...setup, givens: { ...setup.givens, other: '' } }],
  ])('stay where %s', (_, wanted) => {
    expect(isNew(wanted)).toEqual(teams.map(() => false));
  });
});

describe('keys of a Plan that is built again', () => {
  it('differ by more than capital letters, since a lookup in a sheet tells none apart', () => {
    const [first] = teams;
    if (!first) throw new Error('The lesson has no team.');
    const lines = teams.map((team, at) => ({ ...team, key: at === 0 ? 'C1-T9' : team.key }));
    const late = { ...first, team: 'Late', key: 'c1-t9' };
    const keys = keptTeams({ drafted: [...drafted, late], before: before(lines), setup }).map(({ key }) => key);
    expect(keys).toHaveLength(teams.length + 1);
    expect(keys).toContain('C1-T9');
    expect(new Set(keys.map((key) => key.toLowerCase())).size).toBe(keys.length);
  });
});
