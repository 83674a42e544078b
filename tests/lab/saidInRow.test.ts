import { describe, expect, it } from 'vitest';
import { saidInRow } from '../../src/lab/judging/saidInRow.ts';
import { teamChecks } from '../../src/lab/judging/teamChecks.ts';
import { allActivities } from '../../src/lab/lesson/activities.ts';
import { firstTeamGivens } from './firstTeam.ts';

describe('what a row may say, by which its height is planned', () => {
  it.each(allActivities().map((activity) => [activity.id, activity] as const))(
    'holds what every row of %s says before anything is typed, and what it waits for',
    (id, activity) => {
      const givens = firstTeamGivens(activity);
      const { steps } = activity;
      const rows = teamChecks({
        givenNames: ['key', ...Object.keys(givens)],
        givenValues: ['c1-t1', ...Object.values(givens)],
        settings: [['activity', id]],
        steps: ['', ...steps.map((step) => step.id), ''],
        entries: ['', ...steps.map(() => ''), ''],
      }).slice(1, -1);
      const waiting = steps.flatMap((step, place) => {
        const said = rows[place]?.lookAt ?? '';
        if (said === '') return [];
        const { lookAt } = saidInRow(step, { activity, givens, decimalMark: 'point', studentsDilute: false });
        expect([step.id, lookAt]).toEqual([step.id, expect.arrayContaining([said])]);
        return step.bench ? [said] : [];
      });
      expect(waiting.length).toBe(steps.filter(({ bench }) => bench).length);
    },
  );
});
