import type { Activity } from '../lesson/activity.ts';
import type { Settings } from '../lesson/setup.ts';
import { exitSteps } from './exitSteps.ts';
import { seatsOf } from './seatsOf.ts';

/** The activity with the questions that each seat of a team answers at the end. */
export const withExitSteps = (activity: Activity, settings: Pick<Settings, 'exit questions'>): Activity => ({
  ...activity,
  steps: [...activity.steps, ...exitSteps(activity, seatsOf(settings))],
});
