import type { Outcome, ShowWish } from './calls.ts';
import { onDesk } from './deskSheet.ts';
import { type FileInRun, fileInRun, sheetById } from './fileInRun.ts';
import { hideSheets } from './hideSheets.ts';
import { changed, done } from './outcome.ts';
import { openSpreadsheet, type Sheet } from './spreadsheet.ts';
import { hostWords } from './words.ts';

/**
 * Shows a sheet, or a cell of it, to whoever pressed the button. What is hidden or to be hidden is hidden for everybody,
 * and the teacher’s to change.
 */
export function show(wish: ShowWish): Outcome<null> {
  const file = fileInRun(openSpreadsheet());
  const sheet = sheetById(file, wish.sheetId)?.sheet;
  if (sheet === undefined) return changed(hostWords.aSheetGone);
  const isHidden = sheet.isSheetHidden();
  if (!isHidden && !wish.hide?.length) return bringToFront(file, sheet, wish);
  return onDesk(() => {
    if (isHidden) sheet.showSheet();
    return bringToFront(file, sheet, wish);
  });
}

function bringToFront(file: FileInRun, sheet: Sheet, { cell, hide }: ShowWish): Outcome<null> {
  sheet.activate();
  if (cell !== undefined) sheet.getRange(cell.row, cell.column).activate();
  hideSheets(file, hide);
  return done(null);
}
