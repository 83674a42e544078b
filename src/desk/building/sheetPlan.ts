import type { Lesson, SheetNames } from '../../workbook/lesson.ts';
import { withLessonMark } from '../../workbook/lessonMark.ts';
import { planClassSheet } from '../../workbook/planClassSheet.ts';
import { helpLinesFor, planHelpSheet } from '../../workbook/planHelpSheet.ts';
import { planPlanSheet } from '../../workbook/planPlanSheet.ts';
import { planPollSheet } from '../../workbook/planPollSheet.ts';
import { planPrepareSheet } from '../../workbook/planPrepareSheet.ts';
import { planProgressSheet, progressOrder } from '../../workbook/planProgressSheet.ts';
import { classNames, teamsOf, withoutPractice } from '../../workbook/planWorkbook.ts';
import { readClassSheet } from '../../workbook/readClassSheet.ts';
import type { PlanReading } from '../../workbook/readLesson.ts';
import type { SheetPlan, SheetRole } from '../../workbook/workbook.ts';
import { classesInFile } from '../classes/classesInFile.ts';
import { classesInUse } from '../classes/classesInUse.ts';
import type { Book } from '../file/book.ts';
import { cellsOf, sheetToRead } from '../file/sheets.ts';
import { lessonBook, ofLesson } from '../lesson/lessonsInFile.ts';
import { lessonInFile, planInFile } from '../lesson/planInFile.ts';
import type { BuildNote, BuildTask } from './buildNote.ts';
import { nameOf } from './buildTasks.ts';

interface SheetPlanInput {
  readonly book: Book;
  readonly note: BuildNote;
  readonly task: BuildTask;
  /** Its classes are those that are at it now. */
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
  const { role } = task;
  switch (role.kind) {
    case 'poll':
      return planPollSheet(ofAllClasses(book, { note, lesson }), names);
    case 'help':
      return planHelpSheet(lesson, names, helpLines({ book, lesson }));
    case 'prepare':
      return withLessonMark({ ...planPrepareSheet(lesson, names, places), role });
    case 'progress':
      return progressPlan({ book, note, lesson, names, places });
    case 'class':
      return classPlan({ book, task, lesson, names, places });
    default:
      return withLessonMark({ ...planPlanSheet(lesson, names), role });
  }
}

const helpLines = ({ book, lesson }: Pick<SheetPlanInput, 'book' | 'lesson'>) =>
  helpLinesFor(lesson.activity, cellsOf(sheetToRead(book, { kind: 'help' })));

/** Classes that are at other lessons. */
const otherClasses = (book: Book, { wish: { lesson: id = '' } }: BuildNote) =>
  classesInUse(book).filter(({ lesson, sheet }) => lesson.id !== id && sheet?.tag?.state === 'built');

/** The lesson with the teams of all classes: every one of them answers the poll. */
function ofAllClasses(book: Book, { note, lesson }: Pick<SheetPlanInput, 'note' | 'lesson'>): Lesson {
  const own = classNames(lesson);
  const others = otherClasses(book, note).filter(({ name }) => !own.includes(name));
  const inLesson = others.map(({ name, lesson: at }) => ({ name, plan: planInFile(at.book) }));
  const known = inLesson.flatMap(({ name, plan }) => (plan.state === 'there' ? [{ name, reading: plan.reading }] : []));
  return {
    ...lesson,
    teams: [...lesson.teams, ...known.flatMap(({ name, reading }) => teamsOf(reading, name))],
    invented: lesson.invented && known.every(({ reading }) => reading.invented),
  };
}

/** A part for every class of every lesson, in the order that Progress has already. */
function progressPlan({
  book,
  note,
  lesson,
  names,
  places,
}: Omit<SheetPlanInput, 'task'> & {
  readonly names: SheetNames;
  readonly places: PlanReading['places'];
}): SheetPlan {
  const own = classNames(lesson).map((name) => {
    const { className: id = name } = classRole({ book, note, lesson }, name);
    return { className: name, teams: teamsOf(lesson, name), id };
  });
  const others = otherClasses(book, note).flatMap(({ id, name, sheet, lesson: { book: limited } }) => {
    const other = own.some((one) => one.id === id) ? undefined : lessonInFile(limited);
    if (other?.ok !== true) return [];
    const { lesson: at, reading, sheet: planSheet } = other.value;
    const itsNames = { ...names, plan: planSheet.name, classes: { [name]: sheet?.name ?? name } };
    const teams = teamsOf(at, name);
    return [{ className: name, teams, id, at: { lesson: at, names: itsNames, places: reading.places } }];
  });
  const { ids, keysAt } = progressOrder(cellsOf(sheetToRead(book, { kind: 'progress' })));
  const place = (id: string) => (ids.includes(id) ? ids.indexOf(id) : ids.length);
  const classes = [...withoutPractice([...own, ...others])].sort((one, other) => place(one.id) - place(other.id));
  return planProgressSheet({ lesson, classes, names, places, keysAt });
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
    helpLines: helpLines({ book, lesson }),
    ...(keepsRows ? { linkRows: found.linkRows } : {}),
  });
  // The sheet is found by the name that it was first built with, whatever the class is called by now.
  return withLessonMark({ ...plan, role });
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
  const id = note.wish.lesson ?? '';
  const inFile = classesInFile(lessonBook(book, id)).find((one) => isOf(one.keys));
  return task?.role ?? ofLesson({ kind: 'class', className: inFile?.id ?? name }, id);
}

function namesNow(naming: Naming): SheetNames {
  const { book, note, lesson } = naming;
  const id = note.wish.lesson ?? '';
  const named = (kind: 'plan' | 'progress' | 'help' | 'prepare' | 'poll') => nameOf(book, note, ofLesson({ kind }, id));
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
