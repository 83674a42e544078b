import type { Lesson, SheetNames } from '../../workbook/lesson.ts';
import { planClassSheet } from '../../workbook/planClassSheet.ts';
import { planHelpSheet } from '../../workbook/planHelpSheet.ts';
import { planPlanSheet } from '../../workbook/planPlanSheet.ts';
import { planPollSheet } from '../../workbook/planPollSheet.ts';
import { planPrepareSheet } from '../../workbook/planPrepareSheet.ts';
import { planProgressSheet } from '../../workbook/planProgressSheet.ts';
import { classNames, teamsOf, withoutPractice } from '../../workbook/planWorkbook.ts';
import { readClassSheet } from '../../workbook/readClassSheet.ts';
import type { PlanReading } from '../../workbook/readLesson.ts';
import type { SheetPlan, SheetRole } from '../../workbook/workbook.ts';
import { classesInFile } from '../classes/classesInFile.ts';
import type { Book } from '../file/book.ts';
import { cellsOf, sheetToRead } from '../file/sheets.ts';
import type { BuildNote, BuildTask } from './buildNote.ts';
import { nameOf } from './buildTasks.ts';

interface SheetPlanInput {
  readonly book: Book;
  readonly note: BuildNote;
  readonly task: BuildTask;
  readonly lesson: Lesson;
}

/** The plan of one sheet. Formulas name the sheets as they are called now: a teacher may rename them between two steps. */
export function sheetPlan({
  book,
  note,
  task,
  lesson,
  places,
}: SheetPlanInput & { readonly places: PlanReading['places'] }): SheetPlan {
  const names = namesNow({ book, note, lesson });
  switch (task.role.kind) {
    case 'poll':
      return planPollSheet(lesson, names);
    case 'help':
      return planHelpSheet(lesson, names);
    case 'prepare':
      return planPrepareSheet(lesson, names, places);
    case 'progress': {
      const classes = classNames(lesson).map((name) => {
        const { className: id = name } = classRole({ book, note, lesson }, name);
        return { className: name, teams: teamsOf(lesson, name), id };
      });
      return planProgressSheet({ lesson, classes: withoutPractice(classes), names, places });
    }
    case 'class':
      return classPlan({ book, task, lesson, names, places });
    default:
      return planPlanSheet(lesson, names);
  }
}

function classPlan({
  book,
  task: { role, keys = [] },
  lesson,
  names,
  places,
}: Omit<SheetPlanInput, 'note'> & { readonly names: SheetNames; readonly places: PlanReading['places'] }): SheetPlan {
  const className = classNameNow(lesson, keys) ?? '';
  const found = readClassSheet(cellsOf(sheetToRead(book, role)));
  const order = found?.blocks.map(({ key }) => key) ?? [];
  const place = (key: string) => (order.includes(key) ? order.indexOf(key) : order.length);
  // Blocks stay where they are, however the Plan is sorted now.
  const teams = [...teamsOf(lesson, className)].sort((one, other) => place(one.key) - place(other.key));
  const keepsRows = found !== undefined && found.blocks.length > 0;
  const plan = planClassSheet({
    lesson,
    className,
    teams,
    names,
    places,
    ...(keepsRows ? { linkRows: found.linkRows } : {}),
  });
  // The sheet is found by the name that it was first built with, whatever the class is called by now.
  return { ...plan, role };
}

/** What the class of these teams is called in the Plan; undefined where none of them is in it any more. */
export const classNameNow = (lesson: Pick<Lesson, 'teams'>, keys: readonly string[]): string | undefined =>
  lesson.teams.find(({ key }) => keys.includes(key))?.className;

type Naming = Omit<SheetPlanInput, 'task'>;

/** What the sheet of a class is found by. */
function classRole({ book, note, lesson }: Naming, name: string): SheetRole {
  const keys = teamsOf(lesson, name).map(({ key }) => key);
  const isOf = (own: readonly string[] | undefined) => own?.some((key) => keys.includes(key)) === true;
  const task = note.tasks.find((one) => isOf(one.keys));
  const inFile = classesInFile(book).find((one) => isOf(one.keys));
  return task?.role ?? { kind: 'class', className: inFile?.id ?? name };
}

function namesNow(naming: Naming): SheetNames {
  const { book, note, lesson } = naming;
  const named = (kind: 'plan' | 'progress' | 'help' | 'prepare' | 'poll') => nameOf(book, note, { kind });
  const classes: Record<string, string> = Object.create(null);
  for (const name of classNames(lesson)) classes[name] = nameOf(book, note, classRole(naming, name));
  return {
    plan: named('plan'),
    progress: named('progress'),
    help: named('help'),
    prepare: named('prepare'),
    poll: named('poll'),
    classes,
  };
}
