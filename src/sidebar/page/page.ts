import type { Problem } from '../../desk/outcome.ts';
import type { LessonView } from '../../desk/views.ts';
import type { ViewName } from './view.ts';

/** What a view may ask of the page around it. */
export interface Page {
  readonly lesson: LessonView;
  show(view: ViewName): void;
  /** Reads the lesson again; a failure leaves it as it was and comes back as the problem. */
  refresh(): Promise<Problem | undefined>;
}
