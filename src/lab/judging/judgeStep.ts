import type { CellValue } from '../../measurement/cellValue.ts';
import type { Step } from '../activity.ts';
import { judgeCalculated } from './judgeCalculated.ts';
import { judgeChosen } from './judgeChosen.ts';
import type { JudgedRow } from './judgedRow.ts';
import { judgeMeasured } from './judgeMeasured.ts';
import { judgeOrdered } from './judgeOrdered.ts';
import { judgeTicked } from './judgeTicked.ts';
import type { Surroundings } from './surroundings.ts';

/** Judges an entry by the kind of its step; what is told is never judged, so nothing is said of it. */
export function judgeStep(step: Step, cell: CellValue, around: Surroundings): Partial<JudgedRow> {
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
