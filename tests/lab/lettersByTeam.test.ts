import { describe, expect, it } from 'vitest';
import { letteredOptions, letterOfOption } from '../../src/lab/bench/letteredOptions.ts';
import { letteredShown } from '../../src/lab/bench/letteredShown.ts';
import { lettersInOrder, orderedActions } from '../../src/lab/bench/orderedActions.ts';
import { allProcedures, procedureByName } from '../../src/lab/bench/procedures.ts';
import { allQuestions, questionByName } from '../../src/lab/bench/questions.ts';
import { teamChecks } from '../../src/lab/judging/teamChecks.ts';
import { orderInWords } from '../../src/lab/key/orderInWords.ts';
import { teamKey } from '../../src/lab/key/teamKey.ts';
import { activityById, allActivities } from '../../src/lab/lesson/activities.ts';
import type { ChosenStep, OrderedStep, Shown } from '../../src/lab/lesson/activity.ts';
import { defaultSettings } from '../../src/lab/lesson/defaultSettings.ts';
import { layoutVersion } from '../../src/workbook/layout.ts';
import { firstTeamGivens } from './firstTeam.ts';

/** Keys as the Plan has them: class and team. */
const keys = Array.from({ length: 8 }, (_, group) =>
  Array.from({ length: 6 }, (_, team) => `c${group + 1}-t${team + 1}`),
).flat();

type Lettered = OrderedStep | ChosenStep;
const letteredSteps = allActivities().flatMap((activity) =>
  activity.steps.flatMap((step) =>
    step.kind === 'ordered' || step.kind === 'chosen' ? [{ activity, step: step as Lettered }] : [],
  ),
);

const plain = (pieces: readonly Shown[], givens: Readonly<Record<string, string>>): string =>
  pieces.map((piece) => (typeof piece === 'string' ? piece : (givens[piece.given] ?? ''))).join('');

/** What the check says of one entry; the key is handed over as a given only where there is one. */
function answer({ activity, step }: (typeof letteredSteps)[number], { entry, key }: { entry: string; key?: string }) {
  const givens = { ...firstTeamGivens(activity), ...(key === undefined ? {} : { key }) };
  const [row] = teamChecks({
    givenNames: Object.keys(givens),
    givenValues: Object.values(givens),
    settings: [
      ['activity', activity.id],
      ['layout', String(layoutVersion)],
    ],
    steps: [step.id],
    entries: [entry],
  });
  return row;
}

/** The letters in the row's own text, found by the words of an action or option. */
function lettersOfText(
  step: Lettered,
  key: string,
  givens: Readonly<Record<string, string>>,
): ReadonlyMap<string, string> {
  const text = plain(letteredShown(step, key), givens);
  const items: readonly { readonly id: string; readonly text: readonly Shown[] }[] =
    step.kind === 'ordered'
      ? procedureByName(step.procedure).actions
      : [questionByName(step.question).right, ...questionByName(step.question).others];
  return new Map(
    items.map(({ id, text: words }) => {
      const found = new RegExp(
        `(?:^|[\\n ])([a-j])\\)[ \u00a0]${plain(words, givens).replace(/[.*+?^${}()|[\]\\]/g, '\\$&')}(?=$|\\n| ·)`,
      ).exec(text);
      if (found === null) throw new Error(`${id} is not in: ${text}`);
      return [id, found[1] ?? ''];
    }),
  );
}

describe('letters by the key of a team', () => {
  it.each(letteredSteps.map((one) => ({ ...one, name: `${one.activity.id}, ${one.step.id}` })))(
    'are the same in the text and in the check: $name',
    (one) => {
      const { activity, step } = one;
      const givens = firstTeamGivens(activity);
      for (const key of [undefined, 'c1-t1', 'c2-t5', 'another key']) {
        const letters = lettersOfText(step, key ?? '', givens);
        const right =
          step.kind === 'ordered'
            ? procedureByName(step.procedure)
                .actions.map(({ id }) => letters.get(id))
                .join(' ')
            : (letters.get(questionByName(step.question).right.id) ?? '');
        expect(answer(one, { entry: right, ...(key === undefined ? {} : { key }) })?.check, `${key}: ${right}`).toBe(
          'on target',
        );
      }
      expect(plain(letteredShown(step), givens)).toBe(plain(step.shown, givens));
    },
  );

  it('go by the name alone where no key is given', () => {
    for (const { name } of allProcedures())
      expect(orderedActions(name, { step: 'any', key: '' })).toEqual(orderedActions(name));
    for (const { name } of allQuestions())
      expect(letteredOptions(name, { step: 'any' })).toEqual(letteredOptions(name));
  });

  it('are always the same for a key, and change with the key alone', () => {
    for (const { name } of allProcedures()) {
      const whose = { step: 'procedure', key: 'c3-t2' };
      expect(orderedActions(name, whose)).toEqual(orderedActions(name, { ...whose }));
    }
  });

  it('differ from team to team, from class to class and from step to step', () => {
    for (const { name } of allProcedures()) {
      const orders = keys.map((key) => lettersInOrder(name, { step: 'procedure', key }).join(''));
      // 48 blocks: no two of them take the same order from each other.
      expect([name, new Set(orders).size]).toEqual([name, keys.length]);
    }
    const steps = ['stock procedure', 'dilution procedure'].map((step) =>
      lettersInOrder('solid to flask', { step, key: 'c1-t1' }).join(''),
    );
    expect(steps[0]).not.toBe(steps[1]);
  });

  it('leave no letter of a question more likely to be right than it should be', () => {
    for (const { name, right, others } of allQuestions()) {
      const counts = new Map<string, number>();
      for (const key of keys) {
        const letter = letterOfOption(name, right, { step: 'particles', key });
        counts.set(letter, (counts.get(letter) ?? 0) + 1);
      }
      expect([name, counts.size]).toEqual([name, others.length + 1]);
      // Evenly dealt, each would be right for a fifth or a quarter of 48 teams.
      expect([name, Math.max(...counts.values()) <= keys.length / 2]).toEqual([name, true]);
    }
  });

  it('never run from a on in an order that is right', () => {
    for (const one of letteredSteps.filter(({ step }) => step.kind === 'ordered')) {
      if (one.step.kind !== 'ordered') continue;
      for (const key of keys.slice(0, 12)) {
        const letters = orderedActions(one.step.procedure, { step: one.step.id, key }).map(({ letter }) => letter);
        expect(answer(one, { entry: letters.join(' '), key })?.check).toBe('not yet');
      }
    }
  });

  it('do not let one team’s answer be another’s', () => {
    const dilution = letteredSteps.find(({ activity, step }) => activity.id === 'dilution' && step.kind === 'ordered');
    if (dilution === undefined) throw new Error('no dilution');
    const mine = lettersInOrder('pipette to flask', { step: 'procedure', key: 'c1-t1' }).join(' ');
    expect(answer(dilution, { entry: mine, key: 'c1-t1' })?.check).toBe('on target');
    const passed = keys.slice(1).filter((key) => answer(dilution, { entry: mine, key })?.check === 'on target');
    expect(passed).toEqual([]);
  });
});

describe('the key of a team with letters of its own', () => {
  const activity = activityById('stock and dilution');
  if (activity === undefined) throw new Error('no everyday activity');
  const givens = firstTeamGivens(activity);
  const lines = (key: string, lettersByTeam?: boolean) =>
    teamKey({
      activity,
      team: { key, className: 'Fern class', team: 'Otter', givens },
      settings: { ...defaultSettings, activity: activity.id },
      ...(lettersByTeam === undefined ? {} : { lettersByTeam }),
    });

  it('has the letters that its block shows and its check takes', () => {
    for (const one of letteredSteps.filter(({ activity: { id } }) => id === activity.id)) {
      for (const key of ['c1-t1', 'c4-t3']) {
        const line = lines(key, true).find(({ step }) => step === one.step.id);
        expect(answer(one, { entry: line?.answer ?? '', key })?.check).toBe('on target');
        const shared = lines(key).find(({ step }) => step === one.step.id);
        expect(answer(one, { entry: shared?.answer ?? '' })?.check).toBe('on target');
      }
    }
  });

  it('says an order once in words', () => {
    expect(orderInWords('pipette to flask', givens)).toMatch(
      /^goggles, pipette filler on, then rinse flask with water, then some water into the flask, then .*turn over many times$/,
    );
    expect(orderInWords('concentrated to flask', { formula: 'NH3' })).toContain('run NH3 in slowly, stirring');
  });
});
