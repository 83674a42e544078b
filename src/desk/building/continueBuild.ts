import type { ApplyWish, LastTouch } from '../../host/calls.ts';
import { freeName } from '../../workbook/freeName.ts';
import { teamsOf } from '../../workbook/planWorkbook.ts';
import { recognisedSheet } from '../../workbook/recognisedSheet.ts';
import { tabName } from '../../workbook/sheetNames.ts';
import type { SheetPlan } from '../../workbook/workbook.ts';
import { ask, type Work } from '../file/ask.ts';
import type { Book } from '../file/book.ts';
import { allKinds, buildKinds, type File, noted } from '../file/look.ts';
import { cellsOf, sheetInUse, sheetsInUse, sheetToRead } from '../file/sheets.ts';
import { attempt, seenOf } from '../file/writing.ts';
import { aboutAway } from '../lesson/aboutAway.ts';
import { awakened, lessonBook } from '../lesson/lessonsInFile.ts';
import { lessonInFile } from '../lesson/planInFile.ts';
import { readAway } from '../lesson/readAway.ts';
import { readyToRest } from '../lesson/readyToRest.ts';
import { done, type Outcome, problem } from '../outcome.ts';
import type { BuildState } from '../views.ts';
import { deskWords } from '../words.ts';
import { beginBuild } from './beginBuild.ts';
import { type BuildNote, type BuildTask, type LeavingTask, noteIn, stateOf } from './buildNote.ts';
import { clearRowsOf } from './clearRowsOf.ts';
import { peopleGoingAlong } from './peopleGoingAlong.ts';
import { sampleEntries } from './sampleEntries.ts';
import { samplePollEntries } from './samplePollEntries.ts';
import { classNameNow, sheetPlan } from './sheetPlan.ts';

/** One sheet more, from the Plan as it stands in the file, until finished; also of a build that another page left. */
export const continueBuild = (file: File): Work<Outcome<BuildState>> =>
  attempt(file, buildKinds, function* (known) {
    const note = noteIn(known);
    if (note === undefined) return problem(deskWords.nothingBuilding);
    const { wish } = note;
    const id = wish.lesson ?? '';
    const read = wish.opens === true ? yield* readAway(file, known, id) : done(known);
    if (!read.ok) return read;
    // One that stopped in the Plan begins again with what it was begun with.
    if (note.done === 0) return yield* beginBuild(file, read.value, wish);
    const task = note.tasks[note.done];
    if (task === undefined) return done(stateOf(note));
    const book = wish.opens === true ? awakened(read.value, id) : read.value;
    const step = { book, note, task };
    if (task.aside !== undefined) return yield* putAside(file, { ...step, aside: task.aside });
    if (task.leaves !== undefined) return yield* leave(file, { ...step, leaves: task.leaves });
    return yield* buildSheet(file, step);
  });

interface Step {
  readonly book: Book;
  readonly note: BuildNote;
  readonly task: BuildTask;
}

function* putAside(file: File, { book, note, aside }: Step & { readonly aside: number }): Work<Outcome<BuildState>> {
  const sheet = book.sheets.find(({ id }) => id === aside);
  if (sheet === undefined || sheet.kept) return done(stepped(file, { note, made: false }));
  const answer = yield* ask('putAside', {
    sheetId: aside,
    keptName: sheet.tag?.keptName ?? deskWords.keptName(sheet.name, note.stamp),
    ...closing({ book, note, made: false }),
    seen: [],
  });
  if (!answer.ok) return answer;
  noted(file, answer.value.reading, readAfter(note));
  return done(stepped(file, { note, made: false }));
}

/**
 * A sheet of a lesson that is put away, or of the sample, which is removed: what it has for the Record goes there first, or
 * what it has there and in the Poll goes as well.
 */
function* leave(
  file: File,
  { book: known, note, task, leaves }: Step & { readonly leaves: LeavingTask },
): Work<Outcome<BuildState>> {
  const { sheet: sheetId, keptName, tab } = leaves;
  const { role } = task;
  const there = known.sheets.find(({ id, tag }) => id === sheetId && tag !== null);
  const isOpen = there !== undefined && there.tag?.state !== 'away';
  let book = known;
  if (role.kind === 'class') {
    const ready =
      keptName === undefined
        ? yield* clearRowsOf(file, book, sheetId)
        : isOpen
          ? yield* readyToRest(file, { sheetId, role, takesPeople: note.wish.takesPeople === true })
          : done(book);
    if (!ready.ok) return ready;
    book = ready.value;
  }
  const instead = leaves.instead && sheetInUse(book, leaves.instead)?.id;
  const answer = yield* ask('putAside', {
    sheetId,
    keptName: keptName ?? tab,
    ...(keptName === undefined ? { remove: true } : { about: isOpen ? aboutAway(book, role) : '' }),
    ...(instead === undefined ? {} : { instead: { sheetId: instead, tab } }),
    ...closing({ book, note, made: false }),
    seen: [],
  });
  if (!answer.ok) return answer;
  const { reading, late } = answer.value;
  noted(file, reading, readAfter(note));
  const state = stepped(file, { note, made: false });
  return done(late === undefined ? state : { ...state, late: deskWords.late(late) });
}

function* buildSheet(file: File, { book, note, task }: Step): Work<Outcome<BuildState>> {
  const inFile = lessonInFile(lessonBook(book, note.wish.lesson ?? ''));
  if (!inFile.ok) return inFile;
  const { lesson, reading, sheet: planSheet } = inFile.value;
  const { role } = task;
  const className = classNameNow(lesson, task.keys ?? []);
  // A class that was removed from the Plan meanwhile keeps the sheet it has.
  if (role.kind === 'class' && className === undefined) return done(stepped(file, { note, made: false }));
  const plan = sheetPlan({ book, note, task, lesson, places: reading.places });
  const present = sheetInUse(book, role);
  const read = sheetToRead(book, role);
  const willMake = present === undefined;
  const answer = yield* ask('applySheet', {
    plan,
    keptName: deskWords.keptName(present?.name ?? plan.name, note.stamp),
    firstEntries: note.wish.sample
      ? entriesOf({ book, plan, className, lesson })
      : peopleGoingAlong({ book, note, plan, className }),
    ...(role.kind === 'class' ? renamedTab(book, { task, className: className ?? '' }) : {}),
    ...closing({ book, note, made: willMake }),
    seen: seenOf(planSheet, role.kind === 'class' ? read : undefined),
  });
  if (!answer.ok) return answer;
  const { reading: after, made, late } = answer.value;
  noted(file, after, readAfter(note));
  const state = stepped(file, { note, made });
  return done(late === undefined ? state : { ...state, late: deskWords.late(late) });
}

const isLast = ({ tasks, done: built }: BuildNote): boolean => built + 1 >= tasks.length;

/** Between two sheets only the Plan is needed anew; at the end everything that views are made from. */
const readAfter = (note: BuildNote) => (isLast(note) ? allKinds : (['plan'] as const));

/** What goes with every step: what is read afterwards, and how far the build has come then. */
function closing({
  book,
  note,
  made,
}: {
  readonly book: Book;
  readonly note: BuildNote;
  readonly made: boolean;
}): Pick<ApplyWish, 'read' | 'note' | 'last'> {
  const read = { kinds: readAfter(note) };
  const next: BuildNote = { ...note, done: note.done + 1, made: note.made || made };
  return isLast(note) ? { read, last: lastTouch(book, next) } : { read, note: { after: JSON.stringify(next) } };
}

/**
 * What a build leaves on the screen. Making a sheet shows it, so the last one made would be in view. After a first build
 * that is the first class: whoever pressed build wants to see the table that the students will see. Later the teacher
 * goes back to where they were. Where nothing was made nothing moves.
 */
function lastTouch(book: Book, { made, emptySheet, shownBefore }: BuildNote): LastTouch {
  if (!made) return { emptySheet, show: null };
  const before = book.sheets.find(({ id }) => id === shownBefore);
  const isIn = (state: string) => before?.tag?.state === state;
  const stays = before !== undefined && !before.kept && !isIn('leaving') && !isIn('away');
  const classes = sheetsInUse(book).filter(({ tag }) => tag.kind === 'class' && tag.state === 'built');
  // Whoever looked at the lesson before sees the same class in this one.
  const same = isIn('away') ? classes.find(({ tag }) => tag.className === before?.tag?.className) : undefined;
  return { emptySheet, show: stays ? before.id : ((same ?? classes[0])?.id ?? null) };
}

/** The page knows of the step at once: the next one goes on from here. */
function stepped(file: File, { note, made }: { readonly note: BuildNote; readonly made: boolean }): BuildState {
  const next: BuildNote = { ...note, done: note.done + 1, made: note.made || made };
  const { book } = file;
  if (book !== undefined) file.book = { ...book, note: next.done < next.tasks.length ? JSON.stringify(next) : '' };
  return stateOf(next);
}

/** A tab that is still called as its class was follows the name of the class. */
function renamedTab(
  book: Book,
  { task, className }: { readonly task: BuildTask; readonly className: string },
): Pick<ApplyWish, 'tab'> {
  const sheet = sheetInUse(book, task.role);
  const before = recognisedSheet(cellsOf(sheet))?.className ?? '';
  if (sheet === undefined || before === '' || before === className || sheet.name !== tabName(before)) return {};
  const others = book.sheets.filter(({ id }) => id !== sheet.id).map(({ name }) => name);
  return { tab: { was: sheet.name, now: freeName(tabName(className), others) } };
}

function entriesOf({
  book,
  plan,
  className,
  lesson,
}: {
  readonly book: Book;
  readonly plan: SheetPlan;
  readonly className: string | undefined;
  readonly lesson: Parameters<typeof teamsOf>[0];
}): NonNullable<ApplyWish['firstEntries']> {
  if (plan.role.kind === 'poll') return samplePollEntries(book);
  if (plan.role.kind !== 'class' || className === undefined) return [];
  return sampleEntries({ plan, className, teams: teamsOf(lesson, className), book });
}
