/** What a check says of an entry, in the words of the contract. */
export type Status = 'on target' | 'close' | 'follows' | 'not yet' | 'blank' | 'unreadable' | 'kept';

/** One row's check with what to look at, in words for the team; empty where there is nothing to say. */
export interface RowCheck {
  readonly status: Status;
  readonly lookAt: string;
  /** Set where a setting that it needs cannot be used. */
  readonly isUnusable?: true;
}
