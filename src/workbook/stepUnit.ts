import { isLettered } from '../lab/bench/isLettered.ts';
import type { Step } from '../lab/lesson/activity.ts';
import { words } from './words.ts';

/** Unit of an entry, or what else is typed there. */
export const stepUnit = (step: Pick<Step, 'kind' | 'unit'>): string =>
  isLettered(step) ? words.class.unit[step.kind] : step.unit;
