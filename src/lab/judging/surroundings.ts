import type { Step } from '../lesson/activity.ts';
import type { TeamLesson } from '../lesson/teamLesson.ts';
import type { JudgedRow } from './judgedRow.ts';

/** What a row is judged with beside its own entry: the lesson, the team's numbers and the other rows of the block. */
export interface Surroundings extends TeamLesson {
  /** A step of the activity, or a bare quantity as one. */
  readonly stepOf: (id: string) => Step | undefined;
  /** The row with this step, judged; undefined where the block has none. */
  readonly rowOf: (id: string) => JudgedRow | undefined;
}
