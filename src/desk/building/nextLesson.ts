import type { Setup } from '../../lab/lesson/setup.ts';
import { classesInUse } from '../classes/classesInUse.ts';
import type { Work } from '../file/ask.ts';
import type { Book } from '../file/book.ts';
import { buildKinds, type File, look } from '../file/look.ts';
import { freshLessonId, lessonsInUse } from '../lesson/lessonsInFile.ts';
import { readSetup } from '../lesson/readSetup.ts';
import { sampleLeft } from '../lesson/sampleLeft.ts';
import { sampleLessons } from '../lesson/sampleLessons.ts';
import { type Outcome, problem } from '../outcome.ts';
import type { BuildState } from '../views.ts';
import { deskWords } from '../words.ts';
import { asked } from './asked.ts';
import { beginBuild } from './beginBuild.ts';
import { type BuildAnswers, type BuildWish, noteIn } from './buildNote.ts';
import { continueBuild } from './continueBuild.ts';

/**
 * The next lesson of some classes, from a plan of its own. The lesson that each of them is at puts itself away once the new
 * sheet stands. The same press, made again after a stop, goes on.
 */
export function* nextLesson(
  file: File,
  given: unknown,
  { takesPeople = false }: { readonly takesPeople?: boolean } = {},
  answers: BuildAnswers = {},
): Work<Outcome<BuildState>> {
  const setup = readSetup(given);
  if (!setup.ok) return setup;
  const book = yield* look(file, buildKinds);
  if (!book.ok) return book;
  if (answers.sample === undefined && isFirstOwn(book.value, setup.value))
    return asked({ about: 'sample', ...sampleLeft(book.value) });
  const removesSample = answers.sample === 'remove';
  return yield* beginNext(file, book.value, { setup: setup.value, sample: false, answers, takesPeople, removesSample });
}

/** The first lesson beside the sample that is for none of its classes. */
function isFirstOwn(book: Book, { classes }: Setup): boolean {
  const samples = sampleLessons(book);
  const invented = sampleLeft(book).classes;
  return (
    samples.length > 0 &&
    noteIn(book) === undefined &&
    lessonsInUse(book).every(({ id }) => samples.includes(id)) &&
    classes.every(({ name }) => !invented.includes(name))
  );
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
  const today = classesInUse(book)
    .filter(({ name, lesson, sheet }) => sheet !== undefined && from.includes(name) && lesson.begun === book.today)
    .map(({ name }) => name);
  if (today.length > 0 && wish.answers.sameDay !== true) return asked({ about: 'same day', classes: today });
  return yield* beginBuild(file, book, { ...wish, lesson: freshLessonId(book), from });
}

const sameWish = ({ setup, from }: Pick<BuildWish, 'setup' | 'from'>): string => JSON.stringify([setup, from]);
