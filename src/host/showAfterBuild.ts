import type { BuildMemo } from './buildMemo.ts';
import { isUntouched } from './isUntouched.ts';
import { ownSheets, tagOf } from './ownSheets.ts';
import { sheetById } from './sheetById.ts';
import type { Spreadsheet } from './spreadsheet.ts';

/**
 * What a build leaves on the screen. Making a sheet shows it, so the last one made would be in view. After a first build
 * that is the first class: whoever pressed build wants to see the table that the students will see. Later the teacher
 * goes back to where they were. Where nothing was made nothing moves.
 */
export function showAfterBuild(spreadsheet: Spreadsheet, memo: BuildMemo): void {
  removeEmptySheet(spreadsheet, memo);
  if (memo.made !== true) return;
  const before = sheetById(spreadsheet, memo.shownBefore);
  if (before !== undefined && tagOf(before)?.state !== 'kept') {
    before.activate();
    return;
  }
  ownSheets(spreadsheet)
    .find(({ tag }) => tag.kind === 'class' && tag.state === 'built')
    ?.sheet.activate();
}

/** The sheet that every new file begins with goes, if it is still as empty as when the build began. */
function removeEmptySheet(spreadsheet: Spreadsheet, { emptySheet }: BuildMemo): void {
  if (emptySheet === undefined) return;
  const sheet = sheetById(spreadsheet, emptySheet);
  if (sheet !== undefined && tagOf(sheet) === undefined && isUntouched(sheet)) spreadsheet.deleteSheet(sheet);
}
