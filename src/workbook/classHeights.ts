import { isLettered } from '../lab/bench/isLettered.ts';
import { shownTo } from '../lab/bench/shownTo.ts';
import { exitGivens, isExitStep } from '../lab/exit/exitStep.ts';
import { saidInRow } from '../lab/judging/saidInRow.ts';
import type { Step } from '../lab/lesson/activity.ts';
import { readLessonSettings } from '../lab/lesson/lessonSettings.ts';
import type { TeamPlan } from '../lab/lesson/setup.ts';
import { shownWords } from '../lab/lesson/shownWords.ts';
import { extensionGiven } from '../lab/lesson/teamColumns.ts';
import { type CautionRow, cautionRowHeight } from './cautionCells.ts';
import { classWidths } from './classWidths.ts';
import { classColumns as at, cautionRows, classRows, mostRowHeight } from './layout.ts';
import type { Lesson } from './lesson.ts';
import { looks } from './looks.ts';
import { paintedSizes } from './paintedSizes.ts';
import { heightOf } from './textHeight.ts';
import { words } from './words.ts';
import type { LookName, SizedRun } from './workbook.ts';

const heights = { headings: 45, title: 30, slight: 6, line: 27, closing: 26 } as const;

interface HeightsInput {
  readonly lesson: Lesson;
  /** Questions for single students, below the rows of the lesson. */
  readonly exit: readonly Step[];
  readonly className: string;
  readonly teams: readonly TeamPlan[];
  readonly cautionsRow: number;
  /** Whole texts of the rows above the blocks. */
  readonly caution: string;
  readonly last: string;
  readonly cautions: readonly CautionRow[];
}

const inColumn = (text: string, column: number, look: LookName): number => {
  const { size, bold } = looks[look];
  return heightOf(text, { width: classWidths[column - 1] ?? 0, size, bold });
};

/**
 * Heights of a class sheet's rows, fixed so that nothing jumps while a check is worked out: those of a step hold the longest
 * text of ours that any team of the class can see there. All blocks are alike but for tasks of a team's own.
 */
export function classHeights(input: HeightsInput): readonly SizedRun[] {
  const { lesson, exit, className, teams, cautionsRow, caution, last, cautions } = input;
  const above = [
    heights.headings,
    Math.max(heights.title, inColumn(className, at.title, 'class name')),
    heights.slight,
    caution === '' ? heights.slight : inColumn(caution, at.task, 'caution text'),
    inColumn([words.class.invented, words.class.how, words.class.notice].join(' '), at.task, 'text'),
    ...Array.from({ length: cautionsRow - classRows.find }, () => heights.line),
    Math.max(heights.line, inColumn(last, at.task, 'text')),
    ...Array.from({ length: cautionRows }, (_, place) => {
      const row = cautions[place];
      return row === undefined ? heights.slight : Math.max(heights.slight, cautionRowHeight(row));
    }),
    heights.slight,
  ];
  if (teams.length === 0) return paintedSizes(above, classRows.headings);
  const heading = Math.max(
    ...[words.class.helpAndWho, words.class.numbersChanged].map((told) => inColumn(told, at.task, 'text heading')),
  );
  const [closing = 0, ...block] = inFewCalls([
    { height: heights.closing, most: mostRowHeight.any },
    { height: heading, most: mostRowHeight.any },
    ...[...lesson.activity.steps, ...exit].map((step) => ({
      height: Math.max(...teams.map((team) => stepHeight(step, { lesson, team }))),
      most: mostFor(step),
    })),
  ]);
  const blocks = teams.flatMap((team) => [...block, Math.max(closing, closingHeight(team))]);
  return paintedSizes([...above, ...blocks], classRows.headings);
}

/** Of a closing row: higher where the team has a task of its own there. */
export function closingHeight({ givens }: Pick<TeamPlan, 'givens'>): number {
  const own = (givens[extensionGiven] ?? '').trim();
  if (own === '') return heights.closing;
  const needed = inColumn(`${words.class.goOn}${own}`, at.task, 'text heading');
  return Math.min(mostRowHeight.added, Math.max(heights.closing, needed));
}

/** How high a row may be: one that a teacher adds stays low. */
function mostFor(step: Step): number {
  if (step.kind === 'safety') return mostRowHeight.addedQuestion;
  const isEvidence = step.kind === 'weighing' || (step.kind === 'told' && step.evidence !== undefined);
  return isEvidence || isExitStep(step.id) ? mostRowHeight.added : mostRowHeight.any;
}

interface Row {
  readonly height: number;
  readonly most: number;
}

/** Calls that the heights of a block may cost, one more for rows that are added together. */
const mostCalls = 8;
/**
 * What one call less for each team is worth: two lines of text in a block, which has some eighty. Blocks of the usual
 * activity cost four calls by it in place of eight. No block gets higher for it than by a share of what its texts need,
 * and one that needs less than `highBlock` stays below that.
 */
const worthOfCall = { px: 40, share: 0.04 } as const;
const highBlock = 1600;

/**
 * Heights of the rows of a block, closing row of the one above first, so that few calls set them: rows are made as high as
 * others where a call more than is allowed is saved by it, or a few pixels save one.
 */
function inFewCalls(rows: readonly Row[]): readonly number[] {
  let now = rows.map(({ height }) => height);
  // Rows that are added have calls of their own, so that the others stay as low as without them.
  const isAdded = (place: number) => (rows[place]?.most ?? mostRowHeight.any) < mostRowHeight.any;
  const allowed = mostCalls + rows.filter((_, place) => isAdded(place) && !isAdded(place - 1)).length;
  const needed = sum(now);
  const widened = needed * (1 + worthOfCall.share);
  const most = needed > highBlock ? widened : Math.min(widened, highBlock);
  for (;;) {
    const calls = callsOf(now);
    const high = sum(now);
    const [best] = raised(now, rows)
      .map((heights) => ({ heights, cost: sum(heights) - high }))
      // Where calls are few enough only what may turn out cheap is looked at.
      .filter(({ cost }) => cost > 0 && (calls > allowed || high + cost <= most))
      .map((one) => ({ ...one, saved: calls - callsOf(one.heights) }))
      .filter(({ cost, saved }) => saved > 0 && (calls > allowed || cost <= worthOfCall.px * saved))
      .sort((one, other) => one.cost / one.saved - other.cost / other.saved);
    if (best === undefined) return now;
    now = [...best.heights];
  }
}

/** What a block costs among others like it. */
const callsOf = (block: readonly number[]): number =>
  paintedSizes([...block, ...block]).length - paintedSizes(block).length;

/**
 * The same with rows below each other as high as the highest of them, or as others are; and with all rows of one height as
 * high as those of another, where each may be so high.
 */
function raised(now: readonly number[], rows: readonly Row[]): readonly (readonly number[])[] {
  const inUse = [...new Set(now)];
  const starts = now.flatMap((height, place) => (height === now[place - 1] ? [] : [place]));
  const places = now.map((_, place) => place);
  const together = [
    ...starts.flatMap((first, run) => [...starts.slice(run + 1), now.length].map((end) => places.slice(first, end))),
    ...inUse.map((height) => places.filter((place) => now[place] === height)),
  ];
  return together.flatMap((some) => {
    const high = Math.max(...some.map((place) => now[place] ?? 0));
    const room = Math.min(...some.map((place) => rows[place]?.most ?? 0));
    return inUse
      .filter((height) => height >= high && height <= room)
      .map((height) => now.map((one, place) => (some.includes(place) ? height : one)));
  });
}

const sum = (numbers: readonly number[]): number => numbers.reduce((total, one) => total + one, 0);

/** Height of a step's row for a team: its title, what to do, and the longest of what it is told there. */
function stepHeight(step: Step, { lesson, team }: { lesson: Lesson; team: TeamPlan }): number {
  const { activity, setup } = lesson;
  const { decimalMark, studentsDilute } = readLessonSettings(Object.entries(setup.settings));
  const { lookAt, hint } = saidInRow(step, { activity, givens: team.givens, decimalMark, studentsDilute });
  const told = shownWords(
    { shown: shownTo(step, team.key) },
    { values: team.givens, givens: [...activity.givens, ...exitGivens(step.id)] },
  );
  const task = step.kind === 'calculated' ? `${told} 10${words.class.figures.several}` : told;
  const most = Math.max(
    inColumn(`00 ${step.title}`, at.title, 'step'),
    inColumn(task, at.task, isLettered(step) ? 'letters' : 'task'),
    ...lookAt.map((text) => inColumn(text, at.lookAt, 'spilled')),
    ...hint.map((text) => inColumn(text, at.hint, 'spilled')),
  );
  return Math.min(isExitStep(step.id) ? mostRowHeight.added : mostRowHeight.any, most);
}
