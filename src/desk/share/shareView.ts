import { deskSheetName } from '../../workbook/scratchSheet.ts';
import { classesInUse } from '../classes/classesInUse.ts';
import type { Book } from '../file/book.ts';
import { dayIn } from '../file/dayIn.ts';
import { done, type Outcome } from '../outcome.ts';
import type { ShareView } from '../views.ts';

/** Which file this is, and what stands in it that a copy to give out must not hold. */
export const shareView = (book: Book): Outcome<ShareView> =>
  done({
    fileName: book.fileName,
    entriesToday: entriesToday(book),
    otherSheets: book.sheets
      .filter(({ tag, kept, name }) => tag === null && !kept && name !== deskSheetName)
      .map(({ name }) => name),
  });

/** Entries of today in the classes in use. One whose time nobody noted may be of today: it counts. */
function entriesToday(book: Book): number {
  const steps = classesInUse(book).flatMap(({ reading }) => reading?.blocks.flatMap((block) => block.steps) ?? []);
  return steps.filter(
    ({ entry, lastEntry }) => entry !== '' && (lastEntry === undefined || dayIn(book, lastEntry) === book.today),
  ).length;
}
