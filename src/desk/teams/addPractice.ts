import { freshPracticeKey, isPractice } from '../../lab/lesson/practice.ts';
import type { TeamPlan } from '../../lab/lesson/setup.ts';
import { words } from '../../workbook/words.ts';
import { beginBuild } from '../building/beginBuild.ts';
import { type BuildAnswers, noteIn } from '../building/buildNote.ts';
import { continueBuild } from '../building/continueBuild.ts';
import { classesInFile } from '../classes/classesInFile.ts';
import { classesInUse } from '../classes/classesInUse.ts';
import type { Work } from '../file/ask.ts';
import type { Book } from '../file/book.ts';
import { buildKinds, type File } from '../file/look.ts';
import { attempt } from '../file/writing.ts';
import { lessonShown, lessonsInUse } from '../lesson/lessonsInFile.ts';
import { planInFile, planOf } from '../lesson/planInFile.ts';
import { readSetup } from '../lesson/readSetup.ts';
import { type Outcome, problem } from '../outcome.ts';
import type { BuildState } from '../views.ts';
import { deskWords } from '../words.ts';

/**
 * Gives somebody of a class another go at the lesson: a line of the Plan with fresh numbers and a block below the others.
 * Nobody names it. Pressed again while one is half done, it goes on with that one.
 */
export const addPractice = (file: File, className: unknown, answers: BuildAnswers = {}): Work<Outcome<BuildState>> =>
  attempt(file, buildKinds, function* (whole) {
    const note = noteIn(whole);
    if (note !== undefined && note.wish.practice?.className === className) return yield* continueBuild(file);
    if (note !== undefined) return problem(deskWords.practice.building);
    const lesson = classesInUse(whole).find((one) => one.name === className)?.lesson ?? lessonShown(whole, file.lesson);
    const book = lesson?.book ?? whole;
    const plan = planOf(book, deskWords.teams.noLesson);
    if (!plan.ok) return plan;
    const { setup: there, invented, teams } = plan.value.reading;
    const name = there.classes.find((one) => one.name === className)?.name;
    if (name === undefined) return problem({ ...deskWords.classUnknown, received: `“${String(className)}”` }, 'class');
    const setup = readSetup(there);
    if (!setup.ok) return setup;
    const practice = halfDone(book, teams, name) ?? next(whole, teams, name);
    const wish = { setup: setup.value, sample: invented, joins: { className: name }, practice, answers };
    return yield* beginBuild(file, whole, lesson === undefined ? wish : { ...wish, lesson: lesson.id });
  });

const keysInSheets = (book: Book): readonly string[] =>
  classesInFile(book).flatMap(({ reading }) => reading?.blocks.map(({ key }) => key) ?? []);

/** Keys that stand in any lesson of the file: in its Plan or in a sheet. */
const keysInUse = (whole: Book): readonly string[] =>
  lessonsInUse(whole).flatMap(({ book }) => {
    const plan = planInFile(book);
    const lines = plan.state === 'there' ? plan.whole.teams.map(({ key }) => key) : [];
    return [...lines, ...keysInSheets(book)];
  });

/** Practice that stands in the Plan and has no block yet. */
function halfDone(book: Book, lines: readonly TeamPlan[], className: string) {
  const built = keysInSheets(book);
  const line = lines.find((one) => isPractice(one) && one.className === className && !built.includes(one.key));
  return line && { key: line.key, className, team: line.team };
}

/** The next one, under a key that no block has had and a name that nobody in the class has. */
function next(whole: Book, lines: readonly TeamPlan[], className: string) {
  const ofClass = lines.filter((line) => line.className === className);
  const taken = ofClass.map(({ team }) => team.toLowerCase());
  let number = 1 + ofClass.filter(isPractice).length;
  while (taken.includes(words.practice.team(number).toLowerCase())) number += 1;
  const key = freshPracticeKey(keysInUse(whole));
  return { key, className, team: words.practice.team(number) };
}
