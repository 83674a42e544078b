import { describe, expect, it } from 'vitest';
import { activityById } from '../../src/lab/lesson/activities.ts';
import type { Setup, TeamPlan } from '../../src/lab/lesson/setup.ts';
import { startingGivens } from '../../src/lab/lesson/startingGivens.ts';
import type { StandIn } from '../../src/preview/standin/openStandIn.ts';
import { rightEntries } from '../lab/rightEntries.ts';
import { answerOf, buildSetup, call, open, stepRow, typeIn } from './bench.ts';
import { sheetState, valueAt } from './cells.ts';
import { setup } from './setup.ts';

const found = activityById('measured density');
if (found === undefined) throw new Error('no measured density');
const activity = found;
const weighed: Setup = {
  ...setup,
  activity: activity.id,
  settings: { ...setup.settings, activity: activity.id },
  givens: startingGivens(activity),
};

const teamsOf = (host: StandIn): readonly TeamPlan[] =>
  answerOf(call(host, 'readNumbers')).teams.map(({ key, className, team, givens }) => ({
    key,
    className,
    team,
    givens,
  }));

describe('a class that measures a density', () => {
  it('finds the lines of the table in the Plan and in its rows, and is on target in every row', () => {
    const host = open();
    buildSetup(host, weighed);
    const [team] = teamsOf(host);
    if (team === undefined) throw new Error('no team');
    for (const name of ['lighter percent', 'lighter density', 'heavier percent', 'heavier density']) {
      expect(team.givens[name]).toMatch(/^\d+(\.\d+)?$/);
    }
    const row = (step: string) => stepRow(host, { sheet: team.className, key: team.key, step });
    const cell = (step: string, column: number) => valueAt(host, { sheet: team.className, row: row(step), column });
    for (const name of ['lighter percent', 'heavier density']) {
      expect(cell('mass percent', 2)).toContain(` ${team.givens[name]} `);
    }
    const entries = rightEntries(activity, { ...team.givens, key: team.key });
    typeIn(host, {
      sheet: team.className,
      cells: activity.steps.map(({ id }) => [row(id), 3, entries[id] ?? '']),
    });
    for (const { id, kind } of activity.steps) {
      if (kind !== 'told') expect([id, cell(id, 5)]).toEqual([id, 'on target']);
    }
  });

  it('keeps the lines blank in what the next build starts from, so that they follow another solute', () => {
    const host = open();
    buildSetup(host, weighed);
    const lesson = answerOf(call(host, 'readLesson'));
    expect(lesson.setup.givens).toMatchObject({ formula: 'C12H22O11', 'lighter density': '', 'heavier percent': '' });
    const view = lesson.activities.find(({ id }) => id === activity.id);
    expect(view?.givens.filter(({ optional }) => optional).map(({ name }) => name)).toEqual([
      'lighter percent',
      'lighter density',
      'heavier percent',
      'heavier density',
    ]);
    const before = teamsOf(host)[0]?.givens;
    buildSetup(host, { ...lesson.setup, givens: { ...lesson.setup.givens, formula: 'NaCl', molarity: '1.00' } });
    const after = teamsOf(host)[0]?.givens;
    expect(after?.formula).toBe('NaCl');
    expect(after?.['lighter density']).not.toBe(before?.['lighter density']);
  });

  it('has a key, a table on paper and a list of what to prepare', () => {
    const host = open();
    buildSetup(host, weighed);
    const { name } = answerOf(call(host, 'writeKeySheet', true));
    const key = sheetState(host, name);
    const text = Array.from({ length: key.rows }, (_, at) =>
      Array.from({ length: 8 }, (__, column) => valueAt(host, { sheet: name, row: at + 1, column: column + 1 })).join(),
    ).join('\n');
    expect(text).toContain('Mass of the portion');
    expect(text).toMatch(/about \d\d?\.\d\d/);
    const paper = answerOf(call(host, 'readPaper'));
    expect(JSON.stringify(paper)).toContain('lid on at once');
    const prepared = answerOf(call(host, 'readPreparation'));
    expect(JSON.stringify(prepared)).toContain('small vessel with a lid');
  });
});
