import { type RecordReading, readRecordSheet } from '../../workbook/readRecordSheet.ts';
import type { Book, BookSheet } from '../file/book.ts';
import { cellsOf, sheetInUse } from '../file/sheets.ts';

/** The Record, if there is one that was finished; its reading is left out where a heading is gone. */
export function recordInFile(book: Book): { readonly sheet: BookSheet; readonly reading?: RecordReading } | undefined {
  const sheet = sheetInUse(book, { kind: 'record' });
  if (sheet?.tag.state !== 'built') return undefined;
  const reading = readRecordSheet(cellsOf(sheet));
  return reading === undefined ? { sheet } : { sheet, reading };
}
