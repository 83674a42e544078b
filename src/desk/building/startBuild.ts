import { sampleSetup } from '../../lab/lesson/sampleLesson.ts';
import type { Work } from '../file/ask.ts';
import type { Book } from '../file/book.ts';
import { buildKinds, type File, look } from '../file/look.ts';
import { freshLessonId, lessonShown } from '../lesson/lessonsInFile.ts';
import { readSetup } from '../lesson/readSetup.ts';
import type { Outcome } from '../outcome.ts';
import type { BuildState } from '../views.ts';
import { beginBuild } from './beginBuild.ts';
import { beginsAnother } from './beginsAnother.ts';
import { type BuildAnswers, noteIn } from './buildNote.ts';
import { beginNext } from './nextLesson.ts';

/**
 * Writes the Plan, and the list of sheets that are still to build. Pressed twice, the second press changes nothing. Teams
 * of the Plan that are not among those that it `knows` of, by key, were added meanwhile and stay.
 */
export function* startBuild(
  file: File,
  given: unknown,
  answers: BuildAnswers = {},
  knows?: readonly string[],
): Work<Outcome<BuildState>> {
  const setup = readSetup(given);
  if (!setup.ok) return setup;
  const book = yield* look(file, buildKinds);
  if (!book.ok) return book;
  const wish = { setup: setup.value, sample: false, answers, knows };
  const another = beginsAnother(book.value, { chosen: file.lesson, ...wish });
  if (!another.ok) return another;
  if (another.value === 'the same')
    return yield* beginBuild(file, book.value, { ...wish, lesson: lessonToBuild(file, book.value) });
  const removesSample = answers.sample === 'remove';
  return yield* beginNext(file, book.value, { ...wish, takesPeople: false, removesSample });
}

/** Begins an invented school, ready to try; refused in a file that has a lesson of its own. */
export function* startSample(file: File): Work<Outcome<BuildState>> {
  const book = yield* look(file, buildKinds);
  const answers = { names: 'other', setAside: true } as const;
  if (!book.ok) return book;
  const lesson = lessonToBuild(file, book.value);
  return yield* beginBuild(file, book.value, { setup: sampleSetup(), sample: true, answers, lesson });
}

/** The lesson of the page; in a file without any the one whose build has just begun, or a new one. */
const lessonToBuild = (file: File, book: Book): string => {
  const shown = lessonShown(book, file.lesson);
  return shown?.id ?? noteIn(book)?.wish.lesson ?? freshLessonId(book);
};
