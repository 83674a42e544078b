import type { CellValue } from '../../measurement/cellValue.ts';
import { blockKey } from '../bench/blockKey.ts';
import { rightSafetyOption, safetyLetters } from '../bench/safetyQuestion.ts';
import type { SafetyStep } from '../lesson/activity.ts';
import type { Surroundings } from './judgedRow.ts';
import { judgeLetter } from './judgeLetter.ts';
import type { RowCheck } from './rowCheck.ts';

/** Judges an answer about the care that a team's own substance takes, in the team's own letters. */
export const judgeSafety = (
  step: SafetyStep,
  cell: CellValue,
  { givens, settings }: Pick<Surroundings, 'givens' | 'settings'>,
): RowCheck =>
  judgeLetter(cell, safetyLetters(step, { step: step.id, key: blockKey(givens) }), ({ id, right, ask }) =>
    right !== undefined && id === rightSafetyOption(step, { givens, decimalMark: settings.decimalMark })
      ? { status: 'on target', lookAt: right }
      : { status: 'not yet', lookAt: ask },
  );
