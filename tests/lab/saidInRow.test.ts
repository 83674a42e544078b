import { describe, expect, it } from 'vitest';
import { orderedActions } from '../../src/lab/bench/orderedActions.ts';
import { procedureByName } from '../../src/lab/bench/procedures.ts';
import { saidInRow } from '../../src/lab/judging/saidInRow.ts';
import { teamChecks } from '../../src/lab/judging/teamChecks.ts';
import { allActivities } from '../../src/lab/lesson/activities.ts';
import { slipTexts } from '../../src/lab/texts/feedback.ts';
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

  /** Letters differ from team to team and are of one length. */
  const masked = (text: string): string => text.replace(/\b[a-j]\b/g, 'x');
  const orders = allActivities().flatMap((activity) =>
    activity.steps.flatMap((step) =>
      step.kind === 'ordered' ? [[activity.id, step.id, activity, step] as const] : [],
    ),
  );
  it.each(orders)('holds what %s, %s says of each order that breaks one rule', (_id, _step, activity, step) => {
    const givens = firstTeamGivens(activity);
    const { lookAt } = saidInRow(step, { activity, givens, decimalMark: 'point', studentsDilute: false });
    const { actions, rules } = procedureByName(step.procedure);
    const key = 'c1-t1';
    const letterOf = new Map(
      orderedActions(step.procedure, { step: step.id, key }).map((one) => [one.item.id, one.letter]),
    );
    const right = actions.map(({ id }) => id);
    const said = rules
      .filter(({ when }) => when === undefined)
      .map(({ before, after }) => {
        const order = right.filter((one) => one !== after);
        order.splice(order.indexOf(before), 0, after);
        return teamChecks({
          givenNames: ['key', ...Object.keys(givens)],
          givenValues: [key, ...Object.values(givens)],
          settings: [['activity', activity.id]],
          steps: ['', step.id, ''],
          entries: ['', order.map((one) => letterOf.get(one)).join(' '), ''],
        })[1]?.lookAt;
      });
    for (const one of said) expect(lookAt.map(masked)).toContain(masked(String(one)));
  });

  it('holds slips that need something in the formula, or an impure solid, for those alone who have it', () => {
    const [activity] = allActivities().filter(({ givens }) => givens.some(({ name }) => name === 'purity'));
    if (activity === undefined) throw new Error('No activity starts from an impure solid.');
    const step = activity.steps.find((one) => one.kind === 'calculated' && 'purity' in one.takes);
    const first = activity.steps.find((one) => one.kind === 'calculated' && one.quantity === 'molar mass');
    if (step === undefined || first === undefined) throw new Error(`${activity.id} has no such steps.`);
    const saidFor = (one: typeof step, givens: Readonly<Record<string, string>>): readonly string[] =>
      saidInRow(one, { activity, givens, decimalMark: 'point', studentsDilute: false }).lookAt;
    const asked = (slip: keyof typeof slipTexts) => expect.stringContaining(slipTexts[slip].ask);
    const givens = { ...firstTeamGivens(activity), purity: '94.5' };
    const pure = { ...givens, purity: '' };
    expect(saidFor(step, givens)).toContainEqual(asked('purity-ignored'));
    expect(saidFor(step, pure)).not.toContainEqual(asked('purity-ignored'));
    const water = (formula: string) => saidFor(first, { ...givens, formula });
    expect(water('CuSO4·5H2O')).toContainEqual(asked('water-of-hydration-left-out'));
    expect(water('KBr')).not.toContainEqual(asked('water-of-hydration-left-out'));
    expect(water('Ca(OH)2')).toContainEqual(asked('group-subscript-ignored'));
    expect(water('CaCl2')).not.toContainEqual(asked('group-subscript-ignored'));
  });
});
