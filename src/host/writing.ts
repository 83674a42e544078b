import { recognisedSheet } from '../workbook/recognisedSheet.ts';
import type { BookReading, Outcome, WriteWish } from './calls.ts';
import { onDesk } from './deskSheet.ts';
import { withDocumentLock } from './documentLock.ts';
import { markOf } from './markOf.ts';
import { busy, changed, done } from './outcome.ts';
import { tagOf } from './ownSheets.ts';
import { readBook } from './readBook.ts';
import { sheetById } from './sheetById.ts';
import type { Spreadsheet } from './spreadsheet.ts';
import { valuesOf } from './valuesOf.ts';
import { hostWords } from './words.ts';

const patienceMs = 2000;

/**
 * Does what a call asks for while no other run does: only where the file is still what the page has seen, and with a
 * reading of what stands there afterwards. Another run at work is an outcome of its own, and never an answer.
 */
export function writing<T>(
  { seen, read }: WriteWish,
  work: (spreadsheet: Spreadsheet) => Outcome<T>,
): Outcome<T & { readonly reading: BookReading }> {
  return onDesk((spreadsheet) => {
    const locked = withDocumentLock(patienceMs, (): Outcome<T & { readonly reading: BookReading }> => {
      for (const { id, mark } of seen) {
        const sheet = sheetById(spreadsheet, id);
        if (sheet === undefined) return changed(hostWords.aSheetGone);
        const cells = valuesOf(sheet);
        const kind = tagOf(sheet)?.kind ?? recognisedSheet(cells)?.kind;
        if (markOf(kind, cells) !== mark) return changed(hostWords.theSheet(sheet.getName()));
      }
      const outcome = work(spreadsheet);
      return outcome.ok ? done({ ...outcome.value, reading: readBook(spreadsheet, read) }) : outcome;
    });
    return locked.ran ? locked.value : busy();
  });
}
