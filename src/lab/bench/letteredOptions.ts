import { type LettersOf, lettered, letterSeed } from './lettered.ts';
import type { QuestionOption } from './questions/question.ts';
import { questionByName } from './questions.ts';

/**
 * Options of a question in the mixed order in which the sheet letters them; always the same for a question, or for a
 * team's key where one is given.
 */
export function letteredOptions(questionName: string, whose: LettersOf = {}) {
  const { right, others } = questionByName(questionName);
  return lettered<QuestionOption>(letterSeed(questionName, whose), [right, ...others]);
}

/** The letter that an option of a question has in the sheet. */
export const letterOfOption = (
  question: string,
  option: Pick<QuestionOption, 'id'> | undefined,
  whose: LettersOf = {},
): string => letteredOptions(question, whose).find(({ item }) => item.id === option?.id)?.letter ?? '';
