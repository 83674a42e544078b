import { type CellValue, isBlank } from '../measurement/cellValue.ts';
import { activityById } from './activities.ts';
import { plainName } from './givenCells.ts';
import { bareStep } from './judging/bareStep.ts';
import type { JudgedRow } from './judging/judgedRow.ts';
import { judgeStep } from './judging/judgeStep.ts';
import type { Surroundings } from './judging/surroundings.ts';
import { withWait } from './judging/withWait.ts';
import { readLessonSettings } from './lessonSettings.ts';
import { teamGivens } from './teamGivens.ts';
import { badStep } from './texts/feedback.ts';

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
 */
export function judgeTeam(block: TeamBlock): readonly JudgedRow[] {
  const settings = readLessonSettings(block.settings);
  const activity = activityById(settings.activity, settings);
  const ids = block.steps.map(plainName);
  const around: Surroundings = {
    activity,
    settings,
    givens: teamGivens(block.givenNames, block.givenValues),
    stepOf: (id) => activity?.steps.find((step) => step.id === id) ?? bareStep(id),
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
    if (step) return { ...quietRow, step, root: step.title, ...judgeStep(step, block.entries[index], around) };
    const isNamed = !isBlank(block.steps[index]);
    return isNamed
      ? { ...quietRow, status: 'unreadable', lookAt: badStep(String(block.steps[index]).slice(0, longestName)) }
      : quietRow;
  }

  const rows = ids.map((_, index) => judge(index));
  return rows.map((row, index) => withWait(row, rows.slice(0, index)));
}
