import { type CellValue, isBlank } from '../measurement/cellValue.ts';
import { lettered } from './lettered.ts';
import type { QuestionOption } from './questions/question.ts';
import { questionByName } from './questions.ts';
import type { RowCheck } from './rowCheck.ts';
import { choiceTexts } from './texts/choosing.ts';

/** Options of a question in the mixed order in which the sheet letters them; always the same for a question. */
export function letteredOptions(questionName: string) {
  const { right, others } = questionByName(questionName);
  return lettered<QuestionOption>(questionName, [right, ...others]);
}

/** The letter of an entry such as “b”, “(B)” or “b, because …”; undefined where it is not one letter. */
function chosenLetter(entry: CellValue): string | undefined {
  if (typeof entry !== 'string') return undefined;
  const read = /^[\s([{"'“‘]*(\p{L})[\s)\]}.:;,"'”’–—-]*(?:$|(?<=[).:;,–—-]\s*)\S.{2,}|because\b.*)/su.exec(
    entry.normalize('NFKC').toLowerCase(),
  );
  return read?.[1];
}

/** Judges a lettered answer: the reason where it is right, a question that fits the idea behind it where it is not. */
export function checkChoice(questionName: string, entry: CellValue): RowCheck {
  if (isBlank(entry)) return { status: 'blank', lookAt: '' };
  const options = letteredOptions(questionName);
  const letter = chosenLetter(entry);
  const chosen = options.find((option) => option.letter === letter);
  if (chosen === undefined) {
    return { status: 'unreadable', lookAt: choiceTexts.oneLetter(options.map((option) => option.letter)) };
  }
  const isRight = chosen.item.id === questionByName(questionName).right.id;
  return { status: isRight ? 'on target' : 'not yet', lookAt: chosen.item.reply };
}
