import { activityById } from '../../lab/lesson/activities.ts';
import { picturedSteps } from '../../lab/particles/picturedSteps.ts';

/** How many pictures the activity of a lesson gives; 1 where nobody knows its name. */
export const stepsOf = (activityId: string): number => {
  const activity = activityById(activityId);
  return activity === undefined ? 1 : picturedSteps(activity);
};
