import type { LessonView } from '../../host/calls.ts';
import type { ViewName } from './view.ts';

/** What a view may ask of the page around it. */
export interface Page {
  readonly lesson: LessonView;
  show(view: ViewName): void;
}
