import type { Work } from '../file/ask.ts';
import { buildKinds, type File, look } from '../file/look.ts';
import { awakened, lessonBook, sheetsAway } from '../lesson/lessonsInFile.ts';
import { lessonInFile } from '../lesson/planInFile.ts';
import { readAway } from '../lesson/readAway.ts';
import { type Outcome, problem } from '../outcome.ts';
import type { BuildState } from '../views.ts';
import { deskWords } from '../words.ts';
import { beginBuild } from './beginBuild.ts';
import { noteIn } from './buildNote.ts';
import { continueBuild } from './continueBuild.ts';

/**
 * A lesson that was put away is in use again, with its entries and checks; the lesson that its classes are at is put away
 * in turn. The same press, made again after a stop, goes on.
 */
export function* openEarlier(file: File, given: unknown): Work<Outcome<BuildState>> {
  const id = String(given ?? '');
  const book = yield* look(file, buildKinds);
  if (!book.ok) return book;
  const note = noteIn(book.value);
  if (note !== undefined) {
    const isSame = note.wish.opens === true && note.wish.lesson === id;
    return isSame ? yield* continueBuild(file) : problem(deskWords.otherBuilding);
  }
  const away = sheetsAway(book.value).filter(({ lesson }) => lesson === id);
  if (away.length === 0) return problem({ ...deskWords.lessonNotAway, received: `“${id}”` });
  const read = yield* readAway(file, book.value, id, { afresh: true });
  if (!read.ok) return read;
  const plan = lessonInFile(lessonBook(awakened(read.value, id), id));
  if (!plan.ok) return plan;
  return yield* beginBuild(file, read.value, {
    setup: plan.value.reading.setup,
    sample: false,
    answers: {},
    lesson: id,
    from: [...new Set(away.flatMap(({ note: { className }, sheet }) => [className, sheet.tag?.className ?? '']))],
    opens: true,
  });
}
