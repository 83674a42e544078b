import { describe, expect, it } from 'vitest';
import { orderedActions } from '../../src/lab/bench/orderedActions.ts';
import { teamChecks } from '../../src/lab/judging/teamChecks.ts';
import { activityById, allActivities } from '../../src/lab/lesson/activities.ts';
import type { OrderedStep } from '../../src/lab/lesson/activity.ts';
import { recipeOf } from '../../src/lab/numbers/recipeOf.ts';
import { seededRandom } from '../../src/lab/numbers/seededRandom.ts';
import { layoutVersion } from '../../src/workbook/layout.ts';
import { firstTeamGivens } from './firstTeam.ts';

/** Which action has to come before which, and why. Written apart from the rules of the procedures, to hold them. */
type Pair = readonly [before: string, after: string, why: string];

const burns = 'stopped for safety';
const needed: Readonly<Record<string, readonly Pair[]>> = {
  'solid to flask': [
    ['protect', 'weigh', burns],
    ['weigh', 'dissolve', 'a dissolved solid has no mass to read'],
    ['weigh', 'transfer', 'what is in the flask has no mass to read'],
    ['dissolve', 'cool', 'it is dissolving that warms or chills'],
    ['dissolve', 'near', 'a full flask leaves no room to dissolve in'],
    ['cool', 'mark', 'the mark holds at room temperature'],
    ['transfer', 'rinse', 'there is nothing to rinse before'],
    ['transfer', 'near', 'a full flask leaves no room for the solution'],
    ['rinse', 'mark', 'rinsings would pass the mark'],
    ['near', 'mark', 'water cannot be taken out again'],
    ['mark', 'stopper', 'nothing goes into a closed flask'],
    ['stopper', 'mix', 'an open flask spills'],
  ],
  'pipette to flask': [
    ['protect', 'rinse pipette', burns],
    ['rinse flask', 'deliver', 'rinsing would take the stock out'],
    ['rinse flask', 'water', 'rinsing would take the water out'],
    ['rinse pipette', 'deliver', 'drops of water thin the portion'],
    ['deliver', 'swirl', 'there is nothing to mix before'],
    ['water', 'mark', 'at the mark there is no room for more'],
    ['swirl', 'mark', 'the mark holds for what is mixed and at room temperature'],
    ['mark', 'stopper', 'nothing goes into a closed flask'],
    ['stopper', 'mix', 'an open flask spills'],
  ],
  'serial dilution': [
    ['protect', 'first portion', burns],
    ['rinse flasks', 'first portion', 'rinsing would take the stock out'],
    ['rinse flasks', 'water', 'rinsing would take the water out'],
    ['water', 'first mark', 'at the mark there is no room for more'],
    ['first portion', 'first mark', 'stock would pass the mark'],
    ['first mark', 'first mix', 'water that comes last is not mixed in'],
    ['first mix', 'rinse pipette', 'one rinses with what one measures'],
    ['rinse pipette', 'second', 'drops of stock would make the second too strong'],
  ],
  'concentrated to flask': [
    ['protect', 'reagent', burns],
    ['water', 'reagent', burns],
    ['reagent', 'cool', 'it is mixing that warms'],
    ['cool', 'transfer', 'heat changes a flask of exact volume'],
    ['transfer', 'mark', 'the mark is that of the whole'],
    ['mark', 'mix', 'water that comes last is not mixed in'],
    ['transfer', 'label', 'an empty flask has nothing to name'],
  ],
  'weighed residue': [
    ['protect', 'rinse', burns],
    ['dish', 'portion', 'the mass of the dish is taken off'],
    ['rinse', 'portion', 'drops of water thin the portion'],
    ['portion', 'heat', 'an empty dish has nothing to dry'],
    ['heat', 'cool', 'a cold dish need not cool'],
    ['cool', 'weigh', 'warm air lifts the dish'],
    ['weigh', 'again', 'two weighings are compared'],
  ],
  'weighed portion': [
    ['protect', 'rinse', burns],
    ['empty', 'deliver', 'the mass of the vessel is taken off'],
    ['rinse', 'deliver', 'drops of water thin the portion'],
    ['deliver', 'close', 'nothing goes into a closed vessel'],
    ['close', 'full', 'water would leave, and the lid was weighed before'],
    ['full', 'waste', 'what is poured away cannot be weighed'],
  ],
};

/** A stock that heats its water as they meet, and a solid that does. */
const waterFirst: Readonly<Record<string, readonly Pair[]>> = {
  'pipette to flask': [['water', 'deliver', burns]],
  'serial dilution': [['water', 'first portion', burns]],
};
const dissolvesHot: Readonly<Record<string, readonly Pair[]>> = {
  'solid to flask': [
    ['dissolve', 'transfer', burns],
    ['cool', 'transfer', 'heat changes a flask of exact volume'],
  ],
};

const none = {};
const cases = [
  ...['KBr 0.300', 'KMnO4 0.100', 'HCl 1.00', 'CH3COOH 1.50', 'NaOH 0.100', 'AgNO3 0.100'].flatMap((stock) =>
    [
      ['dilution', 'procedure'],
      ['stock and dilution', 'dilution procedure'],
      ['serial dilution', 'procedure'],
    ].map(([activity = '', step = '']) => ({ activity, step, stock, more: none })),
  ),
  ...['H2SO4 6.00', 'HCl 6.00', 'HCl 2.00', 'HNO3 1.00', 'CH3COOH 2.00', 'NaOH 2.00', 'KOH 1.00', 'NH3 5.00'].flatMap(
    (stock) =>
      [
        ['dilution', 'procedure'],
        ['stock and dilution', 'dilution procedure'],
        ['serial dilution', 'procedure'],
      ].map(([activity = '', step = '']) => ({ activity, step, stock, more: waterFirst })),
  ),
  ...(
    [
      ['KBr 0.300', none],
      ['CuSO4·5H2O 0.200', none],
      ['Na2CO3 0.250', none],
      ['NaOH 0.500', dissolvesHot],
      ['KOH 2.00', dissolvesHot],
    ] as const
  ).flatMap(([stock, more]) =>
    [
      ['stock and dilution', 'stock procedure'],
      ['solution from a solid', 'procedure'],
      ['solution from a hydrate', 'procedure'],
      ['solution from an impure solid', 'procedure'],
      ['bench reading', 'procedure'],
    ].map(([activity = '', step = '']) => ({ activity, step, stock, more })),
  ),
  ...['HCl', 'H2SO4', 'NH3', 'NaOH'].map((stock) => ({
    activity: 'concentrated reagent',
    step: 'procedure',
    stock,
    more: none,
  })),
  { activity: 'weighed residue', step: 'procedure', stock: 'KCl 0.500', more: none },
  { activity: 'measured density', step: 'procedure', stock: 'C12H22O11 0.500', more: none },
];

function orderedStep(activityId: string, stepId: string): OrderedStep {
  const step = activityById(activityId)?.steps.find(({ id }) => id === stepId);
  if (step?.kind !== 'ordered') throw new Error(`${activityId} has no order ${stepId}`);
  return step;
}

/** How the check of a team with this substance and strength answers an order of actions. */
function judge({ activity: id, step, stock }: (typeof cases)[number]) {
  const activity = activityById(id);
  if (activity === undefined) throw new Error(id);
  const [formula = '', strength] = stock.split(' ');
  const recipe = recipeOf(activity);
  if (recipe === undefined) throw new Error(`${id} has no recipe`);
  const molarity = recipe.takes[recipe.entry.startsFrom] ?? '';
  const givens: Readonly<Record<string, string>> = {
    ...firstTeamGivens(activity),
    formula,
    ...(strength === undefined ? {} : { [molarity]: strength }),
  };
  const letters = new Map(
    orderedActions(orderedStep(id, step).procedure).map(({ letter, item }) => [item.id, letter] as const),
  );
  return (order: readonly string[]) => {
    const [row] = teamChecks({
      givenNames: Object.keys(givens),
      givenValues: Object.values(givens),
      settings: [
        ['activity', id],
        ['layout', String(layoutVersion)],
      ],
      steps: [step],
      entries: [order.map((action) => letters.get(action)).join(' ')],
    });
    return row ?? { check: 'missing', lookAt: '' };
  };
}

describe('every order of work', () => {
  it('has a table of needed pairs for each activity’s procedures', () => {
    const asked = allActivities().flatMap(({ id, steps }) =>
      steps.flatMap((step) => (step.kind === 'ordered' ? [`${id}: ${step.id}`] : [])),
    );
    expect(new Set(cases.map(({ activity, step }) => `${activity}: ${step}`))).toEqual(new Set(asked));
  });

  it.each(cases)(
    'of $activity, $step, with $stock is accepted where it is safe and right, and refused where not',
    (one) => {
      const { procedure } = orderedStep(one.activity, one.step);
      const pairs = [...(needed[procedure] ?? []), ...((one.more as typeof needed)[procedure] ?? [])];
      const actions = orderedActions(procedure).map(({ item }) => item.id);
      for (const [before, after] of pairs) expect(actions).toEqual(expect.arrayContaining([before, after]));
      const answer = judge(one);
      const random = seededRandom(`${one.activity} ${one.step} ${one.stock}`);
      const pick = <T>(items: readonly T[]): T => items[Math.floor(random() * items.length)] as T;
      const brokenIn = (order: readonly string[]) =>
        pairs.filter(([before, after]) => order.indexOf(after) < order.indexOf(before));
      const seen = { right: 0, wrong: 0, unsafe: 0 };

      for (let drawn = 0; drawn < 40; drawn += 1) {
        const order: string[] = [];
        while (order.length < actions.length) {
          const left = actions.filter((id) => !order.includes(id));
          order.push(
            pick(left.filter((id) => pairs.every(([before, after]) => after !== id || !left.includes(before)))),
          );
        }
        // One action, or two, in another place: many of these are still right.
        const moved = order.slice();
        for (let times = drawn % 2; times >= 0; times -= 1) {
          const [taken = ''] = moved.splice(Math.floor(random() * moved.length), 1);
          moved.splice(Math.floor(random() * (moved.length + 1)), 0, taken);
        }
        for (const tried of [order, moved]) {
          const broken = brokenIn(tried);
          const { check, lookAt } = answer(tried);
          const about = `${tried.join(', ')} → ${check}: ${lookAt}`;
          expect(check, about).toBe(broken.length === 0 ? 'on target' : 'not yet');
          const isUnsafe = broken.some(([, , why]) => why === burns);
          expect(lookAt.includes('Stop: '), about).toBe(isUnsafe);
          if (broken.length === 0) seen.right += 1;
          else seen.wrong += 1;
          if (isUnsafe) seen.unsafe += 1;
        }
      }
      expect(seen.right).toBeGreaterThanOrEqual(40);
      expect(seen.wrong).toBeGreaterThan(12);
      expect(seen.unsafe).toBeGreaterThan(0);
    },
  );

  it('says why, where a strong stock went in before the water', () => {
    const answer = judge({ activity: 'dilution', step: 'procedure', stock: 'H2SO4 6.00', more: waterFirst });
    const order = 'protect|rinse flask|rinse pipette|deliver|water|swirl|mark|stopper|mix'.split('|');
    const { check, lookAt } = answer(order);
    expect(check).toBe('not yet');
    expect(lookAt).toMatch(
      /^Look at [a-i] and [a-i]\. Stop: water goes in first, then this stock, slowly\..*hot.*spit/,
    );
    const turned = 'protect|rinse flask|water|rinse pipette|deliver|swirl|mark|stopper|mix'.split('|');
    expect(answer(turned)).toMatchObject({
      check: 'on target',
      lookAt: 'Yes, this order works. Let this stock run in slowly and swirl: it heats the water.',
    });
  });

  it('says why, where a hot solid went straight into the flask', () => {
    const answer = judge({
      activity: 'solution from a solid',
      step: 'procedure',
      stock: 'NaOH 2.00',
      more: dissolvesHot,
    });
    const order = 'protect|weigh|transfer|rinse|dissolve|cool|near|mark|stopper|mix'.split('|');
    const { check, lookAt } = answer(order);
    expect(check).toBe('not yet');
    expect(lookAt).toContain('Stop: this substance heats its water and can spit.');
    expect(lookAt).toContain('heat-proof beaker');
    const plain = judge({ activity: 'solution from a solid', step: 'procedure', stock: 'KBr 0.300', more: none });
    expect(plain(order).check).toBe('on target');
  });

  it('is not judged where nobody can read the substance or its strength', () => {
    const answer = (stock: string) => judge({ activity: 'dilution', step: 'procedure', stock, more: none })(['water']);
    expect(answer('Xx 1.0')).toMatchObject({ check: 'unreadable', lookAt: expect.stringMatching(/^⚠ formula/) });
    expect(answer('HCl strong')).toMatchObject({
      check: 'unreadable',
      lookAt: expect.stringMatching(/^⚠ stock molarity/),
    });
  });
});
