import { stockAndDilution } from './activities/stockAndDilution.ts';
import type { Activity } from './activity.ts';

/** Every activity, the everyday one first. Built when asked for: a sheet's function that needs none pays for none. */
export const allActivities = (): readonly Activity[] => [stockAndDilution()];

/** The activity of that name as the settings have it, in any case and spacing. */
export function activityById(id: string): Activity | undefined {
  const wanted = id.trim().replace(/\s+/g, ' ').toLowerCase();
  return allActivities().find((activity) => activity.id === wanted);
}
