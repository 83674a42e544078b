import { classesInUse } from '../classes/classesInUse.ts';
import type { Work } from '../file/ask.ts';
import type { Book } from '../file/book.ts';
import { buildKinds, type File, look } from '../file/look.ts';
import { begunOn, freshLessonId, sheetsAway } from '../lesson/lessonsInFile.ts';
import { readSetup } from '../lesson/readSetup.ts';
import { type Outcome, problem } from '../outcome.ts';
import type { BuildState } from '../views.ts';
import { deskWords } from '../words.ts';
import { asked } from './asked.ts';
import { beginBuild } from './beginBuild.ts';
import { beginsAnother } from './beginsAnother.ts';
import { type BuildAnswers, type BuildWish, noteIn } from './buildNote.ts';
import { continueBuild } from './continueBuild.ts';

/**
 * The next lesson of some classes, from a plan of its own. The lesson that each of them is at puts itself away once the new
 * sheet stands. The same press, made again after a stop, goes on.
 */
export function* nextLesson(
  file: File,
  given: unknown,
  {
    takesPeople = false,
    knows,
  }: { readonly takesPeople?: boolean; readonly knows?: readonly string[] | undefined } = {},
  answers: BuildAnswers = {},
): Work<Outcome<BuildState>> {
  const setup = readSetup(given);
  if (!setup.ok) return setup;
  const book = yield* look(file, buildKinds);
  if (!book.ok) return book;
  // That it is another lesson was said by the press; the sample is asked about here as well.
  const another = beginsAnother(book.value, {
    chosen: file.lesson,
    setup: setup.value,
    answers: { ...answers, begins: 'next' },
  });
  if (!another.ok) return another;
  const removesSample = answers.sample === 'remove';
  const wish = { setup: setup.value, sample: false, answers, takesPeople, removesSample, knows };
  return yield* beginNext(file, book.value, wish);
}

export function* beginNext(
  file: File,
  book: Book,
  wish: Omit<BuildWish, 'lesson' | 'from' | 'opens'>,
): Work<Outcome<BuildState>> {
  const note = noteIn(book);
  const from = wish.setup.classes.map(({ name }) => name);
  if (note !== undefined) {
    const isSame = note.wish.from !== undefined && sameWish(note.wish) === sameWish({ ...wish, from });
    return isSame ? yield* continueBuild(file) : problem(deskWords.otherBuilding);
  }
  const begunToday = [
    ...classesInUse(book).flatMap(({ name, lesson, sheet }) =>
      sheet !== undefined && lesson.begun === book.today ? [name] : [],
    ),
    // Also where it was put away since, for an earlier one.
    ...sheetsAway(book).flatMap(({ lesson, note }) => (begunOn(lesson) === book.today ? [note.className] : [])),
  ];
  const today = from.filter((name) => begunToday.includes(name));
  if (today.length > 0 && wish.answers.sameDay !== true) return asked({ about: 'same day', classes: today });
  return yield* beginBuild(file, book, { ...wish, lesson: freshLessonId(book), from });
}

const sameWish = ({ setup, from }: Pick<BuildWish, 'setup' | 'from'>): string => JSON.stringify([setup, from]);
