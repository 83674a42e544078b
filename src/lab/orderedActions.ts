import { type Lettered, lettered } from './lettered.ts';
import type { Procedure, ProcedureAction } from './procedures/procedure.ts';
import { procedureByName } from './procedures.ts';
import { seededRandom, shuffled } from './seededRandom.ts';

const brokenRules = (procedure: Procedure, order: readonly string[]): number =>
  procedure.rules.filter(
    ({ before, after, weight }) => weight !== 'advised' && order.indexOf(after) < order.indexOf(before),
  ).length;

/**
 * The actions of a procedure in the mixed order in which the sheet letters them. The order is always the same for a
 * procedure, and is never one that would be right read from a on: the first mix that breaks three rules is taken.
 */
export function orderedActions(name: string): readonly Lettered<ProcedureAction>[] {
  const procedure = procedureByName(name);
  for (let mix = 1; ; mix += 1) {
    const actions = shuffled(procedure.actions, seededRandom(`${name} ${mix}`));
    const order = actions.map(({ id }) => id);
    if (brokenRules(procedure, order) >= 3) return lettered(`${name} ${mix}`, procedure.actions);
  }
}
