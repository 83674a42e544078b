import type { Outcome, ShowWish } from './calls.ts';
import { type FileInRun, sheetById } from './fileInRun.ts';
import { hideSheets } from './hideSheets.ts';
import { changed, done } from './outcome.ts';
import { hostWords } from './words.ts';

/** Shows a sheet, or a cell of it, to whoever pressed the button: a hidden one comes into sight for everybody. */
export function show(file: FileInRun, { sheetId, cell, hide }: ShowWish): Outcome<null> {
  const sheet = sheetById(file, sheetId)?.sheet;
  if (sheet === undefined) return changed(hostWords.aSheetGone);
  sheet.showSheet().activate();
  if (cell !== undefined) sheet.getRange(cell.row, cell.column).activate();
  hideSheets(file, hide);
  return done(null);
}
