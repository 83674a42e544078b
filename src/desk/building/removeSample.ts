import type { Work } from '../file/ask.ts';
import { buildKinds, type File, look } from '../file/look.ts';
import { lessonsInUse } from '../lesson/lessonsInFile.ts';
import { lessonInFile } from '../lesson/planInFile.ts';
import { sampleLessons } from '../lesson/sampleLessons.ts';
import { type Outcome, problem } from '../outcome.ts';
import type { BuildState } from '../views.ts';
import { deskWords } from '../words.ts';
import { beginBuild } from './beginBuild.ts';
import { noteIn } from './buildNote.ts';
import { continueBuild } from './continueBuild.ts';

/** Takes the sample out of a file that has a lesson of its own: its sheets, its answers in the Poll, its rows in the Record. */
export function* removeSample(file: File): Work<Outcome<BuildState>> {
  const book = yield* look(file, buildKinds);
  if (!book.ok) return book;
  const note = noteIn(book.value);
  if (note !== undefined)
    return note.wish.removesSample === true ? yield* continueBuild(file) : problem(deskWords.otherBuilding);
  const samples = sampleLessons(book.value);
  const own = lessonsInUse(book.value).filter(({ id }) => !samples.includes(id));
  const stays = own[own.length - 1];
  if (samples.length === 0 || stays === undefined) return problem(deskWords.noSample);
  const plan = lessonInFile(stays.book);
  if (!plan.ok) return plan;
  return yield* beginBuild(file, book.value, {
    setup: plan.value.reading.setup,
    sample: false,
    answers: {},
    lesson: stays.id,
    removesSample: true,
  });
}
