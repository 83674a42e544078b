import { obstaclesIn } from '../../workbook/obstaclesIn.ts';
import { readClassSheet } from '../../workbook/readClassSheet.ts';
import { checksAreWritten } from '../../workbook/writtenChecks.ts';
import type { Work } from '../file/ask.ts';
import type { BookSheet } from '../file/book.ts';
import { buildKinds, type File, look } from '../file/look.ts';
import { cellsOf } from '../file/sheets.ts';
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
 * A lesson that was put away is in use again, with its entries and checks: for the classes that are named, or for all that
 * left it. What they are at is put away in turn, as for a next lesson. The same press, made again after a stop, goes on.
 */
export function* openEarlier(
  file: File,
  given: unknown,
  classes?: unknown,
  { takesPeople = false }: { readonly takesPeople?: boolean } = {},
): Work<Outcome<BuildState>> {
  const id = String(given ?? '');
  const named: readonly unknown[] | undefined = Array.isArray(classes) ? classes : undefined;
  const book = yield* look(file, buildKinds);
  if (!book.ok) return book;
  const note = noteIn(book.value);
  if (note !== undefined) {
    const { opens, lesson, from = [] } = note.wish;
    const covers = named?.every((one) => from.some((name) => name === one)) ?? true;
    const isSame = opens === true && lesson === id && covers;
    return isSame ? yield* continueBuild(file) : problem(deskWords.otherBuilding);
  }
  const away = sheetsAway(book.value).filter(
    ({ lesson, note }) => lesson === id && (named?.includes(note.className) ?? true),
  );
  if (away.length === 0) return problem({ ...deskWords.lessonNotAway, received: `“${id}”` });
  const wakes = away.map(({ sheet }) => sheet.tag?.className ?? '');
  const read = yield* readAway(file, book.value, id, { afresh: true });
  if (!read.ok) return read;
  const plan = lessonInFile(lessonBook(awakened(read.value, id, wakes), id));
  if (!plan.ok) return plan;
  const overChecks = sheetsAway(read.value).flatMap(({ lesson, sheet, note: { className } }) => {
    const cells = lesson === id && wakes.includes(sheet.tag?.className ?? '') ? typedOverIn(sheet) : [];
    return cells.length > 0 ? [{ className, cells }] : [];
  });
  const cleared = away.filter((one) => one.note.cleared === true).map((one) => one.note.className);
  return yield* beginBuild(file, read.value, {
    setup: plan.value.reading.setup,
    sample: false,
    answers: {},
    lesson: id,
    from: [...new Set([...away.map((one) => one.note.className), ...wakes])],
    opens: true,
    wakes,
    takesPeople,
    cleared,
    overChecks,
  });
}

/** Cells where somebody typed over checks at rest: the script moves that into notes as it wakes the sheet. */
function typedOverIn(sheet: BookSheet): readonly string[] {
  const cells = cellsOf(sheet);
  if (sheet.tag?.sums !== true && !checksAreWritten(cells)) return [];
  return (readClassSheet(cells)?.blocks ?? []).flatMap((block) =>
    obstaclesIn(block, cells, true).map(({ cell }) => cell),
  );
}
