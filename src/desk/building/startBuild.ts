import { sampleSetup } from '../../lab/lesson/sampleLesson.ts';
import { layoutFits } from '../../workbook/layoutFits.ts';
import { planPlanSheet } from '../../workbook/planPlanSheet.ts';
import { classNames } from '../../workbook/planWorkbook.ts';
import { newSheetNames } from '../../workbook/sheetNames.ts';
import { ask, type Work } from '../file/ask.ts';
import type { Book } from '../file/book.ts';
import { allKinds, type File, look, noted } from '../file/look.ts';
import { cellsOf, sheetToRead } from '../file/sheets.ts';
import { seenOf } from '../file/writing.ts';
import { readSetup } from '../lesson/readSetup.ts';
import { done, type Outcome } from '../outcome.ts';
import { noteLeaving } from '../record/noteLeaving.ts';
import type { BuildState } from '../views.ts';
import { deskWords } from '../words.ts';
import { type BuildAnswers, type BuildNote, type BuildWish, stateOf } from './buildNote.ts';
import { nameOf, newNote } from './buildTasks.ts';
import { lessonWanted } from './lessonWanted.ts';

/** Writes the Plan, and the list of sheets that are still to build. Pressed twice, the second press changes nothing. */
export function* startBuild(file: File, given: unknown, answers: BuildAnswers = {}): Work<Outcome<BuildState>> {
  const setup = readSetup(given);
  if (!setup.ok) return setup;
  const book = yield* look(file, allKinds);
  return book.ok ? yield* beginBuild(file, book.value, { setup: setup.value, sample: false, answers }) : book;
}

/** Begins an invented school, ready to try; refused in a file that has a lesson of its own. */
export function* startSample(file: File): Work<Outcome<BuildState>> {
  const book = yield* look(file, allKinds);
  const answers = { names: 'other', setAside: true } as const;
  return book.ok ? yield* beginBuild(file, book.value, { setup: sampleSetup(), sample: true, answers }) : book;
}

/** The first step of a build, from a file that was just read. */
export function* beginBuild(file: File, found: Book, wish: BuildWish): Work<Outcome<BuildState>> {
  const wanted = lessonWanted(found, wish);
  if (!wanted.ok) return wanted;
  const { lesson, replacesPlan } = wanted.value;
  const remembered = yield* noteLeaving(file, found, lesson);
  if (!remembered.ok) return remembered;
  const book = remembered.value;
  const role = { kind: 'plan' } as const;
  const there = sheetToRead(book, role);
  const name = nameOf(book, newNote(book, { lesson, wish }), role);
  const plan = planPlanSheet(lesson, { ...newSheetNames(classNames(lesson)), plan: name });
  // Where a new Plan takes the place of one that is kept, every sheet has to look at the new one.
  const isAnew = there !== undefined && (replacesPlan || layoutFits(plan, cellsOf(there)) === 'other');
  const note = newNote(book, { lesson, wish: isAnew ? withoutJoins(wish) : wish });
  const answer = yield* ask('applySheet', {
    plan,
    keptName: deskWords.keptName(name, note.stamp),
    replace: replacesPlan,
    seen: seenOf(there),
    read: { kinds: ['plan'] },
    note: {
      was: book.note,
      before: JSON.stringify(note),
      after: JSON.stringify({ ...note, done: 1 } satisfies BuildNote),
    },
  });
  if (!answer.ok) return answer;
  const { reading, made } = answer.value;
  const next: BuildNote = { ...note, done: 1, made: note.made || made };
  file.book = { ...noted(file, reading, ['plan']), note: JSON.stringify(next) };
  return done(stateOf(next));
}

const withoutJoins = ({ joins: _, ...wish }: BuildWish): BuildWish => wish;
