import { isTeam } from '../lab/lesson/practice.ts';
import { layoutVersion } from './layout.ts';
import type { Lesson } from './lesson.ts';
import { planClassSheet } from './planClassSheet.ts';
import { planHelpSheet } from './planHelpSheet.ts';
import { planPlaces, planPlanSheet } from './planPlanSheet.ts';
import { planPollSheet } from './planPollSheet.ts';
import { planPrepareSheet } from './planPrepareSheet.ts';
import { planProgressSheet } from './planProgressSheet.ts';
import { newSheetNames } from './sheetNames.ts';
import type { WorkbookPlan } from './workbook.ts';

/** A whole new workbook for a lesson. Formulas refer only to sheets named here. */
export function planWorkbook(lesson: Lesson, names = newSheetNames(classNames(lesson))): WorkbookPlan {
  const places = planPlaces(lesson);
  const classes = classNames(lesson).map((className) => ({ className, teams: teamsOf(lesson, className) }));
  return {
    layoutVersion,
    sheets: [
      planPlanSheet(lesson, names),
      planHelpSheet(lesson, names),
      planPrepareSheet(lesson, names, places),
      ...classes.map(({ className, teams }) => planClassSheet({ lesson, className, teams, names, places })),
      planProgressSheet({ lesson, classes: withoutPractice(classes), names, places }),
      planPollSheet(lesson, names),
    ],
  };
}

/** Classes of the lesson in the order in which the Plan names them first. */
export const classNames = ({ teams }: Pick<Lesson, 'teams'>): readonly string[] => [
  ...new Set(teams.map(({ className }) => className)),
];

/** Progress is about the teams of the lesson. */
export const withoutPractice = <T extends { readonly teams: Lesson['teams'] }>(classes: readonly T[]): readonly T[] =>
  classes.map((one) => ({ ...one, teams: one.teams.filter(isTeam) }));

export const teamsOf = ({ teams }: Pick<Lesson, 'teams'>, className: string) =>
  teams.filter((team) => team.className === className);
