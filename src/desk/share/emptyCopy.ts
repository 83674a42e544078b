import type { EmptyFileWish } from '../../host/calls.ts';
import { activityWanted } from '../../lab/lesson/activityWanted.ts';
import { lessonActivity } from '../../lab/lesson/lessonActivity.ts';
import type { ClassSetup } from '../../lab/lesson/setup.ts';
import { numbersForTeams } from '../../lab/numbers/numbersForTeams.ts';
import { addedHints } from '../../workbook/addedHints.ts';
import { withLessonMark } from '../../workbook/lessonMark.ts';
import { neutralLesson } from '../../workbook/neutralLesson.ts';
import { planHelpSheet } from '../../workbook/planHelpSheet.ts';
import { planPlanSheet } from '../../workbook/planPlanSheet.ts';
import { classNames } from '../../workbook/planWorkbook.ts';
import type { PlanReading } from '../../workbook/readLesson.ts';
import { newSheetNames } from '../../workbook/sheetNames.ts';
import type { SheetPlan } from '../../workbook/workbook.ts';
import { type BuildNote, stateOf } from '../building/buildNote.ts';
import { newNote } from '../building/buildTasks.ts';
import { classesInUse } from '../classes/classesInUse.ts';
import { ask, type Work } from '../file/ask.ts';
import { type Book, bookAfter } from '../file/book.ts';
import { stampOf } from '../file/dayIn.ts';
import { allKinds, type File, look } from '../file/look.ts';
import { cellsOf, sheetToRead } from '../file/sheets.ts';
import { seenOf } from '../file/writing.ts';
import { bookShown, freshLessonId, ofLesson } from '../lesson/lessonsInFile.ts';
import { planInFile, planOf } from '../lesson/planInFile.ts';
import { done, numbersProblem, type Outcome, problem } from '../outcome.ts';
import type { BuildState, EmptyWish } from '../views.ts';
import { deskWords } from '../words.ts';

/**
 * Takes everything personal out of a copy that is to be given on, and begins to build it anew: the Plan with counted names
 * and, where that was asked, the teacher's own wording in Help. What is left in the file afterwards is named.
 */
export function* emptyCopy(
  file: File,
  given: unknown,
): Work<Outcome<BuildState & { readonly left: readonly string[] }>> {
  const wish = readWish(given);
  const read = yield* look(file, allKinds);
  if (!read.ok) return read;
  const book = read.value;
  const plan = planOf(bookShown(book, file.lesson), deskWords.share.noLesson);
  if (!plan.ok) return plan;
  const { reading, sheet } = plan.value;
  const activity = lessonActivity(reading.setup.settings);
  if (activity === undefined) return problem(deskWords.share.noLesson);
  const all = wish.keepTeams === true ? withAllClasses(book, reading) : done(reading);
  if (!all.ok) return all;
  const lesson = neutralLesson(all.value, activityWanted(activity, reading), { keepsNames: wish.keepTeams === true });
  const names = newSheetNames(classNames(lesson));
  const keptName = (one: SheetPlan) => deskWords.keptName(one.name, stampOf(book));
  // A file that begins anew begins with a lesson of its own.
  const id = freshLessonId(book);
  const planSheet = withLessonMark({ ...planPlanSheet(lesson, names), role: ofLesson({ kind: 'plan' }, id) });
  const help = wish.keepHints ? helpAnew(book, planHelpSheet(lesson, names)) : undefined;
  const note: BuildNote = {
    ...newNote(emptied(book, wish.removeOthers), {
      lesson,
      wish: { setup: lesson.setup, sample: false, answers: {}, lesson: id },
    }),
    done: 1,
    made: true,
  };
  const answer = yield* ask('emptyFile', {
    fileName: wish.fileName,
    anew: [
      { plan: planSheet, keptName: keptName(planSheet) },
      ...(help === undefined ? [] : [{ ...help, keptName: keptName(help.plan) }]),
    ],
    removeOthers: wish.removeOthers,
    note: JSON.stringify(note),
    seen: seenOf(sheet),
    read: { kinds: allKinds },
  });
  if (!answer.ok) return answer;
  file.book = bookAfter(undefined, answer.value.reading, allKinds);
  file.lesson = id;
  return done({ ...stateOf(note), left: answer.value.left });
}

/** The Plan with the classes of all lessons, whose teams all get numbers of this one. */
function withAllClasses(book: Book, reading: PlanReading): Outcome<PlanReading> {
  const classes = classesInUse(book).flatMap(({ name, lesson }): readonly ClassSetup[] => {
    const plan = planInFile(lesson.book);
    return plan.state === 'there' ? plan.reading.setup.classes.filter((one) => one.name === name) : [];
  });
  const setup = { ...reading.setup, classes };
  const numbers = numbersForTeams(setup);
  return numbers.ok ? done({ ...reading, setup, teams: numbers.value.teams }) : numbersProblem(numbers.error);
}

/** Help as it is to be, with lines that the teacher added by hand below the planned ones. */
function helpAnew(book: Book, plan: SheetPlan): Omit<EmptyFileWish['anew'][number], 'keptName'> | undefined {
  const before = sheetToRead(book, { kind: 'help' });
  const spare = plan.writable[1];
  if (before === undefined || spare === undefined) return undefined;
  const lines = addedHints(cellsOf(before), plan).slice(0, spare.rows);
  const firstEntries = Array.from({ length: lines.length === 0 ? 0 : spare.columns }, (_, column) => ({
    row: spare.row,
    column: spare.column + column,
    texts: lines.map((line) => line[column] ?? ''),
  }));
  return { plan, firstEntries };
}

/** The file as it will be: nothing of ours, and sheets of others where they stay. */
const emptied = (book: Book, removesOthers: boolean): Book => ({
  ...book,
  note: '',
  emptySheet: null,
  sheets: removesOthers ? [] : book.sheets.filter(({ tag, kept }) => tag === null && !kept),
});

function readWish(given: unknown): EmptyWish {
  const wish = typeof given === 'object' && given !== null ? (given as Record<string, unknown>) : {};
  return {
    fileName: typeof wish.fileName === 'string' ? wish.fileName.trim() : '',
    keepHints: wish.keepHints === true,
    removeOthers: wish.removeOthers === true,
    keepTeams: wish.keepTeams === true,
  };
}
