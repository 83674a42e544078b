import type { PlanReading } from '../../workbook/readLesson.ts';

/** Keys of the teams that are marked absent on this day; a mark of another day counts no more. */
export const absentKeys = (plan: PlanReading | undefined, day: string): readonly string[] =>
  (plan?.absent ?? []).filter((mark) => mark.day === '' || mark.day === day).map(({ key }) => key);
