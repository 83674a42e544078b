import { readFileSync } from 'node:fs';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { judgeTeam } from '../../src/lab/judging/judgeTeam.ts';
import { activityById, addActivity, allActivities } from '../../src/lab/lesson/activities.ts';
import { numbersForTeams } from '../../src/lab/numbers/numbersForTeams.ts';
import { layoutVersion } from '../../src/workbook/layout.ts';
import { planWorkbook } from '../../src/workbook/planWorkbook.ts';
import { startOf } from './otherActivities.ts';
import { rightEntries } from './rightEntries.ts';
import { sugarSyrup } from './sugarSyrup.ts';

const read = (path: string): string => readFileSync(new URL(`../../${path}`, import.meta.url), 'utf8');

describe('an activity of a department’s own', () => {
  const before = allActivities().length;
  let remove = () => {};
  beforeAll(() => {
    remove = addActivity('sugar syrup', sugarSyrup);
  });
  afterAll(() => {
    remove();
    expect(allActivities()).toHaveLength(before);
  });

  it('is the one that the page for contributors shows', () => {
    const shown =
      /```ts\n\/\/ src\/lab\/lesson\/activities\/sugarSyrup\.ts\n([\s\S]*?)```/.exec(read('DEVELOPERS.md'))?.[1] ?? '';
    const file = read('tests/lab/sugarSyrup.ts')
      .replace(/'\.\.\/\.\.\/src\/lab\/lesson\/activities\//g, "'./")
      .replace("'../../src/lab/lesson/activity.ts'", "'../activity.ts'");
    const plain = (text: string) =>
      text
        .replace(/\s+/g, ' ')
        .replace(/, }/g, ' }')
        .trim()
        .split(/(?=import|export|const )/)
        .sort();
    expect(plain(shown)).toEqual(plain(file));
  });

  it('is offered, numbered, planned and checked like any other', () => {
    const activity = activityById('Sugar syrup');
    if (activity === undefined) throw new Error('the activity was not added');
    expect(allActivities()).toHaveLength(before + 1);
    const setup = startOf('sugar syrup');
    const numbers = numbersForTeams(setup);
    if (!numbers.ok) throw new Error(numbers.error.advice);
    const { teams } = numbers.value;
    expect(new Set(teams.map(({ givens }) => JSON.stringify(givens))).size).toBe(teams.length);
    const plan = planWorkbook({
      setup,
      activity,
      teams,
      givenNames: activity.givens.map(({ name }) => name),
      invented: true,
    });
    const classes = plan.sheets.filter(({ role }) => role.kind === 'class');
    expect(classes.map(({ checks }) => checks.length)).toEqual([6, 6]);
    expect(JSON.stringify(plan)).toContain('How far your syrup is from the ');
    for (const { givens } of teams) {
      const entries = rightEntries(activity, givens);
      const rows = judgeTeam({
        givenNames: Object.keys(givens),
        givenValues: Object.values(givens),
        settings: [...Object.entries(setup.settings), ['layout', String(layoutVersion)]],
        steps: activity.steps.map(({ id }) => id),
        entries: activity.steps.map(({ id }) => entries[id] ?? ''),
      });
      expect(rows.map(({ status }) => status)).toEqual([...Array(activity.steps.length - 1).fill('on target'), '']);
    }
  });

  it('cannot take the name of another', () => {
    expect(() => addActivity('dilution', sugarSyrup)).toThrow('dilution');
    expect(() => addActivity('Syrup', sugarSyrup)).toThrow('Syrup');
  });
});
