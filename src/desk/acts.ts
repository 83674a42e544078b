import type { SheetKind } from '../host/calls.ts';
import { continueBuild } from './building/continueBuild.ts';
import { nextLesson } from './building/nextLesson.ts';
import { openEarlier } from './building/openEarlier.ts';
import { removeSample } from './building/removeSample.ts';
import { startBuild, startSample } from './building/startBuild.ts';
import { checkAgain } from './classes/checkAgain.ts';
import { classCalled } from './classes/classCalled.ts';
import { classView } from './classes/classView.ts';
import { closeClass } from './classes/closeClass.ts';
import { goToTeam } from './classes/goToTeam.ts';
import { showExitChecks } from './classes/showExitChecks.ts';
import { workOutChecks } from './classes/workOutChecks.ts';
import { coverView } from './cover/coverView.ts';
import { ask, type Work } from './file/ask.ts';
import type { Book } from './file/book.ts';
import { allKinds, type File, known, look } from './file/look.ts';
import { chooseLesson } from './lesson/chooseLesson.ts';
import { draftTeams } from './lesson/draftTeams.ts';
import { bookShown, lessonShown, sheetsAway, sheetsOfLesson } from './lesson/lessonsInFile.ts';
import { lessonsView } from './lesson/lessonsView.ts';
import { lessonView } from './lesson/lessonView.ts';
import { numbersView } from './lesson/numbersView.ts';
import type { Outcome } from './outcome.ts';
import { goToPoll } from './poll/goToPoll.ts';
import { pollView } from './poll/pollView.ts';
import { keyView } from './preparation/keyView.ts';
import { paperView } from './preparation/paperView.ts';
import { preparationView } from './preparation/preparationView.ts';
import { writeKeySheet } from './preparation/writeKeySheet.ts';
import { writePrepareSheet } from './preparation/writePrepareSheet.ts';
import { recordDue, recordView } from './record/recordView.ts';
import { saveRecord } from './record/saveRecord.ts';
import { beginSelfCheck, countTenCells, endSelfCheck, probeFile, readyTenCells } from './selfCheck/selfCheck.ts';
import { emptyCopy } from './share/emptyCopy.ts';
import { shareView } from './share/shareView.ts';
import { hideTeachersSheets, openSheet, readSheets } from './sheets/readSheets.ts';
import { addPractice } from './teams/addPractice.ts';
import { addClass, addTeam } from './teams/addTeams.ts';
import { passRoles } from './teams/passRoles.ts';
import { setAbsent } from './teams/setAbsent.ts';
import { setMembers } from './teams/setMembers.ts';
import { setOwnHelp } from './teams/setOwnHelp.ts';
import { teamsView } from './teams/teamsView.ts';

/** What is shown of a file, each worked out from what was read of it, and nothing else. */
const views = {
  readLesson: lessonView,
  draftTeams,
  readNumbers: numbersView,
  readClass: classView,
  readTeams: teamsView,
  readPreparation: preparationView,
  readKey: keyView,
  readPaper: paperView,
  readPoll: pollView,
  readRecord: recordView,
  recordDue,
  readShare: shareView,
  readLessons: lessonsView,
  readCover: coverView,
} as const satisfies Record<string, (book: Book, ...about: never[]) => Outcome<unknown>>;

/** What is done with a file: each asks the script for what it needs, and only for that. */
const acts = {
  startBuild,
  startSample,
  nextLesson,
  openEarlier,
  removeSample,
  chooseLesson,
  continueBuild,
  addTeam,
  addClass,
  addPractice,
  setAbsent,
  setMembers,
  setOwnHelp,
  showExitChecks,
  passRoles,
  checkAgain,
  workOutChecks,
  closeClass,
  goToTeam,
  goToPoll,
  writePrepareSheet,
  writeKeySheet,
  saveRecord,
  readSheets,
  openSheet,
  hideTeachersSheets,
  emptyCopy,
  beginSelfCheck,
  probeFile,
  readyTenCells,
  countTenCells,
  endSelfCheck,
  // A page that is opened beside others speaks of the same lesson.
  openPage: ({ lesson = '' }: File, page: Parameters<typeof ask<'openPage'>>[1]['page'], about = '') =>
    ask('openPage', { page, about: lesson === '' ? about : `${about}\n${lesson}` }),
} as const satisfies Record<string, (file: File, ...about: never[]) => Work<Outcome<unknown>>>;

type Views = typeof views;
type Acts = typeof acts;
export type ViewCall = keyof Views;
export type DeskCall = ViewCall | keyof Acts;
type Rest<T> = T extends [unknown, ...infer Others] ? Others : never;
export type DeskArguments<Name extends DeskCall> = Name extends ViewCall
  ? Rest<Parameters<Views[Name]>>
  : Name extends keyof Acts
    ? Rest<Parameters<Acts[Name]>>
    : never;
export type DeskAnswer<Name extends DeskCall> = Name extends ViewCall
  ? ReturnType<Views[Name]>
  : Name extends keyof Acts
    ? ReturnType<Acts[Name]> extends Generator<unknown, infer Answer, unknown>
      ? Answer
      : never
    : never;

const isView = (name: DeskCall): name is ViewCall => name in views;

/** The sheets that each view is made from: it looks at these and at no others. A page begins with the lesson, and reads all. */
const viewKinds: Readonly<Record<ViewCall, readonly SheetKind[]>> = {
  readLesson: allKinds,
  draftTeams: ['plan'],
  readNumbers: ['plan'],
  readClass: ['plan', 'class'],
  readTeams: ['plan', 'class'],
  readPreparation: ['plan', 'prepare'],
  readKey: ['plan'],
  readPaper: ['plan'],
  readPoll: ['plan', 'class', 'poll'],
  readRecord: ['plan', 'class', 'poll', 'record'],
  recordDue: ['plan', 'class', 'poll', 'record'],
  readShare: ['plan', 'class'],
  readLessons: ['plan', 'class'],
  readCover: ['plan', 'class'],
};
export const kindsFor = (name: ViewCall): readonly SheetKind[] => viewKinds[name];

/** A view from what was read already, or from a new look where `afresh` says so. */
function* viewed(
  file: File,
  { name, about, afresh }: { readonly name: ViewCall; readonly about: readonly unknown[]; readonly afresh: boolean },
): Work<Outcome<unknown>> {
  const book = afresh ? yield* lookFor(file, name, about) : yield* known(file, viewKinds[name]);
  if (!book.ok) return book;
  const view = views[name] as (book: Book, ...about: readonly unknown[]) => Outcome<unknown>;
  if (name === 'readLesson') {
    file.lesson = lessonShown(book.value, file.lesson)?.id;
    return lessonView(book.value, file.lesson);
  }
  return view(ofOneLesson.includes(name) ? bookShown(book.value, file.lesson) : book.value, ...about);
}

/** Views of one lesson, the one that the page speaks of; all others go through all lessons. */
const ofOneLesson: readonly ViewCall[] = [
  'draftTeams',
  'readNumbers',
  'readPreparation',
  'readKey',
  'readPaper',
  'readCover',
];
const ofTheDay: readonly ViewCall[] = ['readRecord', 'recordDue'];

/** The class now is looked at every few seconds: once its sheet is known, that one is read and no other class. */
function lookFor(file: File, name: ViewCall, [about]: readonly unknown[]): Work<Outcome<Book>> {
  const { book } = file;
  const shown = name === 'readClass' && book !== undefined ? classCalled(book, about) : undefined;
  if (shown?.ok) return look(file, ['plan'], [shown.value.sheet.id]);
  return look(file, viewKinds[name], ofTheDay.includes(name) && book !== undefined ? awayToday(book) : []);
}

/** What was put away today may belong to the day that is to be recorded. */
const awayToday = (book: Book): readonly number[] =>
  [...new Set(sheetsAway(book).flatMap(({ note, lesson }) => (note.day === book.today ? [lesson] : [])))].flatMap(
    (lesson) => sheetsOfLesson(book, lesson).flatMap(({ id, tag }) => (tag?.state === 'away' ? [id] : [])),
  );

/** The work behind a name: what a page or a test runs. */
export function workFor<Name extends DeskCall>(
  file: File,
  name: Name,
  about: DeskArguments<Name>,
  { afresh = false } = {},
): Work<DeskAnswer<Name>> {
  const rest = about as unknown[];
  const work = isView(name)
    ? viewed(file, { name, about: rest, afresh })
    : (acts[name as keyof Acts] as (file: File, ...about: unknown[]) => Work<Outcome<unknown>>)(file, ...rest);
  return work as unknown as Work<DeskAnswer<Name>>;
}
