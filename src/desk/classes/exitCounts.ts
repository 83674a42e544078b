import { exitOutcomes } from '../../lab/exit/exitOutcomes.ts';
import { exitStep, isExitStep } from '../../lab/exit/exitStep.ts';
import { seatsOf } from '../../lab/exit/seatsOf.ts';
import { slipWords } from '../../lab/judging/feedbackText.ts';
import type { Activity } from '../../lab/lesson/activity.ts';
import { isYes } from '../../lab/lesson/lessonSettings.ts';
import { isTeam } from '../../lab/lesson/practice.ts';
import { showExitGiven } from '../../lab/lesson/teamColumns.ts';
import type { SlipId } from '../../lab/texts/feedback.ts';
import type { ClassReading } from '../../workbook/readClassSheet.ts';
import type { PlanReading } from '../../workbook/readLesson.ts';

export interface ExitCounts {
  /** Seats that have a row, those of them with an answer, and those whose answer is right. */
  readonly seats: number;
  readonly answered: number;
  readonly right: number;
  /** Answers that are formulas: they count as no answer of anybody. */
  readonly formulas: number;
  /** What most of the other answers match, in words, and how many; left out where no two are alike. */
  readonly common?: { readonly fits: string; readonly count: number };
  /** Whether the students see their checks. */
  readonly shown: 'no' | 'class' | 'lesson';
}

/** Answers that make a slip common; one alone would point at a student. */
const fewest = 2;

/** The exit questions of a class, in counts and nothing else; undefined where its teams have none. */
export function exitCounts(
  { blocks }: ClassReading,
  {
    plan,
    activity,
    formulas = new Set(),
    isOfDay = () => true,
  }: {
    readonly plan: PlanReading;
    readonly activity: Activity;
    /** Rows of the sheet whose entry is a formula. */
    readonly formulas?: ReadonlySet<number>;
    /** Whether an answer of that moment counts; every answer does where nobody asks for those of one day. */
    readonly isOfDay?: (lastEntry: number | undefined) => boolean;
  },
): ExitCounts | undefined {
  const { settings } = plan.setup;
  const teams = blocks.filter(isTeam);
  const rows = teams.flatMap(({ key, steps }) =>
    steps.filter(({ step }) => isExitStep(step)).map((row) => ({ ...row, key })),
  );
  if (seatsOf(settings) === 0 || rows.length === 0) return undefined;
  const answered = rows.filter(({ entry, row, lastEntry }) => entry !== '' && !formulas.has(row) && isOfDay(lastEntry));
  let right = 0;
  const slips = new Map<SlipId, number>();
  for (const { key } of teams) {
    const line = plan.teams.find((one) => one.key === key);
    const answers = Object.fromEntries(
      answered.filter((row) => row.key === key).map(({ step, entry }) => [step, entry]),
    );
    if (line === undefined) continue;
    for (const { status, slips: found } of exitOutcomes(line, { settings, answers })) {
      if (status === 'on target') right += 1;
      for (const slip of found) slips.set(slip, (slips.get(slip) ?? 0) + 1);
    }
  }
  const [most] = [...slips].sort(([, one], [, other]) => other - one);
  const quantity = exitStep(activity, 'exit 1')?.quantity;
  const lines = plan.teams.filter(({ key }) => teams.some((team) => team.key === key));
  const isShown = lines.length > 0 && lines.every(({ givens }) => isYes(givens[showExitGiven]));
  return {
    seats: rows.length,
    answered: answered.length,
    right,
    formulas: rows.filter(({ row }) => formulas.has(row)).length,
    ...(most === undefined || most[1] < fewest || quantity === undefined
      ? {}
      : { common: { fits: slipWords(most[0], [quantity]).fits, count: most[1] } }),
    shown: isYes(settings['show exit checks']) ? 'lesson' : isShown ? 'class' : 'no',
  };
}
