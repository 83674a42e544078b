import { orderedActions } from './orderedActions.ts';
import { procedureByName } from './procedures.ts';

/** The letters of a procedure's actions, in an order that works: the one in which the procedure is written. */
export function lettersInOrder(procedure: string): readonly string[] {
  const lettered = orderedActions(procedure);
  return procedureByName(procedure).actions.map(({ id }) => lettered.find(({ item }) => item.id === id)?.letter ?? '');
}
