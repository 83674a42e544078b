import type { LettersOf } from './lettered.ts';
import { orderedActions } from './orderedActions.ts';
import { procedureByName } from './procedures.ts';

/** The letters of a procedure's actions, in an order that works for every team: the one in which it is written. */
export function lettersInOrder(procedure: string, whose: LettersOf = {}): readonly string[] {
  const lettered = orderedActions(procedure, whose);
  return procedureByName(procedure).actions.map(({ id }) => lettered.find(({ item }) => item.id === id)?.letter ?? '');
}
