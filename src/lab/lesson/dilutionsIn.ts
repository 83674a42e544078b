import type { Activity } from './activity.ts';

/** How many dilutions an activity asks for, one after the other: its rows that find a diluted molarity. */
export const dilutionsIn = ({ steps }: Pick<Activity, 'steps'>): number =>
  steps.filter((step) => step.kind === 'calculated' && step.quantity === 'diluted molarity').length;
