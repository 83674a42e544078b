import { cellText } from '../../workbook/cellText.ts';
import { layoutFits } from '../../workbook/layoutFits.ts';
import { newNote } from '../building/buildTasks.ts';
import { sheetPlan } from '../building/sheetPlan.ts';
import { ask, type Work } from '../file/ask.ts';
import type { Book } from '../file/book.ts';
import { stampOf } from '../file/dayIn.ts';
import { allKinds, type File, known, look, noted } from '../file/look.ts';
import { cellsOf } from '../file/sheets.ts';
import { seenOf } from '../file/writing.ts';
import { lessonBook, lessonShown } from '../lesson/lessonsInFile.ts';
import { lessonInFile } from '../lesson/planInFile.ts';
import { done, type Outcome } from '../outcome.ts';
import { deskWords } from '../words.ts';
import { classesInFile } from './classesInFile.ts';

/** Enters again the checks that failed, and plans anew those whose formula is gone from its cell. */
export function* checkAgain(
  file: File,
): Work<Outcome<{ readonly renewed: number; readonly waiting?: number; readonly moved?: readonly string[] }>> {
  // An open page has looked already, and asks nothing more here.
  const seen = yield* known(file, []);
  if (!seen.ok) return seen;
  const answer = yield* ask('checkAgain', undefined);
  if (!answer.ok) return answer;
  const { moved, waiting } = answer.value;
  let { renewed } = answer.value;
  for (const id of answer.value.missing) {
    const book = yield* look(file, allKinds);
    if (!book.ok) return book;
    const put = yield* putBack(file, book.value, id);
    if (!put.ok) return put;
    renewed += put.value;
  }
  return done({ renewed, ...(waiting > 0 ? { waiting } : {}), ...(moved.length > 0 ? { moved } : {}) });
}

/** Brings a class sheet to its plan where it still has the layout; what is missing in it is written. */
function* putBack(file: File, whole: Book, id: number): Work<Outcome<number>> {
  const tag = whole.sheets.find((one) => one.id === id)?.tag;
  const of = tag?.lesson ?? lessonShown(whole, undefined)?.id ?? '';
  const book = lessonBook(whole, of);
  const inFile = lessonInFile(book);
  if (!inFile.ok) return inFile;
  const { lesson, reading, sheet: planSheet } = inFile.value;
  const found = classesInFile(book).find(({ sheet }) => sheet?.id === id);
  const note = newNote(whole, { lesson, wish: { setup: lesson.setup, sample: false, answers: {}, lesson: of } });
  const task = note.tasks.find(({ role, aside }) => aside === undefined && role.className === found?.id);
  if (found?.sheet === undefined || task === undefined) return done(0);
  const plan = sheetPlan({ book: whole, note, task, lesson, places: reading.places });
  const cells = cellsOf(found.sheet);
  if (layoutFits(plan, cells) !== 'same') return done(0);
  const count = (found.reading?.blocks ?? []).filter(
    ({ headingRow, checkColumn }) => cellText(cells[headingRow - 1]?.[checkColumn - 1]) === '',
  ).length;
  const answer = yield* ask('applySheet', {
    plan,
    keptName: deskWords.keptName(found.sheet.name, stampOf(book)),
    seen: seenOf(planSheet, found.sheet),
    read: { kinds: ['class'] },
  });
  if (!answer.ok) return answer;
  noted(file, answer.value.reading, ['class']);
  return done(count);
}
