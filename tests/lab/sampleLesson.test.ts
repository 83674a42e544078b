import { describe, expect, it } from 'vitest';
import { judgeTeam } from '../../src/lab/judging/judgeTeam.ts';
import { activityById } from '../../src/lab/lesson/activities.ts';
import { sampleLesson } from '../../src/lab/lesson/sampleLesson.ts';
import { numbersForTeams } from '../../src/lab/numbers/numbersForTeams.ts';
import { layoutVersion } from '../../src/workbook/layout.ts';

const sample = sampleLesson();
const numbers = numbersForTeams(sample.setup);
if (!numbers.ok) throw new Error(numbers.error.advice);
const steps = activityById(sample.setup.activity)?.steps ?? [];

const judged = numbers.value.teams.map((team) => {
  const entries = steps.map(
    ({ id }) =>
      sample.entries.find(
        (entry) => entry.team === team.team && entry.className === team.className && entry.step === id,
      )?.entry ?? '',
  );
  const rows = judgeTeam({
    givenNames: ['key', ...Object.keys(team.givens)],
    givenValues: [team.key, ...Object.values(team.givens)],
    settings: [...Object.entries(sample.setup.settings), ['layout', String(layoutVersion)]],
    steps: steps.map(({ id }) => id),
    entries,
  });
  return { team, entries, rows };
});
const slipsOf = (name: string) => judged.find(({ team }) => team.team === name)?.rows.flatMap(({ slips }) => slips);

describe('sampleLesson', () => {
  it('has an invented school, marked as one, with two classes of six teams', () => {
    expect(sample.school).toContain('invented');
    expect(sample.setup.classes.map(({ teams }) => teams.length)).toEqual([6, 6]);
    expect(sample.setup.givens.formula).not.toBe('NaCl');
    expect(judged).toHaveLength(12);
  });

  it('has rows of every kind: right, close, wrong, unreadable and blank', () => {
    const statuses = new Set(judged.flatMap(({ rows }) => rows.map(({ status }) => status)));
    for (const status of ['on target', 'close', 'not yet', 'unreadable', 'blank']) expect(statuses).toContain(status);
  });

  it('has slips that are recognised from each team’s own numbers', () => {
    expect(slipsOf('Quartz')).toEqual(['volume-in-mL']);
    expect(slipsOf('Slate')).toEqual(['water-for-stock']);
    expect(slipsOf('Obsidian')).toEqual(['moles-reported']);
    expect(slipsOf('Gneiss')).toEqual(['ratio-inverted']);
    expect(slipsOf('Chalk')).toEqual(['volume-in-mL']);
    expect(slipsOf('Basalt')).toEqual([]);
  });

  it('has one team that has finished and one that has not begun', () => {
    const rowsOf = (name: string) => judged.find(({ team }) => team.team === name);
    expect(rowsOf('Basalt')?.rows.map(({ status }) => status)).toEqual([...Array(14).fill('on target'), '']);
    expect(rowsOf('Pumice')?.entries.join('')).toBe('');
  });
});
