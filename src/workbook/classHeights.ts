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
import { heightOf } from './textHeight.ts';
import { words } from './words.ts';
import type { LookName, RowHeight } from './workbook.ts';

const heights = { headings: 45, title: 30, slight: 6, line: 27, closing: 26 } as const;

interface HeightsInput {
  readonly lesson: Lesson;
  /** Questions for single students, below the rows of the lesson. */
  readonly exit: readonly Step[];
  readonly className: string;
  readonly teams: readonly TeamPlan[];
  readonly firstBlock: number;
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
 * text of ours that any team of the class can see there. All blocks are alike, the usual row is set for all of them at once
 * and each other row by itself, so that a team costs few calls.
 */
export function classHeights(input: HeightsInput): readonly RowHeight[] {
  const { lesson, exit, className, teams, firstBlock, cautionsRow, caution, last, cautions } = input;
  const { steps } = lesson.activity;
  const blockRows = steps.length + exit.length + 2;
  const above = runsOf(
    [
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
    ],
    classRows.headings,
  );
  if (teams.length === 0) return above;
  const each = inFewRuns(
    [...steps, ...exit].map((step) => ({
      height: Math.max(...teams.map((team) => stepHeight(step, { lesson, team }))),
      most: mostFor(step),
    })),
  );
  const usual = mostCommon(each);
  const heading = Math.max(
    ...[words.class.helpAndWho, words.class.numbersChanged].map((told) => inColumn(told, at.task, 'text heading')),
  );
  return [
    ...above,
    { row: firstBlock, rows: teams.length * blockRows, height: usual },
    ...teams.flatMap((team, index) => {
      const first = firstBlock + index * blockRows;
      const rows = [heading, ...each, closingHeight(team)];
      return runsOf(rows, first).filter(({ height }) => height !== usual);
    }),
  ];
}

/** Of a closing row: higher where the team has a task of its own there. */
export function closingHeight({ givens }: Pick<TeamPlan, 'givens'>): number {
  const own = (givens[extensionGiven] ?? '').trim();
  if (own === '') return heights.closing;
  const needed = inColumn(`${words.class.goOn}${own}`, at.task, 'text heading');
  return Math.min(mostRowHeight.added, Math.max(heights.closing, needed));
}

/** Calls that a team's own heights may cost, and one for rows that are added together; one more is for its heading row, one for its closing row. */
const mostRuns = 6;

/** How high a row may be: one that a teacher adds stays low. */
function mostFor(step: Step): number {
  if (step.kind === 'safety') return mostRowHeight.addedQuestion;
  const isEvidence = step.kind === 'weighing' || (step.kind === 'told' && step.evidence !== undefined);
  return isEvidence || isExitStep(step.id) ? mostRowHeight.added : mostRowHeight.any;
}

/**
 * Heights of which no more runs than that differ from the most common: rows are made as high as a neighbour where needed,
 * but none higher than it may be, and then there are more runs.
 */
function inFewRuns(rows: readonly { readonly height: number; readonly most: number }[]): readonly number[] {
  let now = rows.map(({ height }) => height);
  // Rows that are added have runs of their own, so that the others stay as low as without them.
  const isAdded = (place: number) => (rows[place]?.most ?? mostRowHeight.any) < mostRowHeight.any;
  const runsAllowed = mostRuns + rows.filter((_, place) => isAdded(place) && !isAdded(place - 1)).length;
  for (;;) {
    const usual = mostCommon(now);
    const runs = runsOf(now, 0);
    if (runs.filter(({ height }) => height !== usual).length <= runsAllowed) return now;
    const [cheapest] = runs
      .slice(1)
      .map((run, place) => {
        const above = runs[place] ?? run;
        const lower = above.height < run.height ? above : run;
        const height = Math.max(above.height, run.height);
        return { lower, height, cost: (height - lower.height) * lower.rows };
      })
      .filter(({ lower, height }) => rows.slice(lower.row, lower.row + lower.rows).every(({ most }) => height <= most))
      .sort((one, other) => one.cost - other.cost);
    if (cheapest === undefined) return now;
    const { lower, height } = cheapest;
    now = now.map((one, place) => (place >= lower.row && place < lower.row + lower.rows ? height : one));
  }
}

/** Rows below each other that are alike, in one run each. */
function runsOf(heights: readonly number[], first: number): readonly RowHeight[] {
  const runs: RowHeight[] = [];
  heights.forEach((height, place) => {
    const last = runs[runs.length - 1];
    if (last?.height === height) runs[runs.length - 1] = { ...last, rows: last.rows + 1 };
    else runs.push({ row: first + place, rows: 1, height });
  });
  return runs;
}

function mostCommon(numbers: readonly number[]): number {
  const counts = new Map<number, number>();
  for (const number of numbers) counts.set(number, (counts.get(number) ?? 0) + 1);
  return [...counts].reduce((best, next) => (next[1] > best[1] ? next : best), [0, 0])[0];
}

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
