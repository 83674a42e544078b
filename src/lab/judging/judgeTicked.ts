import type { CellValue } from '../../measurement/cellValue.ts';
import type { TickedStep } from '../lesson/activity.ts';
import { cautionWords } from '../lesson/cautionWords.ts';
import { checkTick } from './checkTick.ts';
import type { RowCheck } from './rowCheck.ts';
import type { Surroundings } from './surroundings.ts';

/** Judges whether the cautions of what the team handles are ticked as read. */
export function judgeTicked(
  { substance }: TickedStep,
  cell: CellValue,
  { givens, settings: { decimalMark, studentsDilute } }: Pick<Surroundings, 'givens' | 'settings'>,
): RowCheck {
  return checkTick(cell, {
    substance: givens[substance.formula],
    cautionLines: cautionWords({ substance, givens, decimalMark, studentsDilute }),
  });
}
