import type { Status } from './status.ts';

/** One row's check with what to look at, in words for the team; empty where there is nothing to say. */
export interface RowCheck {
  readonly status: Status;
  readonly lookAt: string;
  /** Set where a setting that it needs cannot be used. */
  readonly isUnusable?: true;
}
