import type { Shown } from '../activity.ts';

/** One answer offered, and what the team reads once it is chosen: the reason for the right one, a question for any other. */
export interface QuestionOption {
  readonly id: string;
  readonly text: readonly Shown[];
  readonly reply: string;
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
