import { type CellValue, isBlank } from '../../measurement/cellValue.ts';
import type { Step } from '../lesson/activity.ts';
import { remarks } from '../texts/feedback.ts';
import { notALink } from '../texts/weighing.ts';
import { judgeCalculated } from './judgeCalculated.ts';
import { judgeChosen } from './judgeChosen.ts';
import type { JudgedRow, Surroundings } from './judgedRow.ts';
import { judgeMeasured } from './judgeMeasured.ts';
import { judgeOrdered } from './judgeOrdered.ts';
import { judgeSafety } from './judgeSafety.ts';
import { judgeTicked } from './judgeTicked.ts';
import { judgeWeighing } from './judgeWeighing.ts';

/** Longest entry that is looked through for letters, a tick or an option with its reason, in characters. */
export const longestAnswer = 1000;

const isTooLong = (cell: CellValue): boolean =>
  typeof cell === 'string' && cell.length > longestAnswer && !isBlank(cell);

/** An address that a browser opens, with words of the team's own behind it if it likes. */
const isLink = (cell: CellValue): boolean => /^\s*https?:\/\/[^\s/]+\.\S+/i.test(String(cell));

/** Judges an entry by the kind of its step; what is told is never judged, and only of a link is said that it is none. */
export function judgeStep(step: Step, cell: CellValue, around: Surroundings): Partial<JudgedRow> {
  const isInWords = ['ordered', 'chosen', 'ticked', 'safety'].includes(step.kind);
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
    case 'safety':
      return judgeSafety(step, cell, around);
    case 'weighing':
      return judgeWeighing(step, cell, around);
    case 'told':
      return step.evidence === 'link' && !isBlank(cell) && !isLink(cell) ? { lookAt: notALink } : {};
  }
}
