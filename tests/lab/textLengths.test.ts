import { describe, expect, it } from 'vitest';
import { hintForStep } from '../../src/lab/hints/hintForStep.ts';
import { feedbackText } from '../../src/lab/judging/feedbackText.ts';
import { allActivities } from '../../src/lab/lesson/activities.ts';
import { numbersForTeams } from '../../src/lab/numbers/numbersForTeams.ts';
import { quantities } from '../../src/lab/quantities.ts';
import { choiceTexts } from '../../src/lab/texts/choosing.ts';
import {
  badGiven,
  badSetting,
  badStep,
  decimalWords,
  figureWords,
  remarks,
  slipTexts,
  unreadableTexts,
} from '../../src/lab/texts/feedback.ts';
import { levelAsked, quantityHints, readingHints, toldHints } from '../../src/lab/texts/hints.ts';
import { orderTexts } from '../../src/lab/texts/ordering.ts';
import { readingAdvice, readingTexts } from '../../src/lab/texts/readings.ts';
import { tickHints } from '../../src/lab/texts/ticks.ts';
import { startOf } from './otherActivities.ts';
import { rightEntries } from './rightEntries.ts';

/** Characters that a line of a column takes, by its width and 13 px letters; and the lines that a row of 200 px shows. */
const feedbackLine = 34;
const hintLine = 30;
const mostLines = 9;
/** What a glance takes in. */
const short = 120;

function linesAt(width: number, text: string): number {
  let lines = 0;
  for (const paragraph of text.split('\n')) {
    let used = 0;
    lines += 1;
    for (const { length } of paragraph.split(' ')) {
      if (used > 0 && used + 1 + length > width) {
        lines += 1;
        used = length;
      } else used += (used === 0 ? 0 : 1) + length;
    }
  }
  return lines;
}
const longestOf = (texts: readonly string[]): string =>
  texts.reduce((longest, text) => (text.length > longest.length ? text : longest), '');

const titles = allActivities().flatMap(({ steps }) => steps.map(({ title }) => title));
const givens = allActivities().flatMap((activity) => activity.givens.map(({ name }) => name));
const fills: Readonly<Record<string, string>> = {
  row: longestOf(titles),
  figures: longestOf([...figureWords, ...decimalWords, remarks.figuresAsked]),
  unit: longestOf(Object.values(quantities).map(({ unit }) => unit)),
};
const full = (text: string): string => text.replace(/\{(row|figures|unit)\}/g, (_, name: string) => fills[name] ?? '');

interface Wordings {
  readonly fits: string;
  readonly ask: string;
  readonly in?: Readonly<Record<string, { readonly fits: string; readonly ask: string }>>;
}
const slips = Object.values<Wordings>(slipTexts).flatMap((text) => [text, ...Object.values(text.in ?? {})]);
const letters = ['a', 'b', 'c', 'd', 'e', 'f', 'g', 'h'];

const remarksAlone = Object.entries(remarks)
  .filter(([name]) => name !== 'oneFits' && name !== 'severalFit')
  .map(([, text]) => full(text));
const feedback = [
  ...remarksAlone,
  ...slips.map(({ fits, ask }) => remarks.oneFits.replace('{fits}', fits).replace('{ask}', ask)),
  ...Object.values(unreadableTexts),
  ...[longestOf(givens), 'formula', 'ion'].map(badGiven),
  badSetting('allowance for technique'),
  badStep(longestOf(Object.keys(quantities))),
  ...Object.values(readingTexts),
  ...Object.values(readingAdvice).flatMap((sides) =>
    (['above', 'below'] as const).flatMap((side) =>
      (['near', 'further'] as const).map((how) => `${readingTexts[side]} ${sides[side].ask} ${sides[side][how]}`),
    ),
  ),
  orderTexts.buildAgain,
  orderTexts.works,
  orderTexts.wordsTyped(letters),
  orderTexts.lettersAmiss({ known: letters, strange: ['x', 'y', 'z'], missing: letters, twice: [] }),
  choiceTexts.oneLetter(letters),
];
/** Every two slips of one quantity that an entry may fit at once. */
const pairs = Object.values(quantities).flatMap((quantity) =>
  quantity.slips.flatMap(({ id }, at) =>
    quantity.slips
      .slice(at + 1)
      .map(({ id: other }) =>
        feedbackText(
          { status: 'not yet', slips: [id, other] } as unknown as Parameters<typeof feedbackText>[0],
          quantity,
        ),
      ),
  ),
);
const hints = [
  ...Object.values(quantityHints).flatMap(({ idea, relation, impure = '' }) => [idea, `${relation} ${impure}`.trim()]),
  ...Object.values(readingHints).flat().map(full),
  ...toldHints,
  ...tickHints,
  levelAsked,
];

describe('texts of a row at their longest', () => {
  it.each(feedback.filter((text) => text !== ''))('fit beside it as feedback: %s', (text) => {
    expect(linesAt(feedbackLine, text)).toBeLessThanOrEqual(mostLines);
    expect(text.length).toBeLessThanOrEqual(200);
  });
  it('are nearly all short enough for a glance', () => {
    const long = feedback.filter((text) => text.length > short);
    expect(long.length / feedback.length, long.join('\n')).toBeLessThanOrEqual(0.3);
  });
  it('are no longer where a value matches two results at once', () => {
    expect(pairs.length).toBeGreaterThan(200);
    for (const text of pairs) expect(text.length, text).toBeLessThanOrEqual(138);
    expect(pairs.filter((text) => text.split('?').length > 2).length / pairs.length).toBeGreaterThan(0.8);
  });
  it.each(hints)('fit in the column of hints: %s', (text) => {
    expect(text.length).toBeLessThanOrEqual(260);
    expect(linesAt(hintLine, text)).toBeLessThanOrEqual(mostLines);
  });
  it('fit as hints with the numbers of a team, in every step of every activity', () => {
    for (const { id } of allActivities()) {
      const activity = allActivities().find((one) => one.id === id);
      const numbers = numbersForTeams(startOf(id));
      const givensOfTeam = numbers.ok ? numbers.value.teams[0]?.givens : undefined;
      if (activity === undefined || givensOfTeam === undefined) throw new Error(`No team of “${id}” has numbers.`);
      const entries = rightEntries(activity, givensOfTeam);
      for (const step of activity.steps) {
        for (const level of [1, 2, 3]) {
          const text = hintForStep({
            activity,
            stepId: step.id,
            level,
            givens: givensOfTeam,
            entries,
            decimalMark: 'point',
          });
          expect(text.length, `${id}, ${step.id}: ${text}`).toBeLessThanOrEqual(260);
        }
      }
    }
  });
});
