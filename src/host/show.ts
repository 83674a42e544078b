import type { Outcome, ShowWish } from './calls.ts';
import { fileInRun, sheetById } from './fileInRun.ts';
import { changed, done } from './outcome.ts';
import { openSpreadsheet } from './spreadsheet.ts';
import { hostWords } from './words.ts';

/** Shows a sheet, or a cell of it, to whoever pressed the button. */
export function show({ sheetId, cell }: ShowWish): Outcome<null> {
  const sheet = sheetById(fileInRun(openSpreadsheet()), sheetId)?.sheet;
  if (sheet === undefined) return changed(hostWords.aSheetGone);
  sheet.activate();
  if (cell !== undefined) sheet.getRange(cell.row, cell.column).activate();
  return done(null);
}
