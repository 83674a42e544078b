import type { ClassSetup } from '../../lab/lesson/setup.ts';
import { beginBuild } from '../building/beginBuild.ts';
import { type BuildAnswers, noteIn } from '../building/buildNote.ts';
import { continueBuild } from '../building/continueBuild.ts';
import { classesInFile } from '../classes/classesInFile.ts';
import { classesInUse } from '../classes/classesInUse.ts';
import type { Work } from '../file/ask.ts';
import type { Book } from '../file/book.ts';
import { buildKinds, type File } from '../file/look.ts';
import { attempt } from '../file/writing.ts';
import { lessonShown } from '../lesson/lessonsInFile.ts';
import { planOf } from '../lesson/planInFile.ts';
import { readSetup } from '../lesson/readSetup.ts';
import { done, type Outcome, problem } from '../outcome.ts';
import type { BuildState } from '../views.ts';
import { deskWords } from '../words.ts';

/** A team that joins in mid-lesson gets a line of the Plan, a block below the others, and numbers of its own. */
export function addTeam(
  file: File,
  className: unknown,
  team: unknown,
  answers?: BuildAnswers,
): Work<Outcome<BuildState>> {
  const wanted = nameOf(team);
  return joining(file, { className: String(className ?? ''), teams: [wanted], answers }, (classes, book) => {
    if (!classes.some(({ name }) => name === className))
      return problem({ ...deskWords.classUnknown, received: `“${String(className)}”` }, 'class');
    // The same wish pressed again goes on where it stopped.
    if (isHalfDone(book, { className, team: wanted })) return done(classes);
    return done(
      classes.map(({ name, teams }) => (name === className ? { name, teams: [...teams, wanted] } : { name, teams })),
    );
  });
}

/** One class more: its lines of the Plan and a sheet of its own. */
export function addClass(
  file: File,
  className: unknown,
  teams: unknown,
  answers?: BuildAnswers,
): Work<Outcome<BuildState>> {
  const name = nameOf(className);
  const wanted = Array.isArray(teams) ? teams.map(nameOf) : [];
  return joining(file, { className: name, teams: wanted, answers }, (classes, book) => {
    const there = classes.find((one) => one.name === name);
    const isSame = there !== undefined && there.teams.join('\n') === wanted.join('\n');
    if (isSame && isHalfDone(book, { className: name, team: wanted[0] ?? '' })) return done(classes);
    return done([...classes, { name, teams: wanted }]);
  });
}

const nameOf = (given: unknown): string =>
  String(given ?? '')
    .replace(/\s+/g, ' ')
    .trim();

/** Stands in the Plan, and has no block in a sheet yet: adding it was begun and stopped. */
function isHalfDone(book: Book, { className, team }: { readonly className: unknown; readonly team: string }): boolean {
  const plan = planOf(book, deskWords.teams.noLesson);
  const line = plan.ok
    ? plan.value.reading.teams.find((one) => one.className === className && one.team === team)
    : undefined;
  if (line === undefined) return false;
  return !classesInFile(book).some(
    ({ sheet, reading }) =>
      sheet?.tag?.state === 'built' && reading?.blocks.some(({ key }) => key === line.key) === true,
  );
}

/** The lesson that is there with other classes, begun to be built as from the sidebar: nobody's rows are touched. */
function* joining(
  file: File,
  {
    className,
    teams,
    answers = {},
  }: { readonly className: string; readonly teams: readonly string[]; readonly answers: BuildAnswers | undefined },
  change: (classes: readonly ClassSetup[], book: Book) => Outcome<readonly ClassSetup[]>,
): Work<Outcome<BuildState>> {
  return yield* attempt(file, buildKinds, function* (whole) {
    const note = noteIn(whole);
    const lesson =
      classesInUse(whole).find(({ name }) => name === className)?.lesson ?? lessonShown(whole, file.lesson);
    const book = lesson?.book ?? whole;
    const begun = note?.wish.joins?.className === className ? note.wish.setup.classes : [];
    const isSameWish = begun.some((one) => one.name === className && teams.every((team) => one.teams.includes(team)));
    if (isSameWish) return yield* continueBuild(file);
    const plan = planOf(book, deskWords.teams.noLesson);
    if (!plan.ok) return plan;
    const { setup: there, invented } = plan.value.reading;
    const classes = change(there.classes, book);
    if (!classes.ok) return classes;
    const setup = readSetup({ ...there, classes: classes.value });
    if (!setup.ok) return setup;
    const wish = { setup: setup.value, sample: invented, joins: { className }, answers };
    return yield* beginBuild(file, whole, lesson === undefined ? wish : { ...wish, lesson: lesson.id });
  });
}
