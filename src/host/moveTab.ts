import type { FileInRun } from './fileInRun.ts';
import { type OwnSheet, writeTag } from './ownSheets.ts';

/**
 * Moves a tab behind all others, or to a place counted from 1. The host moves only the sheet in view: what the teacher had
 * in view and in hand comes back, and a hidden sheet stays so. That it was hidden is noted before it is shown for that
 * moment: where the run stops there, the same move made again hides it.
 */
export function moveTab(file: FileInRun, one: OwnSheet, place: number = file.spreadsheet.getNumSheets()): void {
  const { spreadsheet, sheets } = file;
  const { sheet } = one;
  if (sheet.getIndex() !== place) {
    const shown = spreadsheet.getActiveSheet();
    const selected = spreadsheet.getActiveRange();
    if (one.tag.hidden === undefined && sheet.isSheetHidden()) writeTag(file, one, { ...one.tag, hidden: true });
    spreadsheet.setActiveSheet(sheet);
    spreadsheet.moveActiveSheet(place);
    if (selected === null) spreadsheet.setActiveSheet(shown);
    else spreadsheet.setActiveRange(selected);
    sheets.splice(sheets.indexOf(one), 1);
    sheets.splice(place - 1, 0, one);
  }
  // One that is leaving is hidden until it has left.
  const { hidden, ...tag } = one.tag;
  if (hidden !== true) return;
  sheet.hideSheet();
  if (tag.state !== 'leaving') writeTag(file, one, tag);
}
