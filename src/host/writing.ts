import { recognisedSheet } from '../workbook/recognisedSheet.ts';
import type { BookReading, Outcome, WriteWish } from './calls.ts';
import { onDesk } from './deskSheet.ts';
import { withDocumentLock } from './documentLock.ts';
import { cellsRead, type FileInRun, sheetById } from './fileInRun.ts';
import { markOf } from './markOf.ts';
import { busy, changed, done } from './outcome.ts';
import { tagOf } from './ownSheets.ts';
import { readBook } from './readBook.ts';
import { settle } from './spreadsheet.ts';
import { hostWords } from './words.ts';

const patienceMs = 2000;

/**
 * Does what a call asks for while no other run does: only where the file is still what the page has seen, and with a
 * reading of what stands there afterwards. Another run at work is an outcome of its own, and never an answer.
 */
export function writing<T>(
  { seen, read }: WriteWish,
  work: (file: FileInRun) => Outcome<T>,
): Outcome<T & { readonly reading: BookReading }> {
  return onDesk((file) => {
    const locked = withDocumentLock(
      patienceMs,
      (): Outcome<T & { readonly reading: BookReading }> => {
        for (const { id, mark } of seen) {
          const one = sheetById(file, id);
          if (one === undefined) return changed(hostWords.aSheetGone);
          const cells = cellsRead(one);
          if (markOf(tagOf(file, one) ?? recognisedSheet(cells), cells) !== mark)
            return changed(hostWords.theSheet(one.sheet.getName()));
        }
        const outcome = work(file);
        if (!outcome.ok) return outcome;
        settle();
        return done({ ...outcome.value, reading: readBook(file, read) });
      },
      // Reading writes nothing.
      ({ ok }) => ok,
    );
    return locked.ran ? locked.value : busy();
  });
}
