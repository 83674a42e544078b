import { layoutFits } from '../../workbook/layoutFits.ts';
import { withLessonMark } from '../../workbook/lessonMark.ts';
import { planPlanSheet } from '../../workbook/planPlanSheet.ts';
import { classNames } from '../../workbook/planWorkbook.ts';
import { newSheetNames } from '../../workbook/sheetNames.ts';
import { ask, type Work } from '../file/ask.ts';
import type { Book } from '../file/book.ts';
import { type File, noted } from '../file/look.ts';
import { cellsOf, sheetToRead } from '../file/sheets.ts';
import { seenOf } from '../file/writing.ts';
import { lessonBook, lessonsInUse, ofLesson } from '../lesson/lessonsInFile.ts';
import { done, type Outcome, problem } from '../outcome.ts';
import { noteLeaving } from '../record/noteLeaving.ts';
import type { BuildState } from '../views.ts';
import { deskWords } from '../words.ts';
import { bookOpened } from './bookOpened.ts';
import { type BuildNote, type BuildWish, noteIn, stateOf } from './buildNote.ts';
import { nameOf, newNote } from './buildTasks.ts';
import { lessonWanted } from './lessonWanted.ts';
import { tabNow } from './tabNow.ts';

/** The first step of a build, from a file that was just read. */
export function* beginBuild(file: File, found: Book, wish: BuildWish): Work<Outcome<BuildState>> {
  const id = wish.lesson ?? '';
  const other = noteIn(found);
  const isOther =
    other !== undefined && ((other.wish.lesson ?? '') !== id || (goesOver(other.wish) && !goesOver(wish)));
  if (isOther) return problem(deskWords.otherBuilding);
  const wanted = lessonWanted(found, wish);
  if (!wanted.ok) return wanted;
  const { lesson, replacesPlan } = wanted.value;
  const role = ofLesson({ kind: 'plan' }, id);
  const awake = bookOpened(found, wish);
  const there = sheetToRead(awake, role);
  const name = nameOf(awake, newNote(found, { lesson, wish }), role);
  const named = { ...newSheetNames(classNames(lesson)), plan: name };
  const plan = withLessonMark({ ...planPlanSheet(lesson, named), role });
  // Where a new Plan takes the place of one that is kept, every sheet has to look at the new one.
  const isAnew = there !== undefined && (replacesPlan || layoutFits(plan, cellsOf(there)) === 'other');
  const every = withoutJoins(wish);
  if (isAnew && wish.joins !== undefined) {
    const touched = lessonWanted(found, every);
    if (!touched.ok) return touched;
  }
  // What leaves the lesson is noted here; a lesson that is put away is noted sheet by sheet when its turn comes.
  const remembered = yield* noteLeaving(file, lessonBook(found, id), lesson);
  if (!remembered.ok) return remembered;
  const whole = file.book ?? found;
  const note = newNote(whole, { lesson, wish: settled(isAnew ? every : wish) });
  const answer = yield* ask('applySheet', {
    plan,
    keptName: deskWords.keptName(name, note.stamp),
    ...tabNow(awake, there),
    replace: replacesPlan,
    seen: seenOf(there, ...plansLeft(found, wish)),
    read: { kinds: ['plan'], brief: true },
    note: {
      was: whole.note,
      before: JSON.stringify(note),
      after: JSON.stringify({ ...note, done: 1 } satisfies BuildNote),
    },
  });
  if (!answer.ok) return answer;
  const { reading, made } = answer.value;
  const next: BuildNote = { ...note, done: 1, made: note.made || made };
  file.book = { ...noted(file, reading, ['plan']), note: JSON.stringify(next) };
  file.lesson = id;
  return done(stateOf(next));
}

/** Whether sheets go out of use with it: it ends before anything else is built, so that none is at two lessons. */
const goesOver = ({ from, removesSample }: BuildWish): boolean => from !== undefined || removesSample === true;

/** Plans of lessons that classes leave: what is put away with them hangs on which classes stay. */
const plansLeft = (found: Book, { from, lesson: own }: BuildWish) =>
  from === undefined
    ? []
    : lessonsInUse(found).flatMap(({ id, book }) => (id === own ? [] : [sheetToRead(book, { kind: 'plan' })]));

/** What was said yes to is not asked again in the midst of the build. */
const settled = (wish: BuildWish): BuildWish =>
  wish.answers.setAside === undefined ? wish : { ...wish, answers: { ...wish.answers, setAside: true } };
const withoutJoins = ({ joins: _, ...wish }: BuildWish): BuildWish => wish;
