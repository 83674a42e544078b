import type { Activity } from '../lesson/activity.ts';
import { dilutionsIn } from '../lesson/dilutionsIn.ts';
import { recipeOf } from '../numbers/recipeOf.ts';

/** How many pictures an activity gives: one for each dilution of a row of flasks, one for any other. */
export const picturedSteps = (activity: Pick<Activity, 'numbers' | 'steps'>): number =>
  recipeOf(activity)?.entry.isRow ? Math.max(1, dilutionsIn(activity)) : 1;
