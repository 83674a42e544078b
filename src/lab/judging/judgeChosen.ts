import type { CellValue } from '../../measurement/cellValue.ts';
import { blockKey } from '../bench/blockKey.ts';
import type { LettersOf } from '../bench/lettered.ts';
import { letteredOptions } from '../bench/letteredOptions.ts';
import { optionReply } from '../bench/optionReply.ts';
import { questionByName } from '../bench/questions.ts';
import type { ChosenStep } from '../lesson/activity.ts';
import type { Surroundings } from './judgedRow.ts';
import { judgeLetter } from './judgeLetter.ts';
import type { RowCheck } from './rowCheck.ts';

/** What a lettered answer is judged with, beside the question. */
interface ChoiceSurroundings {
  /** Whose letters the entry is written in. */
  readonly letters?: LettersOf;
  /** Formula of the solute, for replies that differ for acids and bases. */
  readonly solute?: CellValue;
}

/** Judges a lettered answer: the reason where it is right, a question that fits the idea behind it where it is not. */
export function judgeChoice(
  questionName: string,
  entry: CellValue,
  { letters = {}, solute = '' }: ChoiceSurroundings = {},
): RowCheck {
  return judgeLetter(entry, letteredOptions(questionName, letters), (item) => ({
    status: item.id === questionByName(questionName).right.id ? 'on target' : 'not yet',
    lookAt: optionReply(item, solute),
  }));
}

/** Judges a lettered answer in the team's own letters. */
export const judgeChosen = (
  step: ChosenStep,
  cell: CellValue,
  { activity, givens }: Pick<Surroundings, 'activity' | 'givens'>,
): RowCheck =>
  judgeChoice(step.question, cell, {
    letters: { step: step.id, key: blockKey(givens) },
    solute: givens[activity?.numbers.formula ?? ''],
  });
