import { type Lettered, type LettersOf, lettered, letterSeed } from './lettered.ts';
import type { Procedure, ProcedureAction } from './procedures/procedure.ts';
import { procedureByName } from './procedures.ts';

const brokenRules = (procedure: Procedure, order: readonly string[]): number =>
  procedure.rules.filter(
    ({ before, after, weight, when }) =>
      weight !== 'advised' && when === undefined && order.indexOf(after) < order.indexOf(before),
  ).length;

/**
 * The actions of a procedure in the mixed order in which the sheet letters them. The order is always the same for a
 * procedure, or for a team's key where one is given, and is never one that would be right read from a on: the first mix
 * that breaks three rules is taken.
 */
export function orderedActions(name: string, whose: LettersOf = {}): readonly Lettered<ProcedureAction>[] {
  const procedure = procedureByName(name);
  const seed = letterSeed(name, whose);
  for (let mix = 1; ; mix += 1) {
    const actions = lettered(`${seed} ${mix}`, procedure.actions);
    const order = actions.map(({ item }) => item.id);
    if (brokenRules(procedure, order) >= 3) return actions;
  }
}

/** The letters of a procedure's actions, in an order that works for every team: the one in which it is written. */
export function lettersInOrder(procedure: string, whose: LettersOf = {}): readonly string[] {
  const lettered = orderedActions(procedure, whose);
  return procedureByName(procedure).actions.map(({ id }) => lettered.find(({ item }) => item.id === id)?.letter ?? '');
}
