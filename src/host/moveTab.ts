import type { FileInRun, SheetInRun } from './fileInRun.ts';

/**
 * Moves a tab behind all others, or to a place counted from 1. The host moves only the sheet in view: what the teacher had
 * in view and in hand comes back, and a hidden sheet stays so.
 */
export function moveTab(
  { spreadsheet, sheets }: FileInRun,
  one: SheetInRun,
  place: number = spreadsheet.getNumSheets(),
): void {
  const { sheet } = one;
  if (sheet.getIndex() === place) return;
  const shown = spreadsheet.getActiveSheet();
  const selected = spreadsheet.getActiveRange();
  const wasHidden = sheet.isSheetHidden();
  spreadsheet.setActiveSheet(sheet);
  spreadsheet.moveActiveSheet(place);
  if (selected === null) spreadsheet.setActiveSheet(shown);
  else spreadsheet.setActiveRange(selected);
  if (wasHidden) sheet.hideSheet();
  sheets.splice(sheets.indexOf(one), 1);
  sheets.splice(place - 1, 0, one);
}
