import type { Problem } from '../outcome.ts';
import { deskWords } from '../words.ts';
import type { BuildQuestion } from './questions.ts';

/** A question in place of an answer: nothing was written. */
export const asked = (question: BuildQuestion): { readonly ok: false; readonly problem: Problem } => ({
  ok: false,
  problem: { message: deskWords.question(question), question },
});
