import type { Shown } from '../../lesson/activity.ts';

/**
 * One answer offered, in so few words that it stands in one line. `right` is what a team reads where the hazards of what it
 * handles make it the right one, left out where it never is; `ask` where another one is, and names none.
 */
interface SafetyOption {
  readonly id: string;
  readonly text: string;
  readonly right?: string;
  readonly ask: string;
}

/** A question about the care that a substance takes. The options stand in a fixed order, so that letters never tell. */
export interface SafetyQuestion<Id extends string = string> {
  readonly name: string;
  readonly stem: readonly Shown[];
  readonly options: readonly (SafetyOption & { readonly id: Id })[];
}
