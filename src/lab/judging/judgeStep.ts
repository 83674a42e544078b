import { type CellValue, isBlank } from '../../measurement/cellValue.ts';
import type { Step } from '../lesson/activity.ts';
import { remarks } from '../texts/feedback.ts';
import { judgeCalculated } from './judgeCalculated.ts';
import { judgeChosen } from './judgeChosen.ts';
import type { JudgedRow, Surroundings } from './judgedRow.ts';
import { judgeMeasured } from './judgeMeasured.ts';
import { judgeOrdered } from './judgeOrdered.ts';
import { judgeTicked } from './judgeTicked.ts';

/** Longest entry that is looked through for letters, a tick or an option with its reason, in characters. */
export const longestAnswer = 1000;

const isTooLong = (cell: CellValue): boolean =>
  typeof cell === 'string' && cell.length > longestAnswer && !isBlank(cell);

/** Judges an entry by the kind of its step; what is told is never judged, so nothing is said of it. */
export function judgeStep(step: Step, cell: CellValue, around: Surroundings): Partial<JudgedRow> {
  const isInWords = step.kind === 'ordered' || step.kind === 'chosen' || step.kind === 'ticked';
  if (isInWords && isTooLong(cell)) return { status: 'unreadable', lookAt: remarks.tooLong };
  switch (step.kind) {
    case 'calculated':
      return judgeCalculated(step, cell, around);
    case 'measured':
      return judgeMeasured(step, cell, around);
    case 'ordered':
      return judgeOrdered(step, cell, around);
    case 'chosen':
      return judgeChosen(step, cell, around);
    case 'ticked':
      return judgeTicked(step, cell, around);
    case 'told':
      return {};
  }
}
