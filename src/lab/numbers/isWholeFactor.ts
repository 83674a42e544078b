import { isSame } from './isSame.ts';

/** Whether one number is a whole number of times another. */
export const isWholeFactor = (larger: number, smaller: number): boolean =>
  isSame(larger / smaller, Math.round(larger / smaller));
