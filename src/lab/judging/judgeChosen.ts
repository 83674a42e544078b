import type { CellValue } from '../../measurement/cellValue.ts';
import { blockKey } from '../bench/blockKey.ts';
import type { ChosenStep } from '../lesson/activity.ts';
import { checkChoice } from './checkChoice.ts';
import type { RowCheck } from './rowCheck.ts';
import type { Surroundings } from './surroundings.ts';

/** Judges a lettered answer in the team's own letters. */
export const judgeChosen = (
  step: ChosenStep,
  cell: CellValue,
  { activity, givens }: Pick<Surroundings, 'activity' | 'givens'>,
): RowCheck =>
  checkChoice(step.question, cell, {
    letters: { step: step.id, key: blockKey(givens) },
    solute: givens[activity?.numbers.formula ?? ''],
  });
