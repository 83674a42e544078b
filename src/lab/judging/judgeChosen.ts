import { type CellValue, isBlank } from '../../measurement/cellValue.ts';
import { patternOnUse } from '../../measurement/patternOnUse.ts';
import { blockKey } from '../bench/blockKey.ts';
import type { LettersOf } from '../bench/lettered.ts';
import { letteredOptions } from '../bench/letteredOptions.ts';
import { optionReply } from '../bench/optionReply.ts';
import { questionByName } from '../bench/questions.ts';
import type { ChosenStep } from '../lesson/activity.ts';
import { choiceTexts } from '../texts/choosing.ts';
import type { Surroundings } from './judgedRow.ts';
import type { RowCheck } from './rowCheck.ts';

/** One letter, with nothing behind it, or a reason that a mark or “because” begins. */
const letterFirst = patternOnUse(
  String.raw`^[\s([{"'“‘]*(\p{L})[\s)\]}.:;,"'”’–—-]*(?:$|(?<=[).:;,–—-]\s*)\S.{2,}|because\b.*)`,
  'su',
);

/** The letter of an entry such as “b”, “(B)” or “b, because …”; undefined where it is not one letter. */
function chosenLetter(entry: CellValue): string | undefined {
  if (typeof entry !== 'string') return undefined;
  const read = letterFirst().exec(entry.normalize('NFKC').toLowerCase());
  return read?.[1];
}

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
  if (isBlank(entry)) return { status: 'blank', lookAt: '' };
  const options = letteredOptions(questionName, letters);
  const letter = chosenLetter(entry);
  const chosen = options.find((option) => option.letter === letter);
  if (chosen === undefined) {
    return { status: 'unreadable', lookAt: choiceTexts.oneLetter(options.map((option) => option.letter)) };
  }
  const isRight = chosen.item.id === questionByName(questionName).right.id;
  return { status: isRight ? 'on target' : 'not yet', lookAt: optionReply(chosen.item, solute) };
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
