import type { Step } from '../lesson/activity.ts';
import type { TeamLesson } from '../lesson/teamLesson.ts';
import type { SlipId } from '../texts/feedback.ts';
import type { Status } from './rowCheck.ts';

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

/** What was measured stays what it is, however far from the plan: other rows go on from it. */
export const isFact = ({ step, value }: JudgedRow): boolean => step?.kind === 'measured' && value !== undefined;

/** Whether other rows may go on from a row without a second thought. */
export const isSound = ({ status }: Pick<JudgedRow, 'status'>): boolean => status === 'on target' || status === 'close';

/** What a row is judged with beside its own entry: the lesson, the team's numbers and the other rows of the block. */
export interface Surroundings extends TeamLesson {
  /** A step of the activity, or a bare quantity as one. */
  readonly stepOf: (id: string) => Step | undefined;
  /** The row with this step, judged; undefined where the block has none. */
  readonly rowOf: (id: string) => JudgedRow | undefined;
}
