import type { FileInRun, SheetInRun } from './fileInRun.ts';

/** The host moves only the sheet in view: what the teacher had in view and in hand comes back, and a hidden sheet stays so. */
export function moveBehindAll({ spreadsheet, sheets }: FileInRun, one: SheetInRun): void {
  const { sheet } = one;
  const last = spreadsheet.getNumSheets();
  if (sheet.getIndex() === last) return;
  const shown = spreadsheet.getActiveSheet();
  const selected = spreadsheet.getActiveRange();
  const wasHidden = sheet.isSheetHidden();
  spreadsheet.setActiveSheet(sheet);
  spreadsheet.moveActiveSheet(last);
  if (selected === null) spreadsheet.setActiveSheet(shown);
  else spreadsheet.setActiveRange(selected);
  if (wasHidden) sheet.hideSheet();
  sheets.splice(sheets.indexOf(one), 1);
  sheets.push(one);
}
