import type { Settings } from '../lesson/setup.ts';
import { mostSeats } from './exitStep.ts';

/** Students of a team that a lesson has an exit question for; none where the setting says something else. */
export function seatsOf(settings: Pick<Settings, 'exit questions'>): number {
  const seats = Number(settings['exit questions']);
  return Number.isInteger(seats) && seats > 0 && seats <= mostSeats ? seats : 0;
}
