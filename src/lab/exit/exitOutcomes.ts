import { readQuantity } from '../../measurement/readQuantity.ts';
import { judgeEntry } from '../judging/judgeEntry.ts';
import { readEntry } from '../judging/readEntry.ts';
import { fitsSlip } from '../judging/slipsFound.ts';
import { stepTolerance } from '../judging/tolerance.ts';
import { spanOver } from '../judging/worked.ts';
import type { Activity } from '../lesson/activity.ts';
import { readLessonSettings } from '../lesson/lessonSettings.ts';
import type { Settings, TeamPlan } from '../lesson/setup.ts';
import type { StepReady } from '../numbers/confusions.ts';
import type { SlipId } from '../texts/feedback.ts';
import { exitGivens, exitStep } from './exitStep.ts';
import { readyExit } from './readyExit.ts';

export interface ExitOutcome {
  readonly isRight: boolean;
  readonly slips: readonly string[];
}

/**
 * A team's answers to its exit questions as its rows will judge them, also while the sheet keeps them: what the teacher
 * may know before the students do. A question builds on no other row, so that no block is needed.
 *
 * @param answers - Entries by step id.
 */
export function exitOutcomes(
  { givens }: Pick<TeamPlan, 'givens'>,
  {
    activity,
    settings: given,
    answers,
  }: {
    readonly activity: Activity;
    readonly settings: Settings;
    readonly answers: Readonly<Record<string, string>>;
  },
): readonly ExitOutcome[] {
  const settings = readLessonSettings(Object.entries(given));
  return Object.entries(answers).flatMap(([id, typed]): readonly ExitOutcome[] => {
    const step = exitStep(activity, id);
    const ready = step && readyExit(step, givens, { activity, settings: given });
    if (!ready) return [];
    const { prepared } = ready;
    const entry = readEntry(typed, prepared.quantity.entryKind, settings);
    const judged = judgeEntry(prepared, entry, settings);
    if (judged.status !== 'not yet' || entry.kind !== 'number')
      return [{ isRight: judged.status === 'on target', slips: [] }];
    const tolerance = stepTolerance(prepared);
    const usesOther = otherNumbers(ready, { id, activity, givens, decimalMark: settings.decimalMark }).some((span) =>
      fitsSlip(span, { entry: entry.entry, tolerance }),
    );
    const other: readonly SlipId[] = usesOther ? ['other-given-used'] : [];
    const slips = usesOther ? judged.slips.filter((slip) => slip !== 'power-of-ten') : judged.slips;
    return [{ isRight: false, slips: [...slips, ...other] }];
  });
}

/** What the question comes to where one of its numbers is taken from the team's instead. */
function otherNumbers(
  { prepared, reads }: StepReady,
  {
    id,
    activity,
    givens,
    decimalMark,
  }: {
    readonly id: string;
    readonly activity: Activity;
    readonly givens: TeamPlan['givens'];
    readonly decimalMark: 'point' | 'comma';
  },
) {
  const taken = Object.values(reads);
  return [...activity.givens, ...exitGivens(id)].flatMap((own) => {
    const name = Object.keys(reads).find((one) => reads[one] === own.name);
    if (name === undefined || own.unit === '') return [];
    return activity.givens
      .filter((other) => other.unit === own.unit && !taken.includes(other.name))
      .flatMap((other) => {
        const kind = own.unit === 'mL' ? 'volume' : own.unit === '%' ? 'percent' : 'concentration';
        const read = readQuantity(givens[other.name], kind, other.name, { decimalMark });
        return read.ok ? [spanOver(prepared, prepared.quantity.relation, { [name]: read.value.value })] : [];
      });
  });
}
