import { describe, expect, it } from 'vitest';
import type { TeamPlan } from '../../src/lab/lesson/setup.ts';
import { keptTeams } from '../../src/workbook/keptTeams.ts';
import type { PlanReading } from '../../src/workbook/readLesson.ts';
import { lesson, setup, teams } from './lesson.ts';

const reading = (lines: readonly TeamPlan[]): PlanReading => ({
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
const drafted = teams.map((team, index) => ({ ...team, key: `fresh ${index}` }));

describe('keptTeams', () => {
  it('keeps keys, order and numbers edited by hand while the same numbers are wanted', () => {
    const edited = [...teams]
      .reverse()
      .map((team) => ({ ...team, givens: { ...team.givens, 'stock molarity': '0.45' } }));
    expect(keptTeams({ drafted, before: reading(edited), setup })).toEqual(edited);
  });

  it('gives new numbers to the same keys when other numbers are wanted', () => {
    const wanted = { ...setup, settings: { ...setup.settings, seed: '2' } };
    const changed = drafted.map((team) => ({ ...team, givens: { ...team.givens, flask: '250' } }));
    const kept = keptTeams({ drafted: changed, before: reading(teams), setup: wanted });
    expect(kept.map(({ key }) => key)).toEqual(teams.map(({ key }) => key));
    expect(kept.every(({ givens }) => givens.flask === '250')).toBe(true);
  });

  it('puts a late team after the others, with a key that nobody has', () => {
    const late = { ...drafted[0], team: 'Late', className: 'Fern class', givens: {}, key: 'c1-t1' };
    const kept = keptTeams({ drafted: [late, ...drafted], before: reading(teams), setup });
    expect(kept).toHaveLength(teams.length + 1);
    expect(kept[kept.length - 1]?.team).toBe('Late');
    expect(new Set(kept.map(({ key }) => key)).size).toBe(kept.length);
  });

  it('keeps the practice of a class with its key and name, and gives it numbers of its own where all get new ones', () => {
    const practice = {
      ...teams[0],
      key: 'practice-1',
      team: 'Practice',
      className: 'Fern class',
      givens: {},
    } as TeamPlan;
    const wanted = { ...setup, settings: { ...setup.settings, seed: '2' } };
    const kept = keptTeams({ drafted, before: reading([...teams, practice]), setup: wanted });
    const again = kept.find(({ key }) => key === practice.key);
    expect(again).toMatchObject({ team: 'Practice', className: 'Fern class' });
    expect(again?.givens['target molarity']).toMatch(/^0\.\d+$/);
    expect(drafted.map(({ givens }) => JSON.stringify(givens))).not.toContain(JSON.stringify(again?.givens));
  });

  it('leaves out a team that is gone', () => {
    const kept = keptTeams({ drafted: drafted.slice(1), before: reading(teams), setup });
    expect(kept.map(({ team }) => team)).not.toContain('Otter');
  });

  it('makes keys that no lookup reads as a pattern', () => {
    const keys = keptTeams({ drafted, before: undefined, setup }).map(({ key }) => key);
    for (const key of keys) expect(key).toMatch(/^[a-z][a-z0-9-]*$/);
    expect(new Set(keys).size).toBe(keys.length);
  });
});
