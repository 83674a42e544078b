import type { Activity } from '../../lab/lesson/activity.ts';
import { activityWanted } from '../../lab/lesson/activityWanted.ts';
import { lessonActivity } from '../../lab/lesson/lessonActivity.ts';
import { lettersByTeamSince } from '../../workbook/layout.ts';
import type { PlanReading } from '../../workbook/readLesson.ts';
import type { Book, BookSheet } from '../file/book.ts';
import { done, type Outcome, problem } from '../outcome.ts';
import { deskWords } from '../words.ts';
import { planOf } from './planInFile.ts';

/** The lesson as the Plan has it now, edits by hand included; refused in a file without one. */
export function lessonNow(
  book: Book,
): Outcome<{ readonly plan: PlanReading; readonly activity: Activity; readonly sheet: BookSheet }> {
  const found = planOf(book, deskWords.noLesson);
  if (!found.ok) return found;
  const { reading: plan, sheet } = found.value;
  const activity = lessonActivity(plan.setup.settings);
  if (activity === undefined) return problem({ ...deskWords.noLesson, received: `“${plan.setup.activity}”` });
  return done({ plan, activity: activityWanted(activity, plan), sheet });
}

/** Whether the sheets letter actions and options by the key of the team: those of an earlier layout do not. */
export const lettersByTeam = ({ layout }: Pick<PlanReading, 'layout'>): boolean => Number(layout) >= lettersByTeamSince;
