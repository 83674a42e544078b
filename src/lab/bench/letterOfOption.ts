import { letteredOptions } from '../judging/checkChoice.ts';
import type { LettersOf } from './lettered.ts';
import type { QuestionOption } from './questions/question.ts';

/** The letter that an option of a question has in the sheet. */
export const letterOfOption = (
  question: string,
  option: Pick<QuestionOption, 'id'> | undefined,
  whose: LettersOf = {},
): string => letteredOptions(question, whose).find(({ item }) => item.id === option?.id)?.letter ?? '';
