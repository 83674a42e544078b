import { letterOfOption } from '../../src/lab/bench/letteredOptions.ts';
import { lettersInOrder } from '../../src/lab/bench/orderedActions.ts';
import { questionByName } from '../../src/lab/bench/questions.ts';
import type { Step } from '../../src/lab/lesson/activity.ts';
import { tickTexts } from '../../src/lab/texts/ticks.ts';
import type { TeamSoFar } from './rightEntry.ts';

/** What is right in a row that asks for no number; blank where nothing is judged. */
export function otherEntry(step: Step, givens: TeamSoFar['givens']): string {
  const whose = { step: step.id, key: givens.key ?? '' };
  switch (step.kind) {
    case 'ordered':
      return lettersInOrder(step.procedure, whose).join(' ');
    case 'chosen':
      return letterOfOption(step.question, questionByName(step.question).right, whose);
    case 'ticked':
      return tickTexts.answer(givens[step.substance.formula] ?? '');
    default:
      return '';
  }
}
