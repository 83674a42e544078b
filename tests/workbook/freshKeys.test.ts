import { describe, expect, it } from 'vitest';
import type { TeamPlan } from '../../src/lab/lesson/setup.ts';
import { keptTeams } from '../../src/workbook/keptTeams.ts';
import { neutralLesson } from '../../src/workbook/neutralLesson.ts';
import type { PlanReading } from '../../src/workbook/readLesson.ts';
import { lesson, setup } from './lesson.ts';

const [fern = '', moss = ''] = setup.classes.map(({ name }) => name);
const team = (key: string, className: string, name: string): TeamPlan => ({ key, className, team: name, givens: {} });
const planOf = (...teams: readonly TeamPlan[]) => ({ setup, teams }) as unknown as PlanReading;
const keys = (drafted: readonly TeamPlan[], there?: PlanReading) =>
  keptTeams({ drafted, before: there, setup }).map(({ key }) => key);

describe('the key of a new team', () => {
  it('is the one that it was drafted with, where that is plain and nobody has it', () => {
    expect(keys([team('bench-7', fern, 'Otter'), team('x', moss, 'Newt')])).toEqual(['bench-7', 'x']);
    expect(keys([team('bench-7', fern, 'Otter'), team('bench-7', moss, 'Newt')])).toEqual(['bench-7', 'c2-t1']);
  });
  it('is counted in its class where it has none that will do', () => {
    for (const odd of ['7', 'a*', 'A1', '', 'a b', '-x'])
      expect(keys([team(odd, fern, 'Otter'), team(odd, moss, 'Newt'), team(odd, fern, 'Heron')])).toEqual([
        'c1-t1',
        'c2-t1',
        'c1-t2',
      ]);
  });
  it('goes on from those that the Plan has, in whatever letters', () => {
    const there = planOf(team('C1-T1', fern, 'Otter'), team('c1-t3', fern, 'Heron'));
    const late = [team('c1-t1', fern, 'Wren'), team('c1-t1', fern, 'Teal')];
    expect(keys([team('', fern, 'Otter'), team('', fern, 'Heron'), ...late], there)).toEqual([
      'C1-T1',
      'c1-t3',
      'c1-t2',
      'c1-t4',
    ]);
  });
  it('is never that of a team of the same name in another class', () => {
    expect(keys([team('', moss, 'Otter')], planOf(team('c1-t1', fern, 'Otter')))).toEqual(['c2-t1']);
  });
});

describe('a lesson to give on', () => {
  it('is nobody’s invented one, whatever it was made from', () => {
    const reading = { setup, teams: lesson.teams, invented: true } as unknown as PlanReading;
    expect(neutralLesson(reading, lesson.activity)).toMatchObject({
      invented: false,
      givenNames: lesson.activity.givens.map(({ name }) => name),
    });
  });
});
