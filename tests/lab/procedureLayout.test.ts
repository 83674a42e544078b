import { describe, expect, it } from 'vitest';
import { lettersInOrder } from '../../src/lab/bench/orderedActions.ts';
import { allProcedures, procedureByName } from '../../src/lab/bench/procedures.ts';
import { teamChecks } from '../../src/lab/judging/teamChecks.ts';
import { allActivities } from '../../src/lab/lesson/activities.ts';
import { orderTexts } from '../../src/lab/texts/ordering.ts';
import { layoutVersion } from '../../src/workbook/layout.ts';
import { firstTeamGivens } from './firstTeam.ts';

/** How many letters each procedure had in the layout before the one in which it last changed. */
const lettersBefore: Readonly<Record<string, number>> = {
  'solid to flask': 9,
  'pipette to flask': 7,
  'concentrated to flask': 9,
  'serial dilution': 9,
  'weighed residue': 7,
  'weighed portion': 7,
};

const orderedRows = allActivities().flatMap((activity) =>
  activity.steps.flatMap((step) => (step.kind === 'ordered' ? [{ activity, step, id: activity.id }] : [])),
);

function answer({ activity, step }: (typeof orderedRows)[number], entry: string, layout?: string | number) {
  const givens = firstTeamGivens(activity);
  const [row] = teamChecks({
    givenNames: Object.keys(givens),
    givenValues: Object.values(givens),
    settings: [['activity', activity.id], ...(layout === undefined ? [] : [['layout', layout]])],
    steps: [step.id],
    entries: [entry],
  });
  return row;
}

describe('the letters of a procedure that has changed', () => {
  it('are those of a layout that sheets are built with', () => {
    for (const { name, sinceLayout } of allProcedures()) {
      expect([name, sinceLayout <= layoutVersion, Number.isInteger(sinceLayout)]).toEqual([name, true, true]);
    }
  });

  it.each(orderedRows)(
    'in $id, $step.id: an older sheet is told to be built again, and nobody is told wrong',
    (one) => {
      const { procedure } = one.step;
      const { sinceLayout } = procedureByName(procedure);
      const right = lettersInOrder(procedure).join(' ');
      for (const layout of ['', 'new', '1', sinceLayout - 1, `${sinceLayout - 1}`]) {
        for (const entry of [right, [...right].reverse().join(''), 'e c b f g a d', 'stock first']) {
          expect(answer(one, entry, layout)).toMatchObject({ check: 'unreadable', lookAt: orderTexts.buildAgain });
        }
        expect(answer(one, '', layout)).toMatchObject({ check: 'blank', lookAt: orderTexts.buildAgain });
      }
      for (const layout of [undefined, layoutVersion, `${layoutVersion}`, layoutVersion + 1]) {
        expect(answer(one, right, layout)?.check).toBe('on target');
      }
    },
  );

  it.each(orderedRows)(
    'in $id, $step.id: an order carried over from the older sheet is seen to be an old one',
    (one) => {
      const count = lettersBefore[one.step.procedure] ?? 0;
      expect(count).toBeGreaterThan(0);
      const old = 'abcdefghijkl'.slice(0, count);
      for (const entry of [old, [...old].reverse().join(' ')]) {
        const row = answer(one, entry, layoutVersion);
        expect(row?.check).toBe('unreadable');
        expect(row?.lookAt).toMatch(/^Write the letters a to [a-j], each once/);
      }
    },
  );
});
