import { describe, expect, it } from 'vitest';
import { letteredOptions } from '../../src/lab/bench/letteredOptions.ts';
import { orderedActions } from '../../src/lab/bench/orderedActions.ts';
import { procedureByName } from '../../src/lab/bench/procedures.ts';
import { safetyQuestion } from '../../src/lab/bench/safetyQuestion.ts';
import { behindNumber } from '../../src/lab/judging/behindNumber.ts';
import { judgeOrder, judgeOrdered } from '../../src/lab/judging/judgeOrdered.ts';
import { judgeReading } from '../../src/lab/judging/judgeReading.ts';
import { readingTolerance } from '../../src/lab/judging/readingTolerance.ts';
import { saidInRow } from '../../src/lab/judging/saidInRow.ts';
import { isTruncated, toleranceOf } from '../../src/lab/judging/tolerance.ts';
import { withEvidenceSteps } from '../../src/lab/lesson/activities/evidenceSteps.ts';
import { withSafetySteps } from '../../src/lab/lesson/activities/safetySteps.ts';
import { activityById, allActivities } from '../../src/lab/lesson/activities.ts';
import type { Activity, Step } from '../../src/lab/lesson/activity.ts';
import { readLessonSettings } from '../../src/lab/lesson/lessonSettings.ts';
import { badGiven, slipTexts } from '../../src/lab/texts/feedback.ts';
import { orderTexts } from '../../src/lab/texts/ordering.ts';
import { firstTeamGivens } from './firstTeam.ts';
import { flaskReading } from './flaskReading.ts';
import { rowsOf } from './rowsOf.ts';

/** A stock of potassium bromide a little stronger than planned, and the dilution that goes on from it. */
const fromRealStock = (entries: Readonly<Record<string, string>>) => {
  const stock = { formula: 'KBr', 'stock molarity': '0.300', flask: '200', purity: '' };
  const dilution = { 'target molarity': '0.0450', 'target volume': '100', ion: 'Br-' };
  const made = { 'mass weighed': '7.19', 'stock made': '0.302' };
  return rowsOf(
    'stock and dilution',
    { ...made, ...entries },
    { settings: [['work the dilution from', 'real stock']], givens: { ...stock, ...dilution } },
  );
};

describe('a number that nothing explains', () => {
  it.each(allActivities().map(({ id }) => id))(
    'is not yet right in any calculated row of %s, and breaks none',
    (id) => {
      const steps = (activityById(id)?.steps ?? []).filter(({ kind }) => kind === 'calculated');
      for (const step of steps) {
        const row = rowsOf(id, { [step.id]: '83.71' })[step.id];
        expect([step.id, row?.status]).toEqual([step.id, 'not yet']);
      }
    },
  );
  it('is no planned value where the row asks for no strength', () => {
    const row = fromRealStock({ 'stock volume': '0.0450' })['stock volume'];
    expect(row?.status).toBe('not yet');
    expect(row?.slips).not.toContain('planned-for-made');
  });
});

it('matches the molarity of the stock where the dilution goes on from the stock really made', () => {
  const row = fromRealStock({ 'stock volume': '14.9', 'diluted molarity': '0.302' })['diluted molarity'];
  expect(row?.lookAt).toContain(slipTexts['molarity-unchanged'].fits);
});

it('says that a given cannot be read where the ion asked is none of the substance’s', () => {
  const row = rowsOf('stock and dilution', { 'ion molarity': '0.0300' }, { givens: { formula: 'KBr', ion: 'Na+' } });
  expect(row['ion molarity']?.status).toBe('unreadable');
});

describe('an order', () => {
  const name = 'solid to flask';
  const known = orderedActions(name).map(({ letter }) => letter);
  const amiss = (entry: string) => judgeOrder(name, entry);
  const none = { known, strange: [], missing: [], twice: [] };
  const [first = ''] = known;
  const ordered = activityById('stock and dilution')?.steps.find(({ kind }) => kind === 'ordered');
  if (ordered?.kind !== 'ordered') throw new Error('There is no order in the everyday activity.');
  it('that leaves a letter out is not read as an order', () => {
    expect(amiss(known.slice(1).join(' '))).toEqual({
      status: 'unreadable',
      lookAt: orderTexts.lettersAmiss({ ...none, missing: [first] }),
    });
  });
  it('with a letter twice is not read as an order', () => {
    expect(amiss([first, ...known].join(' '))).toEqual({
      status: 'unreadable',
      lookAt: orderTexts.lettersAmiss({ ...none, twice: [first] }),
    });
  });
  it('with a letter that is none of the actions is not read as an order', () => {
    expect(amiss([...known, 'z'].join(' '))).toEqual({
      status: 'unreadable',
      lookAt: orderTexts.lettersAmiss({ ...none, strange: ['z'] }),
    });
  });
  it('with a stray letter or two names each once, and with more of them is words', () => {
    expect(amiss([...known, 'y', 'z', 'z'].join(' ')).lookAt).toBe(
      orderTexts.lettersAmiss({ ...none, strange: ['y', 'z'] }),
    );
    expect(amiss([...known, 'x', 'y', 'z'].join(' ')).lookAt).toBe(orderTexts.wordsTyped(known));
  });
  it('says so where the substance that decides on it cannot be read', () => {
    const settings = readLessonSettings([]);
    const judged = (formula: string) => judgeOrdered(ordered, 'a b', { givens: { formula }, settings });
    expect(judged('the blue one')).toEqual({ status: 'unreadable', lookAt: badGiven('formula') });
    expect(judged('KBr').lookAt).not.toBe(badGiven('formula'));
  });
  it('is not judged in a sheet from before its letters, and is in the first that has them', () => {
    const ticked = { 'cautions read': 'yes, KBr' };
    const { sinceLayout } = procedureByName(ordered.procedure);
    const inLayout = (layout: number, entry: string) =>
      rowsOf(
        'stock and dilution',
        { ...ticked, [ordered.id]: entry },
        { settings: [['layout', String(layout)]], givens: { formula: 'KBr' } },
      )[ordered.id];
    expect(inLayout(sinceLayout - 1, 'abc')).toMatchObject({ status: 'unreadable', lookAt: orderTexts.buildAgain });
    expect(inLayout(sinceLayout - 1, '')?.status).toBe('blank');
    expect(inLayout(sinceLayout, 'abc')?.lookAt).not.toBe(orderTexts.buildAgain);
  });
});

describe('what stands behind a number', () => {
  it.each(['g Na2CO3·10 H2O', 'g CuSO4 · 5 H2O', 'g (CuSO4·5H2O)', 'g NaCl.'])('is one unit in “2.86 %s”', (typed) => {
    expect(behindNumber(typed, 'mass')).toMatchObject({ unit: { kind: 'mass' } });
  });
});

describe('a reading', () => {
  it('is not yet right where it is far off on either side', () => {
    expect([2, 2000].map((entry) => judgeReading(entry, flaskReading).status)).toEqual(['not yet', 'not yet']);
  });
  it('is compared by a standard and a class with spaces around them', () => {
    const spaced = { 'glassware class': ' b ', 'glassware standard': ' astm ' };
    const plain = { 'glassware class': 'B', 'glassware standard': 'ASTM' };
    expect(readingTolerance(flaskReading, spaced)).toEqual(readingTolerance(flaskReading, plain));
    expect(readingTolerance(flaskReading, spaced).ok).toBe(true);
  });
});

it('tells figures that were cut off only where the whole span of the target lies above them and below the next', () => {
  const typed = (value: number, lastPlace: number) =>
    ({ value, figuresMin: 3, figuresMax: 3, lastPlace, isText: true }) as const;
  const between = (low: number, high: number) =>
    toleranceOf({ low, middle: (low + high) / 2, high }, { asked: { decimals: 0 }, wideClose: false });
  expect(isTruncated(typed(714, 0), between(714.6, 714.9))).toBe(true);
  expect(isTruncated(typed(714, 0), between(713.6, 714.9))).toBe(false);
  expect(isTruncated(typed(714, 0), between(714.6, 715.4))).toBe(false);
  expect(isTruncated(typed(714, 0), between(714.6, 715))).toBe(false);
});

describe('what a row may say, by which its height is planned', () => {
  const whole = allActivities().map((one) => withSafetySteps(withEvidenceSteps(one)));
  const saidOf = (step: Step, activity: Activity) =>
    saidInRow(step, { activity, givens: firstTeamGivens(activity), decimalMark: 'point', studentsDilute: false })
      .lookAt;
  it('holds the reply to every answer of every question', () => {
    for (const activity of whole) {
      for (const step of activity.steps) {
        if (step.kind !== 'chosen') continue;
        const said = saidOf(step, activity);
        const replies = letteredOptions(step.question).map(
          ({ letter }) => rowsOf(activity.id, { 'cautions read': '', [step.id]: letter })[step.id]?.lookAt,
        );
        expect([step.id, said]).toEqual([step.id, expect.arrayContaining(replies)]);
      }
    }
  });
  it('holds the reason of every answer before the bench', () => {
    const asked = whole.flatMap(({ steps, ...activity }) =>
      steps.flatMap((step) => (step.kind === 'safety' ? [{ step, activity: { ...activity, steps } }] : [])),
    );
    expect(asked.length).toBeGreaterThan(0);
    for (const { step, activity } of asked) {
      const reasons = safetyQuestion(step).options.map(({ ask }) => ask);
      expect(saidOf(step, activity)).toEqual(expect.arrayContaining(reasons));
    }
  });
  it('names the row to be read first only where a mass is worked from two readings', () => {
    for (const activity of whole) {
      for (const step of activity.steps) {
        if (step.kind !== 'measured') continue;
        const asksFirst = saidOf(step, activity).some((text) => text.includes('“Loaded”'));
        expect([activity.id, step.id, asksFirst]).toEqual([activity.id, step.id, step.from !== undefined]);
      }
    }
  });
});
