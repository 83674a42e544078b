import { activityById, allActivities } from '../../src/lab/lesson/activities.ts';
import { sampleSetup } from '../../src/lab/lesson/sampleLesson.ts';
import type { Setup } from '../../src/lab/lesson/setup.ts';
import { startingGivens } from '../../src/lab/lesson/startingGivens.ts';

/** The sample's plan with another activity and what a new plan of that starts from. */
export function startOf(id: string): Setup {
  const activity = activityById(id);
  const setup = sampleSetup();
  if (activity === undefined) return { ...setup, activity: id };
  return {
    ...setup,
    activity: id,
    settings: { ...setup.settings, activity: id },
    givens: startingGivens(activity),
  };
}

/** Names of every activity but the everyday one. */
export const otherActivities = allActivities()
  .map(({ id }) => id)
  .filter((id) => id !== 'stock and dilution');
