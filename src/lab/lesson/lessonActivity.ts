import { activityById } from './activities.ts';
import type { Activity } from './activity.ts';
import type { Settings } from './setup.ts';

/** The activity as a lesson's settings have it; undefined where nobody knows its name. */
export const lessonActivity = (settings: Pick<Settings, 'activity' | 'work the dilution from'>): Activity | undefined =>
  activityById(settings.activity, { fromRealStock: settings['work the dilution from'] === 'real stock' });
