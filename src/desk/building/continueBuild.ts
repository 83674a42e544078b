import type { ApplyWish, AsideWish, LastTouch, ReadWish, SheetKind, SheetWish, StepReading } from '../../host/calls.ts';
import { teamsOf } from '../../workbook/planWorkbook.ts';
import type { SheetPlan, SheetRole } from '../../workbook/workbook.ts';
import { classesInUse } from '../classes/classesInUse.ts';
import { ask, type Work } from '../file/ask.ts';
import type { Book } from '../file/book.ts';
import { allKinds, buildKinds, type File, noted } from '../file/look.ts';
import { sheetInUse, sheetsInUse, sheetToRead } from '../file/sheets.ts';
import { attempt, seenOf } from '../file/writing.ts';
import { aboutAway } from '../lesson/aboutAway.ts';
import { begunOn, lessonBook } from '../lesson/lessonsInFile.ts';
import { lessonInFile } from '../lesson/planInFile.ts';
import { readAway } from '../lesson/readAway.ts';
import { readyToRest } from '../lesson/readyToRest.ts';
import { done, type Outcome, problem } from '../outcome.ts';
import { teachersKinds } from '../sheets/teachersSheets.ts';
import type { BuildState } from '../views.ts';
import { deskWords } from '../words.ts';
import { beginBuild } from './beginBuild.ts';
import { bookOpened } from './bookOpened.ts';
import { type BuildNote, type BuildTask, type LeavingTask, noteIn, roleName, stateOf } from './buildNote.ts';
import { clearRowsOf } from './clearRowsOf.ts';
import { peopleGoingAlong } from './peopleGoingAlong.ts';
import { sampleEntries } from './sampleEntries.ts';
import { samplePollEntries } from './samplePollEntries.ts';
import { classNameNow, sheetPlan } from './sheetPlan.ts';
import { tabNow } from './tabNow.ts';

/** A step more, from the Plan as it stands in the file, until finished; also of a build that another page left. */
export const continueBuild = (file: File): Work<Outcome<BuildState>> =>
  attempt(file, buildKinds, function* (known) {
    const note = noteIn(known);
    // Where only its last answer was lost, or another page went on with it, the build is there.
    if (note === undefined) return isAllBuilt(known) ? done(allBuilt) : problem(deskWords.nothingBuilding);
    const { wish } = note;
    const id = wish.lesson ?? '';
    const read = wish.opens === true ? yield* readAway(file, known, id) : done(known);
    if (!read.ok) return read;
    // One that stopped in the Plan begins again with what it was begun with.
    if (note.done === 0) return yield* beginBuild(file, read.value, wish);
    const task = note.tasks[note.done];
    if (task === undefined) return done(stateOf(note));
    const book = bookOpened(read.value, wish);
    const step = { book, note, task };
    if (task.aside !== undefined) return yield* putAside(file, { ...step, aside: task.aside });
    if (task.leaves !== undefined) return yield* leave(file, { ...step, leaves: task.leaves });
    return yield* buildSheets(file, step);
  });

/** Whether no build is under way, and every class of every lesson has its sheet. */
function isAllBuilt(book: Book): boolean {
  const classes = classesInUse(book);
  return book.note === '' && classes.length > 0 && classes.every(({ sheet }) => sheet?.tag?.state === 'built');
}
const allBuilt: BuildState = { done: 1, total: 1, label: '', finished: true };

/** A tab that got another name since the build began keeps that one: for its lesson, and for the sheet that comes instead. */
function namesNow(
  { sheet, keptName, tab }: LeavingTask,
  { sheets }: Book,
  { lesson = '' }: SheetRole,
): Pick<LeavingTask, 'keptName' | 'tab'> {
  const there = sheets.find(({ id, tag }) => id === sheet && tag !== null);
  if (keptName === undefined || there === undefined) return { tab, ...(keptName === undefined ? {} : { keptName }) };
  const now = deskWords.nameBefore(there.name);
  const away = deskWords.awayName(now, begunOn(lesson));
  return { tab: away === keptName ? tab : now, keptName: away };
}

/** The sheet that comes in place of one that leaves: it takes over the name of the tab, unless somebody gave it one. */
function insteadOf(
  book: Book,
  { note, role, tab }: { readonly note: BuildNote; readonly role: SheetRole; readonly tab: string },
): AsideWish['instead'] {
  const sheet = sheetInUse(book, role);
  if (sheet === undefined) return undefined;
  const { id: sheetId, name: was } = sheet;
  const before = note.names[roleName(role)] ?? tab;
  // One that comes back without the day of its lesson in its name was given another while it was away.
  const isTheirs = note.wish.opens === true && role.kind === 'class' && deskWords.nameBefore(before) === before;
  const isOurs = !isTheirs && [tab, before].map(withoutNumber).includes(withoutNumber(was));
  return { sheetId, was, now: isOurs ? tab : was };
}
const withoutNumber = (name: string): string => deskWords.nameBefore(name).replace(/ \d+$/, '');

interface Step {
  readonly book: Book;
  readonly note: BuildNote;
  readonly task: BuildTask;
}

function* putAside(file: File, { book, note, aside }: Step & { readonly aside: number }): Work<Outcome<BuildState>> {
  const sheet = book.sheets.find(({ id }) => id === aside);
  if (sheet === undefined || sheet.kept) return done(stepped(file, { book, note, made: false, steps: 1 }));
  const { name, tag } = sheet;
  const answer = yield* ask('putAside', {
    sheetId: aside,
    was: name,
    // One that stopped on its way has its dated name by now, unless somebody gave it another.
    keptName: name === tag?.keptName ? name : deskWords.keptName(name, note.stamp),
    ...closing({ book, note, made: false, steps: 1 }),
    seen: [],
  });
  return answer.ok ? done(taken(file, answer.value, { book, note, made: false, steps: 1 })) : answer;
}

/**
 * A sheet of a lesson that is put away, or of the sample, which is removed: what it has for the Record goes there first, or
 * what it has there and in the Poll goes as well.
 */
function* leave(
  file: File,
  { book: known, note, task, leaves }: Step & { readonly leaves: LeavingTask },
): Work<Outcome<BuildState>> {
  const { sheet: sheetId } = leaves;
  const { role } = task;
  const there = known.sheets.find(({ id, tag }) => id === sheetId && tag !== null);
  const isOpen = there !== undefined && there.tag?.state !== 'away';
  let book = known;
  if (role.kind === 'class') {
    const ready =
      leaves.keptName === undefined
        ? yield* clearRowsOf(file, book, sheetId)
        : isOpen
          ? yield* readyToRest(file, { sheetId, role, takesPeople: note.wish.takesPeople === true })
          : done(book);
    if (!ready.ok) return ready;
    book = ready.value;
  }
  const { keptName, tab } = namesNow(leaves, book, role);
  const was = book.sheets.find(({ id }) => id === sheetId)?.name ?? tab;
  const instead = leaves.instead && insteadOf(book, { note, role: leaves.instead, tab });
  const answer = yield* ask('putAside', {
    sheetId,
    was,
    keptName: keptName ?? tab,
    ...(keptName === undefined
      ? { remove: true }
      : { about: isOpen ? aboutAway(book, role, note.wish.takesPeople) : '' }),
    ...(instead === undefined ? {} : { instead }),
    ...closing({ book, note, made: false, steps: 1 }),
    seen: [],
  });
  return answer.ok ? done(taken(file, answer.value, { book, note, made: false, steps: 1 })) : answer;
}

/** Sheets that are small: they are written in one go, since each call to the script takes a second by itself. */
const small: readonly SheetKind[] = ['help', 'prepare', 'progress', 'poll'];

/**
 * The sheet that is next and the small ones behind it, unless its tab gets another name in this step: formulas name it.
 * Small ones that begin a build take along the class behind them where that is new: nobody has anything in it yet, and no
 * sheet of this step names it.
 */
function tasksOfStep(
  { tasks, done: built, wish }: BuildNote,
  { staysNamed, isNewClass }: { readonly staysNamed: boolean; readonly isNewClass: (task: BuildTask) => boolean },
): readonly BuildTask[] {
  const [first, ...later] = tasks.slice(built);
  if (first === undefined) return [];
  if (!staysNamed) return [first];
  const end = later.findIndex(
    // One that comes back gets its name in a step of its own.
    ({ role: { kind }, aside, leaves }) =>
      (aside ?? leaves) !== undefined || !small.includes(kind) || (wish.opens === true && kind === 'prepare'),
  );
  const next = later[end];
  const takesClass = small.includes(first.role.kind) && next !== undefined && isNewClass(next);
  return [first, ...later.slice(0, end < 0 ? later.length : end), ...(takesClass ? [next] : [])];
}

function* buildSheets(file: File, { book, note, task }: Step): Work<Outcome<BuildState>> {
  const inFile = lessonInFile(lessonBook(book, note.wish.lesson ?? ''));
  if (!inFile.ok) return inFile;
  const { lesson, reading, sheet: planSheet } = inFile.value;
  const className = classNameNow(lesson, task.keys ?? []);
  const isClass = task.role.kind === 'class';
  // A class that was removed from the Plan meanwhile keeps the sheet it has.
  if (isClass && className === undefined) return done(stepped(file, { book, note, made: false, steps: 1 }));
  const renaming = tabNow(book, sheetInUse(book, task.role), className);
  const isNewClass = ({ role, keys = [], aside, leaves }: BuildTask): boolean =>
    role.kind === 'class' &&
    (aside ?? leaves) === undefined &&
    sheetToRead(book, role) === undefined &&
    classNameNow(lesson, keys) !== undefined;
  const tasks = tasksOfStep(note, { staysNamed: renaming.tab === undefined, isNewClass });
  const [first, ...also] = tasks.map((one) => sheetWish({ book, note, task: one, lesson, places: reading.places }));
  if (first === undefined) return done(stateOf(note));
  const willMake = tasks.some(({ role }) => sheetInUse(book, role) === undefined);
  const steps = tasks.length;
  const answer = yield* ask('applySheet', {
    ...first,
    ...(also.length === 0 ? {} : { also }),
    ...renaming,
    ...closing({ book, note, made: willMake, steps }),
    seen: seenOf(planSheet, isClass ? sheetToRead(book, task.role) : undefined),
  });
  return answer.ok ? done(taken(file, answer.value, { book, note, made: answer.value.made, steps })) : answer;
}

function sheetWish({
  book,
  note,
  task,
  lesson,
  places,
}: Step & Pick<Parameters<typeof sheetPlan>[0], 'lesson' | 'places'>): SheetWish {
  const plan = sheetPlan({ book, note, task, lesson, places });
  const present = sheetInUse(book, task.role);
  const className = classNameNow(lesson, task.keys ?? []);
  return {
    plan,
    keptName: deskWords.keptName(present?.name ?? plan.name, note.stamp),
    firstEntries: note.wish.sample
      ? entriesOf({ book, plan, className, lesson })
      : peopleGoingAlong({ book, note, plan, className }),
  };
}

const isLast = ({ tasks, done: built }: BuildNote, steps: number): boolean => built + steps >= tasks.length;

/** Between two steps only the Plan is needed anew; at the end everything that views are made from. */
const readAfter = (note: BuildNote, steps: number): ReadWish =>
  isLast(note, steps) ? { kinds: allKinds } : { kinds: ['plan'], brief: true };

interface StepTaken {
  readonly book: Book;
  readonly note: BuildNote;
  readonly made: boolean;
  /** How many of the tasks it did. */
  readonly steps: number;
}

/** How far the build has come with a step. */
const noteAfter = ({ note, made, steps }: StepTaken): BuildNote => ({
  ...note,
  done: note.done + steps,
  made: note.made || made,
});

/** What goes with every step: what is read afterwards, and how far the build has come then. */
function closing(step: StepTaken): Pick<ApplyWish, 'read' | 'note' | 'last'> {
  const { book, note, steps } = step;
  const read = readAfter(note, steps);
  return isLast(note, steps)
    ? { read, last: lastTouch(book, note) }
    : { read, note: { after: JSON.stringify(noteAfter(step)) } };
}

/**
 * What a build leaves on the screen. Making a sheet shows it, so the last one made would be in view. After a first build
 * that is the first class: whoever pressed build wants to see the table that the students will see. Later the teacher
 * goes back to where they were. Where nothing was made nothing moves, unless one of the sheets to hide has come into view.
 */
function lastTouch(book: Book, { made: madeBefore, emptySheet, shownBefore, wish }: BuildNote): LastTouch {
  const before = book.sheets.find(({ id }) => id === shownBefore);
  const isIn = (state: string) => before?.tag?.state === state;
  const stays = before !== undefined && !before.kept && !isIn('leaving') && !isIn('away');
  const classes = sheetsInUse(book).filter(({ tag }) => tag.kind === 'class' && tag.state === 'built');
  // Whoever looked at the lesson before sees the same class in this one.
  const same = isIn('away') ? classes.find(({ tag }) => tag.className === before?.tag?.className) : undefined;
  return {
    emptySheet,
    madeBefore,
    show: stays ? before.id : ((same ?? classes[0])?.id ?? null),
    // A late team changes nothing for the others, not even which sheets are in sight.
    hide: wish.joins === undefined ? teachersKinds : [],
  };
}

/** The page knows of the step at once: the next one goes on from here. */
function stepped(file: File, step: StepTaken): BuildState {
  const next = noteAfter(step);
  const { book } = file;
  if (book !== undefined) file.book = { ...book, note: next.done < next.tasks.length ? JSON.stringify(next) : '' };
  const state = stateOf(next);
  const { cleared = [], overChecks = [] } = next.wish;
  const said = [...(cleared.length > 0 ? [deskWords.cleared(cleared)] : []), ...overChecks.map(deskWords.overChecks)];
  return state.finished && said.length > 0 ? { ...state, late: said.join(' ') } : state;
}

/** What the script answered to a step: what it has read, how far the build is, and what was typed too late. */
function taken(file: File, { reading, late }: StepReading, step: StepTaken): BuildState {
  noted(file, reading, readAfter(step.note, step.steps).kinds);
  const state = stepped(file, step);
  if (late === undefined) return state;
  return { ...state, late: [deskWords.late(late), ...(state.late === undefined ? [] : [state.late])].join(' ') };
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
