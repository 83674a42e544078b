/** One action of a procedure, as the sheet shows it beside its letter. */
export interface ProcedureAction {
  readonly id: string;
  readonly text: string;
}

/**
 * Why one action comes before another. `safety`: someone can be hurt, said first and without softening.
 * `needed`: the solution would be wrong. `advised`: good practice, so another order is still right and gets a tip.
 */
export interface OrderRule {
  readonly before: string;
  readonly after: string;
  readonly weight: 'safety' | 'needed' | 'advised';
  /** The reason as a question (for `advised`, as a tip), without saying what comes where. */
  readonly ask: string;
  /** The rule says nothing where this other order was chosen. */
  readonly unless?: { readonly before: string; readonly after: string };
}

/** Actions with the orders that are right: any in which every rule holds. */
export interface Procedure {
  readonly name: string;
  /** In one order that is right; the sheet shows them lettered in an order of their own. */
  readonly actions: readonly ProcedureAction[];
  readonly rules: readonly OrderRule[];
  /** Help at three levels: the idea, what goes with what, one place to begin. None shows a whole order. */
  readonly hints: readonly [string, string, string];
}
