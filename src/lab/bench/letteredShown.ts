import type { ChosenStep, OrderedStep, SafetyStep, Shown } from '../lesson/activity.ts';
import { orderTexts } from '../texts/ordering.ts';
import { letteredOptions } from './letteredOptions.ts';
import { orderedActions } from './orderedActions.ts';
import { procedureByName } from './procedures.ts';
import { questionByName } from './questions.ts';
import { safetyLetters, safetyQuestion } from './safetyQuestion.ts';

/** A space at which no line ends, so that a letter stays with what it stands for. */
const held = '\u00a0';

/** A step that is answered with letters, as far as its row needs it. */
type LetteredStep =
  | Pick<OrderedStep, 'kind' | 'id' | 'procedure'>
  | Pick<ChosenStep, 'kind' | 'id' | 'question'>
  | Pick<SafetyStep, 'kind' | 'id' | 'topic'>;

/**
 * The line under the title of a step that is answered with letters: for the team whose block has this key, or for all teams
 * alike where none is given. The check has to be given the same key.
 */
export function letteredShown(step: LetteredStep, key = ''): readonly Shown[] {
  const whose = { step: step.id, key };
  if (step.kind === 'chosen') {
    return joined([
      ...questionByName(step.question).stem,
      ...letteredOptions(step.question, whose).flatMap<Shown>(({ letter, item }) => [`\n${letter}) `, ...item.text]),
    ]);
  }
  if (step.kind === 'safety') {
    return joined([
      ...safetyQuestion(step).stem,
      ...safetyLetters(step, whose).map(({ letter, item }) => `\n${letter}) ${item.text}`),
    ]);
  }
  const actions = orderedActions(step.procedure, whose);
  return joined([
    orderTexts.asked,
    ...actions.flatMap<Shown>(({ letter, item }, place) => [
      `${place === 0 ? ' ' : ' · '}${letter})${held}`,
      ...item.text,
    ]),
    `\n${procedureByName(step.procedure).leftovers}`,
  ]);
}

/** Words that stand beside each other as one piece, since every piece is a part of the formula in the sheet. */
function joined(pieces: readonly Shown[]): readonly Shown[] {
  const all: Shown[] = [];
  for (const piece of pieces) {
    const last = all[all.length - 1];
    if (typeof last === 'string' && typeof piece === 'string') all[all.length - 1] = `${last}${piece}`;
    else all.push(piece);
  }
  return all;
}
