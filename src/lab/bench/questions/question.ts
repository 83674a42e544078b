import type { AcidOrBase } from '../../../chemistry/acidOrBase.ts';
import type { Shown } from '../../lesson/activity.ts';

/**
 * One answer offered, in a few words with no full stop, and what the team reads once it is chosen: the reason for the right
 * one, a question for any other.
 */
export interface QuestionOption {
  readonly id: string;
  readonly text: readonly Shown[];
  /** One for every solute, or one for each kind where an acid is not spoken of as a base is. */
  readonly reply: string | Readonly<Record<AcidOrBase, string>>;
}

/** A question about what the numbers mean for particles. The first option is the right one; the sheet letters them mixed. */
export interface Question {
  readonly name: string;
  readonly stem: readonly Shown[];
  readonly right: QuestionOption;
  readonly others: readonly QuestionOption[];
  /** Help at three levels: the idea, the relation, and the team's own numbers side by side. */
  readonly hints: readonly [string, string, readonly Shown[]];
}
