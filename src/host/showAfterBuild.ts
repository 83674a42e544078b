import type { BuildMemo } from './buildMemo.ts';
import { isUntouched } from './isUntouched.ts';
import { ownSheets } from './ownSheets.ts';
import type { Spreadsheet } from './spreadsheet.ts';

/**
 * What a build leaves on the screen. Making a sheet shows it, so the last one made would be in view. After a first build
 * that is the first class: whoever pressed build wants to see the table that the students will see. Later the teacher
 * goes back to where they were. Where nothing was made nothing moves.
 */
export function showAfterBuild(spreadsheet: Spreadsheet, memo: BuildMemo): void {
  removeEmptySheet(spreadsheet, memo);
  if (memo.made !== true) return;
  const own = ownSheets(spreadsheet);
  const isKept = (id: number) => own.some(({ sheet, tag }) => tag.state === 'kept' && sheet.getSheetId() === id);
  const before = spreadsheet
    .getSheets()
    .find((sheet) => sheet.getSheetId() === memo.shownBefore && !isKept(sheet.getSheetId()));
  const firstClass = own.find(({ tag }) => tag.kind === 'class' && tag.state === 'built');
  (before ?? firstClass?.sheet)?.activate();
}

/** The sheet that every new file begins with goes, if it is still as empty as when the build began. */
function removeEmptySheet(spreadsheet: Spreadsheet, { emptySheet }: BuildMemo): void {
  if (emptySheet === undefined) return;
  const sheet = spreadsheet.getSheets().find((candidate) => candidate.getSheetId() === emptySheet);
  const isOurs = ownSheets(spreadsheet).some((one) => one.sheet.getSheetId() === emptySheet);
  if (sheet !== undefined && !isOurs && isUntouched(sheet)) spreadsheet.deleteSheet(sheet);
}
