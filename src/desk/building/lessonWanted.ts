import { withExitNumbers } from '../../lab/exit/exitNumbers.ts';
import { seatsOf } from '../../lab/exit/seatsOf.ts';
import { lessonActivity } from '../../lab/lesson/lessonActivity.ts';
import { isPractice, isTeam } from '../../lab/lesson/practice.ts';
import type { Setup, TeamPlan } from '../../lab/lesson/setup.ts';
import { numbersForTeams } from '../../lab/numbers/numbersForTeams.ts';
import { practiceNumbers } from '../../lab/numbers/practiceNumbers.ts';
import { activityInUse } from '../../workbook/activityInUse.ts';
import { keptTeams } from '../../workbook/keptTeams.ts';
import type { Lesson } from '../../workbook/lesson.ts';
import type { PlanReading } from '../../workbook/readLesson.ts';
import { classesInFile } from '../classes/classesInFile.ts';
import { classesInUse } from '../classes/classesInUse.ts';
import type { Book } from '../file/book.ts';
import { lessonBook, lessonsInUse, sheetsAway } from '../lesson/lessonsInFile.ts';
import { lessonInFile, planInFile } from '../lesson/planInFile.ts';
import { done, numbersProblem, type Outcome, problem } from '../outcome.ts';
import { deskWords } from '../words.ts';
import { asked } from './asked.ts';
import { bookOpened } from './bookOpened.ts';
import type { BuildWish } from './buildNote.ts';
import { renamed } from './renamed.ts';
import { setAsideBy } from './setAside.ts';
import { typedInBlock } from './typedCells.ts';
import { isUnseen, withUnseen } from './unseenTeams.ts';

export interface LessonWanted {
  readonly lesson: Lesson;
  /** Writing it over the Plan that is there would lose a line or a number: that one is kept. */
  readonly replacesPlan: boolean;
}

/** The lesson that a build is to make, or what has to be mended or asked first. Nothing is written. */
export function lessonWanted(file: Book, wish: BuildWish): Outcome<LessonWanted> {
  const id = wish.lesson ?? '';
  if (wish.opens === true) {
    // A lesson that is opened again is as its Plan says: nothing about it is worked out anew.
    const there = lessonInFile(lessonBook(bookOpened(file, wish), id));
    if (!there.ok) return there;
    // Lines of classes that stay away stay where they are.
    const { lesson, whole } = there.value;
    return done({ lesson: { ...lesson, teams: whole.teams }, replacesPlan: false });
  }
  const { sample, answers, joins, practice, knows } = wish;
  const book = lessonBook(file, id);
  const activity = lessonActivity(wish.setup.settings);
  if (activity === undefined)
    return problem({ ...deskWords.setupProblems.activity, received: `“${wish.setup.activity}”` }, 'activity');
  const plan = planInFile(book);
  if (plan.state === 'unreadable') return { ok: false, problem: plan.problem };
  const there = plan.state === 'there' ? atHome(plan.reading, book) : undefined;
  if (there !== undefined && there.keysUsedTwice.length > 0) {
    return problem({ ...deskWords.keyTwice, received: `“${there.keysUsedTwice.join('”, “')}”` });
  }
  const ownTeams = sample ? teamsOfOwn(file) : 0;
  if (ownTeams > 0) return problem({ ...deskWords.lessonThere, received: deskWords.lessonOf(ownTeams) });
  const begins = there === undefined ? linesGoingAlong(file, wish) : undefined;
  const typed = typedByKey(book);
  const standing = there ?? begins;
  const isNew = isUnseen(knows);
  const seen = standing && { ...standing, teams: standing.teams.filter((line) => !isNew(line)) };
  const names =
    there &&
    seen &&
    renamed({
      before: seen,
      classes: wish.setup.classes,
      // Where nobody has typed, a name is corrected and the sheet stays: nothing hangs on it.
      isSame: (keys) => (keys.some((key) => (typed.get(key) ?? 0) > 0) ? answerOf(answers.names) : true),
    });
  if (names !== undefined && names.unsure.length > 0) return asked({ about: 'names', pairs: names.unsure });
  const now = names?.before ?? seen;
  const whole =
    standing && now
      ? withUnseen({ setup: wish.setup, before: standing, now, knows })
      : { setup: wish.setup, before: undefined };
  const { setup } = whole;
  const numbers = numbersForTeams(setup);
  if (!numbers.ok) return numbersProblem(numbers.error);
  const before = there && whole.before;
  const taken = keysOfOthers(file, wish);
  const kept = keptTeams({ drafted: numbers.value.teams, before: whole.before, setup, taken });
  const namedTwice = kept.find(
    (line) =>
      (isPractice(line) && numbers.value.teams.some((team) => isCalled(team, line))) ||
      (isNew(line) && kept.some((other) => other.key !== line.key && isCalled(other, line))),
  );
  if (namedTwice !== undefined) {
    const { className, team } = namedTwice;
    return problem({ ...deskWords.setupProblems.teamTwice, where: className, received: `“${team}”` }, 'classes');
  }
  const all = practice === undefined ? done(kept) : withPractice(kept, setup, practice);
  if (!all.ok) return all;
  const { settings } = setup;
  const own = withExitNumbers(all.value, { activity, settings, seats: seatsOf(settings) });
  const allLines = plan.state === 'there' ? plan.whole.teams : [];
  const teams = withAway(allLines, { away: book.away ?? [], teams: own });
  const lesson: Lesson = {
    setup,
    activity: activityInUse(activity, { setup, teams }),
    teams,
    givenNames: activity.givens.map(({ name }) => name),
    invented: sample || staysInvented(whole.before, teams),
  };
  const aside = answers.setAside === true ? undefined : setAsideBy(book, lesson, joins?.className);
  // Who said yes to some cells has not said yes to those that were typed since.
  const agreed = typeof answers.setAside === 'number' ? answers.setAside : 0;
  if (aside !== undefined && aside.cells > agreed) return asked(aside);
  const lines = before && { ...before, teams: withAway(allLines, { away: book.away ?? [], teams: before.teams }) };
  const replacesPlan = lines !== undefined && (lines.hasOwnColumns || loses(lines, lesson));
  return done({ lesson, replacesPlan });
}

/** Practice goes with the class in whose sheet it stands, where the Plan calls that class something else by now. */
function atHome(reading: PlanReading, book: Book): PlanReading {
  const names = reading.setup.classes.map(({ name }) => name);
  const isLost = (line: TeamPlan) => isPractice(line) && !names.includes(line.className);
  if (!reading.teams.some(isLost)) return reading;
  const homeOf = ({ key, className }: TeamPlan) =>
    classesInFile(book).find((one) => one.reading?.blocks.some((block) => block.key === key))?.name ?? className;
  const teams = reading.teams.map((line) => (isLost(line) ? { ...line, className: homeOf(line) } : line));
  return { ...reading, teams };
}

const isCalled = (one: TeamPlan, other: TeamPlan): boolean =>
  one.className === other.className && one.team.toLowerCase() === other.team.toLowerCase();

/** The lines with one more for practice, unless it stands there already; refused where the shelf has no fresh numbers. */
function withPractice(
  lines: readonly TeamPlan[],
  setup: Setup,
  { key, className, team }: NonNullable<BuildWish['practice']>,
): Outcome<readonly TeamPlan[]> {
  if (lines.some((line) => line.key === key)) return done(lines);
  const taken = lines.filter((line) => line.className === className).map(({ givens }) => givens);
  const numbers = practiceNumbers(setup, { className, taken });
  if (!numbers.ok) return numbersProblem(numbers.error);
  if (!numbers.value.isFresh) return problem({ ...deskWords.practice.noNumbers, where: className });
  return done([...lines, { key, className, team, givens: numbers.value.givens }]);
}

/** Teams of lessons that are no sample. */
const teamsOfOwn = (file: Book): number =>
  lessonsInUse(file).reduce((sum, { book }) => {
    const plan = planInFile(book);
    return plan.state === 'there' && !plan.whole.invented ? sum + plan.whole.teams.length : sum;
  }, 0);

/** Lines of classes that were put away from the lesson stay where and as they are. */
function withAway(
  whole: readonly TeamPlan[],
  { away, teams }: { readonly away: readonly string[]; readonly teams: readonly TeamPlan[] },
): readonly TeamPlan[] {
  if (away.length === 0) return teams;
  const lines = whole.flatMap((line) =>
    away.includes(line.key) ? line : (teams.find(({ key }) => key === line.key) ?? []),
  );
  return [...lines, ...teams.filter(({ key }) => !whole.some((line) => line.key === key))];
}

/** The lines of the classes that go on to a new lesson, with their keys and, where the same numbers are wanted, their numbers. */
function linesGoingAlong(file: Book, { from = [], lesson: id = '' }: BuildWish): PlanReading | undefined {
  const lines = lessonsInUse(file)
    .filter((lesson) => lesson.id !== id)
    .flatMap(({ book }) => {
      const plan = planInFile(book);
      if (plan.state !== 'there') return [];
      const teams = plan.reading.teams.filter((line) => isTeam(line) && from.includes(line.className));
      return teams.length === 0 ? [] : [{ ...plan.reading, teams }];
    });
  const last = lines[lines.length - 1];
  const invented = lines.every((one) => one.invented);
  return last && { ...last, invented, teams: lines.flatMap(({ teams }) => teams) };
}

/** Keys of teams that are at other lessons and stay there, and of those that were put away: each is somebody's for good. */
const keysOfOthers = (file: Book, { from = [], lesson: id = '' }: BuildWish): readonly string[] => [
  ...classesInUse(file)
    .filter(({ lesson, name }) => lesson.id !== id && !from.includes(name))
    .flatMap(({ keys }) => keys),
  ...sheetsAway(file).flatMap(({ note }) => note.keys),
];

const answerOf = (names: BuildWish['answers']['names']): boolean | undefined =>
  names === undefined ? undefined : names === 'same';

/** How many cells people have typed in, by team. */
function typedByKey(book: Book): ReadonlyMap<string, number> {
  const typed = new Map<string, number>();
  for (const { reading } of classesInFile(book))
    for (const block of reading?.blocks ?? []) typed.set(block.key, typedInBlock(block));
  return typed;
}

/** A sample stays one while all its teams are still the invented ones. */
const staysInvented = (before: PlanReading | undefined, teams: readonly TeamPlan[]): boolean =>
  before?.invented === true && teams.every(({ key }) => before.teams.some((line) => line.key === key));

/** Would writing this lesson over the Plan lose a line or a number that stands there? */
function loses(before: PlanReading, lesson: Lesson): boolean {
  return before.teams.some(({ key, givens }, index) => {
    const line = lesson.teams[index];
    return line?.key !== key || before.givenNames.some((name) => (line.givens[name] ?? '') !== (givens[name] ?? ''));
  });
}
