import type { Activity } from '../lab/lesson/activity.ts';
import type { Setup, TeamPlan } from '../lab/lesson/setup.ts';
import type { Area } from './workbook.ts';

/** Where the Plan's tables stand, as found in the sheet or as planned. */
export interface PlanPlaces {
  /** Two columns, name and value, from the heading to the blank line after the last setting. */
  readonly settings: Area;
  /** One line of them, blank while no class is closed: the first below those that have a name. */
  readonly closed: Area;
  /** One column: from the heading `key` to the last spare line. */
  readonly keys: Area;
  /** One row: the headings of the givens. Behind them stands the column about today. */
  readonly givenHeadings: Area;
  /** Columns behind that one, by the name of what one team has of its own; those that a Plan lacks are left out. */
  readonly teamColumns: Readonly<Record<string, number>>;
}

/** All that the workbook is planned from. */
export interface Lesson {
  readonly setup: Setup;
  readonly activity: Activity;
  /** In the order of the Plan's lines. */
  readonly teams: readonly TeamPlan[];
  readonly givenNames: readonly string[];
  /** An invented school, and every sheet says so. */
  readonly invented: boolean;
}

/** Names of the sheets as they stand in the file, or will. */
export interface SheetNames {
  readonly plan: string;
  readonly progress: string;
  readonly help: string;
  readonly prepare: string;
  readonly poll: string;
  readonly classes: Readonly<Record<string, string>>;
}
