import { hazardDataDate } from './cautionList.generated.ts';

/** Months after which a newer copy of the hazard data is due: the act is changed once or twice a year (house choice). */
const monthsFresh = 18;

export interface HazardDataAge {
  /** State of the act that the figures were read from, such as `2026-07-01`. */
  readonly date: string;
  readonly isOld: boolean;
}

/** A day as a number that grows by one for each month and stays below that within it. */
const months = (date: string): number => {
  const [year = 0, month = 0, day = 0] = date.split('-').map(Number);
  return year * 12 + month + (day - 1) / 31;
};

/** How old the hazard data is on a day, which is given as `2027-12-31`. */
export const hazardDataAge = (today: string): HazardDataAge => ({
  date: hazardDataDate,
  isOld: months(today) - months(hazardDataDate) > monthsFresh,
});
