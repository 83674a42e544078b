import { type CellValue, isBlank } from '../../measurement/cellValue.ts';
import { exitStep, isExitStep, withExitGivens } from '../exit/exitStep.ts';
import { plainName } from '../lesson/givenCells.ts';
import { isYes } from '../lesson/lessonSettings.ts';
import { showExitGiven } from '../lesson/teamColumns.ts';
import { readTeamLesson, type TeamLesson } from '../lesson/teamLesson.ts';
import { exitTexts } from '../texts/exit.ts';
import { badStep } from '../texts/feedback.ts';
import { bareStep } from './bareStep.ts';
import type { JudgedRow, Surroundings } from './judgedRow.ts';
import { judgeStep } from './judgeStep.ts';
import { withWait } from './withWait.ts';

/** A team's block of the class sheet, as its one check receives it. */
export interface TeamBlock {
  /** One row each: names of the givens and this team's values. */
  readonly givenNames: readonly CellValue[];
  readonly givenValues: readonly CellValue[];
  /** Two columns, name and value; names that are not read are passed over. */
  readonly settings: readonly (readonly CellValue[])[];
  /** Columns of one height, which may include a heading row and a closing row. */
  readonly steps: readonly CellValue[];
  readonly entries: readonly CellValue[];
}

/** What a message shows of a step id that nobody knows. */
const longestName = 40;

const quietRow: JudgedRow = {
  step: undefined,
  status: '',
  lookAt: '',
  slips: [],
  value: undefined,
  unrounded: [],
  root: '',
};

/**
 * Judges a team's whole block: every row from its givens, and from the team's own entries in the rows it builds on. A
 * rounded number carried forward counts as right, and a wrong one is looked for where it first stands.
 *
 * @param lesson - The block's own, where it stands ready.
 */
export function judgeTeam(block: TeamBlock, lesson: TeamLesson = readTeamLesson(block)): readonly JudgedRow[] {
  const ids = block.steps.map(plainName);
  const { activity, settings, givens } = lesson;
  const exitIsKept = !settings.showExitChecks && !isYes(givens[showExitGiven]);
  const around: Surroundings = {
    ...lesson,
    stepOf: (id) =>
      activity?.steps.find((step) => step.id === id) ?? (activity && exitStep(activity, id)) ?? bareStep(id),
    rowOf: (id) => {
      const index = ids.indexOf(id);
      return index < 0 ? undefined : judge(index);
    },
  };
  const judged: (JudgedRow | 'under way' | undefined)[] = [];

  /** Rows ask for each other, so each is judged when it is first asked for, and once. */
  function judge(index: number): JudgedRow {
    const known = judged[index];
    if (known === 'under way') throw new Error(`the step “${ids[index]}” builds on itself`);
    if (known) return known;
    judged[index] = 'under way';
    const row = judgeFresh(index);
    judged[index] = row;
    return row;
  }

  function judgeFresh(index: number): JudgedRow {
    const step = around.stepOf(ids[index] ?? '');
    if (step) {
      const row = { ...quietRow, step, root: step.title };
      const isExit = isExitStep(step.id);
      if (isExit && exitIsKept && !isBlank(block.entries[index]))
        return { ...row, status: 'kept', lookAt: exitTexts.kept };
      const about = isExit && activity ? { ...around, activity: withExitGivens(activity, step.id) } : around;
      return { ...row, ...judgeStep(step, block.entries[index], about) };
    }
    const isNamed = !isBlank(block.steps[index]);
    return isNamed
      ? {
          ...quietRow,
          status: 'unreadable',
          isUnusable: true,
          lookAt: badStep(String(block.steps[index]).slice(0, longestName)),
        }
      : quietRow;
  }

  const rows = ids.map((_, index) => judge(index));
  return rows.map((row, index) => withWait(row, rows.slice(0, index)));
}
