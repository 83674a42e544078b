import { describe, expect, it } from 'vitest';
import { allProcedures } from '../../src/lab/bench/procedures.ts';
import { allQuestions } from '../../src/lab/bench/questions.ts';
import { hintForStep } from '../../src/lab/hints/hintForStep.ts';
import { judgeTeam } from '../../src/lab/judging/judgeTeam.ts';
import { allActivities } from '../../src/lab/lesson/activities.ts';
import type { Shown } from '../../src/lab/lesson/activity.ts';
import { numbersForTeams } from '../../src/lab/numbers/numbersForTeams.ts';
import { quantityHints, readingHints, toldHints } from '../../src/lab/texts/hints.ts';
import { orderTexts } from '../../src/lab/texts/ordering.ts';
import { readingAdvice, readingTexts } from '../../src/lab/texts/readings.ts';
import { layoutVersion } from '../../src/workbook/layout.ts';
import { startOf } from './otherActivities.ts';
import { fleschKincaidGrade, wordsOf } from './readingGrade.ts';
import { rightEntries } from './rightEntries.ts';

const words = (pieces: readonly Shown[]): string =>
  pieces.map((piece) => (typeof piece === 'string' ? piece : 'salt')).join('');

const procedureTexts = allProcedures().flatMap(({ rules, hints, actions, leftovers, reminders = {} }) => [
  ...rules.map(({ ask }) => ask),
  ...hints,
  ...actions.map(({ text }) => words(text)),
  leftovers,
  ...Object.values(reminders),
]);
const questionTexts = allQuestions().flatMap(({ stem, right, others, hints }) => [
  words(stem),
  ...[right, ...others].flatMap(({ text, reply }) => [
    words(text),
    ...(typeof reply === 'string' ? [reply] : Object.values(reply)),
  ]),
  hints[0],
  hints[1],
]);
const readings = [
  ...Object.values(readingTexts),
  ...Object.values(readingAdvice).flatMap((sides) =>
    (['above', 'below'] as const).flatMap((side) =>
      (['near', 'further'] as const).map((how) => `${readingTexts[side]} ${sides[side].ask} ${sides[side][how]}`),
    ),
  ),
];
const hints = [
  ...Object.values(quantityHints).flatMap(({ idea, relation }) => [idea, relation]),
  ...Object.values(readingHints).flat(),
  ...toldHints,
];

describe('texts of steps, hints, orders and questions', () => {
  it.each([
    ['procedures', procedureTexts],
    ['questions', questionTexts],
    ['hints', hints],
    ['readings', readings],
  ])('read at grade 8 or below, taken together: %s', (_, texts) => {
    const pooled = texts.map((text) => (/[.?!…”]$/.test(text) ? text : `${text}.`)).join(' ');
    expect(wordsOf(pooled).length).toBeGreaterThan(60);
    expect(fleschKincaidGrade(pooled)).toBeLessThanOrEqual(8);
  });

  it('speak of the work and never blame', () => {
    const all = [...procedureTexts, ...questionTexts, ...hints, ...readings, orderTexts.works];
    for (const text of all) {
      expect(text).not.toMatch(/\b(?:wrong order|you forgot|careless|obviously|simply|easy|mistake|invalid|please)\b/i);
      expect(text.length, text).toBeLessThanOrEqual(200);
    }
  });

  it('hold no digits, but for the hundred and the thousand of a relation', () => {
    for (const text of [...procedureTexts, ...questionTexts, ...hints, ...readings]) {
      expect(
        (text.match(/\d+/g) ?? []).filter((number) => number !== '100'),
        text,
      ).toEqual([]);
    }
  });
});

describe('every activity, gone through with right entries', () => {
  it.each(allActivities().map((activity) => [activity.id, activity] as const))(
    'is on target all through: %s',
    (id, activity) => {
      const setup = startOf(id);
      const numbers = numbersForTeams(setup);
      if (!numbers.ok) throw new Error(numbers.error.advice);
      for (const { givens } of numbers.value.teams) {
        const entries = rightEntries(activity, givens);
        const rows = judgeTeam({
          givenNames: Object.keys(givens),
          givenValues: Object.values(givens),
          settings: [...Object.entries(setup.settings), ['layout', String(layoutVersion)]],
          steps: activity.steps.map((step) => step.id),
          entries: activity.steps.map((step) => entries[step.id] ?? ''),
        });
        rows.forEach(({ status, lookAt }, at) => {
          const step = activity.steps[at];
          expect(status, `${step?.id} ${entries[step?.id ?? '']} ${JSON.stringify(givens)} ${lookAt}`).toBe(
            step?.kind === 'told' ? '' : 'on target',
          );
        });
        for (const step of activity.steps) {
          for (const level of [1, 2, 3]) {
            const hint = hintForStep({ activity, stepId: step.id, level, givens, entries, decimalMark: 'point' });
            expect(hint).not.toBe('');
            expect(hint).not.toMatch(/undefined|NaN|\{|\}/);
          }
        }
      }
    },
  );
});
