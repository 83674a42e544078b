import type { Activity } from '../activity.ts';
import { dilutionsIn } from '../dilutionsIn.ts';
import { recipeOf } from '../numbers/recipeOf.ts';

/** How many pictures an activity gives: one for each dilution of a row of flasks, one for any other. */
export const picturedSteps = (activity: Pick<Activity, 'numbers' | 'steps'>): number =>
  recipeOf(activity)?.entry.isRow ? Math.max(1, dilutionsIn(activity)) : 1;
