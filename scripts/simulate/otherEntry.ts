import type { Step } from '../../src/lab/activity.ts';
import { letterOfOption } from '../../src/lab/letterOfOption.ts';
import { lettersInOrder } from '../../src/lab/lettersInOrder.ts';
import { questionByName } from '../../src/lab/questions.ts';
import { tickTexts } from '../../src/lab/texts/ticks.ts';
import type { TeamSoFar } from './rightEntry.ts';

/** What is right in a row that asks for no number; blank where nothing is judged. */
export function otherEntry(step: Step, givens: TeamSoFar['givens']): string {
  switch (step.kind) {
    case 'ordered':
      return lettersInOrder(step.procedure).join(' ');
    case 'chosen':
      return letterOfOption(step.question, questionByName(step.question).right);
    case 'ticked':
      return tickTexts.answer(givens[step.substance.formula] ?? '');
    default:
      return '';
  }
}
