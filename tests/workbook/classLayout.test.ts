import { describe, expect, it } from 'vitest';
import { feedbackText } from '../../src/lab/judging/feedbackText.ts';
import { allActivities } from '../../src/lab/lesson/activities.ts';
import type { CalculatedStep } from '../../src/lab/lesson/activity.ts';
import { defaultSettings } from '../../src/lab/lesson/defaultSettings.ts';
import { proposedSolutes } from '../../src/lab/lesson/solutes.ts';
import { startingGivens } from '../../src/lab/lesson/startingGivens.ts';
import { quantities } from '../../src/lab/quantities.ts';
import type { SlipId } from '../../src/lab/texts/feedback.ts';
import { classWidths } from '../../src/workbook/classWidths.ts';
import { classColumns as at, classMarker, classRows, mostRowHeight } from '../../src/workbook/layout.ts';
import type { Lesson } from '../../src/workbook/lesson.ts';
import { looks } from '../../src/workbook/looks.ts';
import { planClassSheet } from '../../src/workbook/planClassSheet.ts';
import { planPlaces } from '../../src/workbook/planPlanSheet.ts';
import { newSheetNames } from '../../src/workbook/sheetNames.ts';
import { heightOf } from '../../src/workbook/textHeight.ts';
import { words } from '../../src/workbook/words.ts';
import type { SheetPlan } from '../../src/workbook/workbook.ts';
import { lesson, setup, teams } from './lesson.ts';
import { sizesOf } from './sizesOf.ts';

/** Heights of the rows of a plan, from the first on. */
const heightsOf = ({ rowHeights = [], rowCount }: SheetPlan): readonly number[] => sizesOf(rowHeights, rowCount);

const plannedFor = (one: Lesson): SheetPlan =>
  planClassSheet({
    lesson: one,
    className: 'Fern class',
    teams: one.teams.filter(({ className }) => className === 'Fern class'),
    names: newSheetNames(['Fern class']),
    places: planPlaces(one),
  });
const lessonOf = (activityId: string, formula?: string): Lesson => {
  const activity = allActivities().find(({ id }) => id === activityId);
  if (activity === undefined) throw new Error(`Expected the activity ${activityId}.`);
  const givens = { ...startingGivens(activity), ...(formula === undefined ? {} : { formula }) };
  return {
    setup: { ...setup, activity: activityId, settings: { ...defaultSettings, activity: activityId } },
    activity,
    teams: teams.slice(0, 2).map((team) => ({ ...team, givens })),
    givenNames: activity.givens.map(({ name }) => name),
    invented: false,
  };
};
/** Rows of the first block: heading, steps, closing. */
function blockHeights(plan: SheetPlan, steps: number): readonly number[] {
  const first = plan.identity.rows.findIndex(([key, step]) => key === 'c1-t1' && step === '');
  return heightsOf(plan).slice(first, first + steps + 2);
}
const sum = (numbers: readonly number[]): number => numbers.reduce((total, one) => total + one, 0);

describe('the columns of a class sheet', () => {
  it('stand beside each other on a laptop of 1366 px, row numbers and scroll bar included', () => {
    expect(sum(classWidths.slice(0, at.who)) + 46 + 15).toBeLessThanOrEqual(1366 - 24);
    const { columnWidths } = plannedFor(lesson);
    expect(sizesOf(columnWidths, at.lastEntry)).toEqual([...classWidths]);
  });
  it('have headings that stay in view, above every team', () => {
    const plan = plannedFor(lesson);
    expect([plan.frozenRows, plan.frozenColumns]).toEqual([1, 1]);
    const [headings] = plan.blocks.flatMap(({ row, column, cells }) => (row === 1 && column === 1 ? [cells[0]] : []));
    expect(headings?.map((cell) => (cell.kind === 'text' ? cell.text : ''))).toEqual([
      'Step',
      'Task',
      'Your entry',
      'Unit',
      'Check',
      'Feedback',
      'Hint',
      'Help 0–3',
      'Who',
      'Tries',
      'Last entry',
    ]);
    expect(plan.identity.rows[0]).toEqual([classMarker, '4']);
  });
});

describe('the heights of its rows', () => {
  const activities = allActivities().map(({ id }) => id);
  it.each(activities)('are set for every row and bounded in %s', (id) => {
    const plan = plannedFor(lessonOf(id));
    const heights = heightsOf(plan);
    expect(heights.every((height) => height > 0 && height <= mostRowHeight.any)).toBe(true);
  });
  it('show whole what stands over the links to teams', () => {
    const { size, bold } = looks.heading;
    const needed = heightOf(words.class.find, { width: classWidths[0] ?? 0, size, bold });
    expect(heightsOf(plannedFor(lesson))[classRows.find - 1]).toBeGreaterThanOrEqual(needed);
  });
  it('make a block of the everyday activity at most 1,600 px', () => {
    const everyday = lessonOf('stock and dilution', 'KBr');
    const heights = blockHeights(plannedFor(everyday), everyday.activity.steps.length);
    console.log(`everyday block: ${sum(heights)} px, tallest row ${Math.max(...heights)} px: ${heights.join(' ')}`);
    expect(sum(heights)).toBeLessThanOrEqual(1600);
    // What a team says in its own words needs two lines, as title and task of that row do.
    expect(heights.at(-2)).toBeLessThanOrEqual(49);
  });
  it('stay bounded for every substance that the planner proposes', () => {
    const blocks = proposedSolutes().map(({ formula }) => {
      const one = lessonOf('stock and dilution', formula);
      const heights = blockHeights(plannedFor(one), one.activity.steps.length);
      expect([formula, Math.max(...heights) <= mostRowHeight.any]).toEqual([formula, true]);
      return { formula, high: sum(heights) };
    });
    const highest = blocks.reduce((one, other) => (other.high > one.high ? other : one));
    console.log(`highest everyday block of ${blocks.length} substances: ${highest.high} px with ${highest.formula}`);
    expect(highest.high).toBeLessThanOrEqual(1600);
  });
  it('hold what is asked where a value fits any two slips at once, in every row of every activity', () => {
    const ofActivity: readonly SlipId[] = ['other-given-used', 'planned-for-made', 'flasks-compared', 'mass-reported'];
    // The lowest row that asks for a quantity in the same words stands for all of them.
    const lowest = new Map<string, { readonly step: CalculatedStep; readonly height: number }>();
    for (const id of activities) {
      const one = lessonOf(id);
      const heights = blockHeights(plannedFor(one), one.activity.steps.length).slice(1);
      for (const [place, step] of one.activity.steps.entries()) {
        if (step.kind !== 'calculated') continue;
        const row = JSON.stringify([step.quantity, step.asks]);
        const height = Math.min(heights[place] ?? 0, lowest.get(row)?.height ?? mostRowHeight.any);
        lowest.set(row, { step, height });
      }
    }
    let pairs = 0;
    for (const { step, height } of lowest.values()) {
      const quantity = quantities[step.quantity];
      const ids = [...quantity.slips.map((slip) => slip.id), ...ofActivity];
      for (const [from, first] of ids.entries()) {
        for (const second of ids.slice(from + 1)) {
          const judged = { status: 'not yet', slips: [first, second] } as const;
          const said = feedbackText(judged, quantity, step.asks === undefined ? {} : { asks: step.asks });
          const high = heightOf(said, { width: classWidths[at.lookAt - 1] ?? 0, size: looks.spilled.size });
          pairs += 1;
          if (high > height) expect.fail(`${step.title}, ${height} px: ${said}`);
        }
      }
    }
    expect(pairs).toBeGreaterThan(800);
  });
  it.each(activities)('cost at most five calls a team in %s, and are alike in all blocks', (id) => {
    const one = lessonOf(id);
    const plan = plannedFor(one);
    const firstBlock = plan.identity.rows.findIndex(([key, step]) => key === 'c1-t1' && step === '') + 1;
    const own = (plan.rowHeights ?? []).filter(({ from, count }) => from + count > firstBlock);
    // One run for all rows of all teams, then what differs.
    const each = (own.length - 1) / one.teams.length;
    expect(each).toBeLessThanOrEqual(id === 'stock and dilution' ? 4 : 5);
    const height = one.activity.steps.length + 2;
    const heights = heightsOf(plan);
    expect(heights.slice(firstBlock - 1, firstBlock - 1 + height)).toEqual(
      heights.slice(firstBlock - 1 + height, firstBlock - 1 + 2 * height),
    );
  });
});

describe('the height of a text', () => {
  const setting = { width: 113, size: 10 };
  const lines = (text: string) => Math.round((heightOf(text, setting) - heightOf('e', setting)) / 20) + 1;
  it('grows by a line where words wrap, where one is wider than its column, and where a paragraph begins', () => {
    // A letter of 10 takes 14 px across its width in the list: 100 px are 7.14 of it, so 12 of “e” and 7 of “m”.
    expect(['e'.repeat(12), 'e'.repeat(13), 'm'.repeat(7), 'm'.repeat(8), 'm'.repeat(16)].map(lines)).toEqual([
      1, 2, 1, 2, 3,
    ]);
    expect(['eeeeee eeeee', 'eeeeee eeeeee', 'e\ne', 'eeeee eeeee eeeee'].map(lines)).toEqual([1, 2, 2, 2]);
    // Capitals are wider than small letters, and none is taken for a sign that nobody has measured.
    expect(['B'.repeat(10), 'B'.repeat(11), 'N'.repeat(9), 'N'.repeat(10)].map(lines)).toEqual([1, 2, 1, 2]);
  });
});

describe('what a team reads before its first entry', () => {
  it('is at most eighty words beside the cautions', () => {
    const plan = plannedFor({ ...lessonOf('stock and dilution', 'KBr'), invented: true });
    const firstBlock = plan.identity.rows.findIndex(([key, step]) => key === 'c1-t1' && step === '') + 1;
    const texts = new Map<string, string>();
    for (const { row, column, cells } of plan.blocks) {
      cells.forEach((line, down) => {
        line.forEach((cell, right) => {
          if (cell.kind === 'text') texts.set(`${row + down},${column + right}`, cell.text);
        });
      });
    }
    const isRead = (row: number, column: number) => row <= 6 && column <= at.who && column >= 1 && row !== 4;
    const above = [...texts].flatMap(([place, text]) => {
      const [row = 0, column = 0] = place.split(',').map(Number);
      const isHeadingRow = row === firstBlock && column <= at.who;
      const isFirstStep = row === firstBlock + 1 && column <= at.who;
      return isRead(row, column) || isHeadingRow || isFirstStep ? [text] : [];
    });
    const aim = lessonOf('stock and dilution').activity.steps[0]?.shown.map((piece) =>
      typeof piece === 'string' ? piece : 'KBr',
    );
    const said = [...above, 'Otter', 'Check Feedback Hint', 'Your names', (aim ?? []).join('')].join(' ');
    const count = said.split(/\s+/).filter((word) => /[\p{L}\p{N}]/u.test(word)).length;
    console.log(`words before the first entry: ${count}`);
    expect(count).toBeLessThanOrEqual(80);
  });
});
