import type { CalculatedStep } from '../lesson/activity.ts';
import { activitySlips } from './activitySlips.ts';
import type { FilledQuantity } from './filledQuantity.ts';
import type { Surroundings } from './judgedRow.ts';
import type { Judgement } from './judgeEntry.ts';
import type { ReadEntry } from './readEntry.ts';
import { teamStep } from './teamStep.ts';

interface JudgedStep {
  readonly judgement: Judgement;
  readonly step: CalculatedStep;
  readonly ready: FilledQuantity;
  readonly entry: ReadEntry;
}

/**
 * Adds what a slip beside the quantity itself explains; a misplaced point is named only where nothing else does. The
 * planned value in place of the real one lies so near it that rounding would explain it as well, and is named all the same.
 */
export function withActivitySlips({ judgement, step, ready, entry }: JudgedStep, around: Surroundings): Judgement {
  if (judgement.status !== 'close' && judgement.status !== 'not yet') return judgement;
  const isOpen =
    judgement.status === 'close'
      ? judgement.because === 'rounding' || judgement.because === 'cut off'
      : judgement.question === undefined || judgement.question === 'one figure';
  const { activity } = around;
  if (!isOpen || entry.kind !== 'number' || activity === undefined) return judgement;
  const more = activitySlips(step, {
    activity,
    stepOf: around.stepOf,
    readyOf: (other) => teamStep(other, around).ready,
    givens: around.givens,
    decimalMark: around.settings.decimalMark,
    ready,
    entry: entry.entry,
  });
  if (more.length === 0) return judgement;
  if (judgement.status === 'close') {
    return more.includes('planned-for-made') ? { status: 'not yet', slips: ['planned-for-made'] } : judgement;
  }
  return { status: 'not yet', slips: [...judgement.slips.filter((id) => id !== 'power-of-ten'), ...more] };
}
