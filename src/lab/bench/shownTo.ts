import type { Shown, Step } from '../lesson/activity.ts';
import { isLettered } from './isLettered.ts';
import { letteredShown } from './letteredShown.ts';

/** What a row asks; where it is answered with letters, in those of the team whose block has this key. */
export const shownTo = (step: Step, key: string): readonly Shown[] =>
  isLettered(step) ? letteredShown(step, key) : step.shown;
