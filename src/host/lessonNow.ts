import type { Activity } from '../lab/activity.ts';
import { lessonActivity } from '../lab/lessonActivity.ts';
import type { PlanReading } from '../workbook/readLesson.ts';
import { planInUse } from './build.ts';
import type { Outcome } from './calls.ts';
import { done, problem } from './outcome.ts';
import { openSpreadsheet } from './spreadsheet.ts';
import { hostWords } from './words.ts';

/** The lesson as the Plan has it now, edits by hand included; refused in a file without one. */
export function lessonNow(): Outcome<{ readonly plan: PlanReading; readonly activity: Activity }> {
  const plan = planInUse(openSpreadsheet());
  const activity = plan && lessonActivity(plan.setup.settings);
  if (plan === undefined || activity === undefined) {
    return problem({ ...hostWords.noLesson, received: plan === undefined ? 'none' : `“${plan.setup.activity}”` });
  }
  return done({ plan, activity });
}

export const markOf = ({ setup }: PlanReading): 'point' | 'comma' =>
  setup.settings['decimal mark'] === 'comma' ? 'comma' : 'point';

/** Today as people write it on a label, in the spreadsheet's own time zone. */
export const todayText = (): string =>
  Utilities.formatDate(new Date(), openSpreadsheet().getSpreadsheetTimeZone(), 'yyyy-MM-dd');
