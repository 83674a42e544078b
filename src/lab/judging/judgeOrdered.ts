import { type CellValue, isBlank } from '../../measurement/cellValue.ts';
import { blockKey } from '../bench/blockKey.ts';
import { precautions } from '../bench/precautions.ts';
import { procedureByName } from '../bench/procedures.ts';
import type { OrderedStep } from '../lesson/activity.ts';
import { badGiven } from '../texts/feedback.ts';
import { orderTexts } from '../texts/ordering.ts';
import { checkOrder } from './checkOrder.ts';
import type { RowCheck } from './rowCheck.ts';
import type { Surroundings } from './surroundings.ts';

/**
 * Judges an order of letters by what the team handles. In a sheet whose letters are those of an older layout nothing can
 * be said of an order, so that nobody is told that a right one is wrong.
 */
export function judgeOrdered(
  step: OrderedStep,
  cell: CellValue,
  { givens, settings }: Pick<Surroundings, 'givens' | 'settings'>,
): RowCheck {
  if (settings.layout < procedureByName(step.procedure).sinceLayout) {
    return { status: isBlank(cell) ? 'blank' : 'unreadable', lookAt: orderTexts.buildAgain };
  }
  const found = precautions(step, { givens, decimalMark: settings.decimalMark });
  if (!found.ok) return { status: 'unreadable', lookAt: badGiven(found.error.argument) };
  return checkOrder(step.procedure, cell, {
    letters: { step: step.id, key: blockKey(givens) },
    precautions: found.value,
  });
}
