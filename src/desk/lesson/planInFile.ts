import { errorText } from '../../errors/errorText.ts';
import { lessonActivity } from '../../lab/lesson/lessonActivity.ts';
import { isTeam } from '../../lab/lesson/practice.ts';
import { activityInUse } from '../../workbook/activityInUse.ts';
import type { Lesson } from '../../workbook/lesson.ts';
import { type PlanReading, readLesson } from '../../workbook/readLesson.ts';
import type { Book, BookSheet } from '../file/book.ts';
import { cellsOf, sheetToRead } from '../file/sheets.ts';
import { done, type Outcome, type Problem, problem } from '../outcome.ts';
import { deskWords } from '../words.ts';

/** The Plan of a file: there is none, there is one that cannot be read, or there it is. Never one taken for another. */
export type PlanInFile =
  | { readonly state: 'none' }
  | { readonly state: 'unreadable'; readonly problem: Problem; readonly sheet: BookSheet }
  | {
      readonly state: 'there';
      /** Without the teams of classes that were put away from the lesson. */
      readonly reading: PlanReading;
      /** All that stands in the sheet. */
      readonly whole: PlanReading;
      readonly sheet: BookSheet;
    };

export function planInFile(book: Book): PlanInFile {
  const sheet = sheetToRead(book, { kind: 'plan' });
  if (sheet === undefined) return { state: 'none' };
  const reading = readLesson(cellsOf(sheet));
  if (reading.ok) return { state: 'there', reading: withoutAway(reading.value, book), whole: reading.value, sheet };
  // One that was being made when the build stopped, and holds no lines yet.
  if (sheet.tag?.state === 'building') return { state: 'none' };
  return { state: 'unreadable', problem: { message: errorText(reading.error) }, sheet };
}

function withoutAway(whole: PlanReading, { away = [] }: Pick<Book, 'away'>): PlanReading {
  if (away.length === 0) return whole;
  const teams = whole.teams.filter(({ key }) => !away.includes(key));
  const names = teams.map(({ className }) => className);
  const classes = whole.setup.classes
    .filter(({ name }) => names.includes(name))
    .map(({ name }) => ({
      name,
      teams: teams.filter((line) => isTeam(line) && line.className === name).map(({ team }) => team),
    }));
  return { ...whole, teams, setup: { ...whole.setup, classes } };
}

/** The Plan, or what to do where there is none or none that can be read. */
export function planOf(
  book: Book,
  none: Parameters<typeof problem>[0],
): Outcome<Omit<Extract<PlanInFile, { readonly state: 'there' }>, 'state'>> {
  const plan = planInFile(book);
  if (plan.state === 'none') return problem(none);
  return plan.state === 'unreadable' ? { ok: false, problem: plan.problem } : done(plan);
}

export interface LessonInFile {
  readonly lesson: Lesson;
  readonly reading: PlanReading;
  /** Lines of classes that were put away included. */
  readonly whole: PlanReading;
  readonly sheet: BookSheet;
}

/** The lesson as the Plan has it, whole enough to build its sheets from. */
export function lessonInFile(book: Book): Outcome<LessonInFile> {
  const plan = planOf(book, { ...deskWords.planUnfinished, received: 'none' });
  if (!plan.ok) return plan;
  const { reading, whole, sheet } = plan.value;
  const { setup, teams, givenNames, invented } = reading;
  const activity = lessonActivity(setup.settings);
  if (activity === undefined) return problem({ ...deskWords.setupProblems.activity, received: `“${setup.activity}”` });
  const missing = activity.givens.find(({ name }) => !givenNames.includes(name));
  if (missing !== undefined)
    return problem({ ...deskWords.headingMissing(missing.name), received: 'a Plan without it' });
  return done({
    reading,
    whole,
    sheet,
    lesson: { setup, activity: activityInUse(activity, { setup, teams: whole.teams }), teams, givenNames, invented },
  });
}
