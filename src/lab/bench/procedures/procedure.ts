import type { Shown } from '../../lesson/activity.ts';

/** One action of a procedure, as the sheet shows it beside its letter: a few words, and no full stop. */
export interface ProcedureAction {
  readonly id: string;
  readonly text: readonly Shown[];
}

/**
 * What a team's own substance asks for beyond what all teams need. `water first`: heat is set free where its stock meets
 * water. `dissolves hot`: what is weighed heats its water.
 */
export type Precaution = 'water first' | 'dissolves hot';

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
  /** The rule holds only for teams with this precaution. */
  readonly when?: Precaution;
}

/** Actions with the orders that are right: any in which every rule holds. */
export interface Procedure {
  readonly name: string;
  /**
   * Layout of the class sheets since which the actions are these. A sheet of an older one shows other letters, so its
   * orders cannot be read by this procedure. Raised with every change of an action, and the layout with it; where the
   * number of actions changes too, an order that is carried over is seen to be an old one.
   */
  readonly sinceLayout: number;
  /** In one order that is right for every team; the sheet shows them lettered in an order of their own. */
  readonly actions: readonly ProcedureAction[];
  /** Where spills, rinsings and what is left over go, under the actions. */
  readonly leftovers: string;
  readonly rules: readonly OrderRule[];
  /** Said with a right order to teams with that precaution. */
  readonly reminders?: Readonly<Partial<Record<Precaution, string>>>;
  /** Help at three levels: the idea, what goes with what, one place to begin. None shows a whole order. */
  readonly hints: readonly [string, string, string];
}
