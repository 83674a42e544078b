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
import { lessonBook, ofLesson } from '../lesson/lessonsInFile.ts';
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
  if (other !== undefined && (other.wish.lesson ?? '') !== id) return problem(deskWords.otherBuilding);
  const wanted = lessonWanted(found, wish);
  if (!wanted.ok) return wanted;
  const { lesson, replacesPlan } = wanted.value;
  // What leaves the lesson is noted here; a lesson that is put away is noted sheet by sheet when its turn comes.
  const remembered = yield* noteLeaving(file, lessonBook(found, id), lesson);
  if (!remembered.ok) return remembered;
  const whole = file.book ?? found;
  const book = bookOpened(whole, wish);
  const role = ofLesson({ kind: 'plan' }, id);
  const there = sheetToRead(book, role);
  const name = nameOf(book, newNote(whole, { lesson, wish }), role);
  const named = { ...newSheetNames(classNames(lesson)), plan: name };
  const plan = withLessonMark({ ...planPlanSheet(lesson, named), role });
  // Where a new Plan takes the place of one that is kept, every sheet has to look at the new one.
  const isAnew = there !== undefined && (replacesPlan || layoutFits(plan, cellsOf(there)) === 'other');
  const note = newNote(whole, { lesson, wish: isAnew ? withoutJoins(wish) : wish });
  const answer = yield* ask('applySheet', {
    plan,
    keptName: deskWords.keptName(name, note.stamp),
    ...tabNow(book, there),
    replace: replacesPlan,
    seen: seenOf(there),
    read: { kinds: ['plan'] },
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

const withoutJoins = ({ joins: _, ...wish }: BuildWish): BuildWish => wish;
