import type { Step } from '../lesson/activity.ts';
import type { SlipId } from '../texts/feedback.ts';
import type { Status } from './status.ts';

/** What is known of a row once it is judged. */
export interface JudgedRow {
  /** Where the row has no step id, or one that nobody knows, there is none. */
  readonly step: Step | undefined;
  /** Empty for a row that is never judged. */
  readonly status: Status | '';
  readonly lookAt: string;
  /** Slips whose calculation gives the entry: what others go by, since the words beside it may be put differently. */
  readonly slips: readonly SlipId[];
  /** The number typed, in the unit asked, where there is one. */
  readonly value: number | undefined;
  /** What the row comes to before it is rounded, from the numbers it may rest on; people keep spare digits. */
  readonly unrounded: readonly number[];
  /** Set where a given or a setting that the row needs cannot be used, so that nothing can be said of its entry. */
  readonly isUnusable?: true;
  /** Title of the row to look at first where this one needs another look. */
  readonly root: string;
}
