import type { FileInRun } from './fileInRun.ts';
import { type Sheet, sheetProtections } from './spreadsheet.ts';

/** Nothing typed, noted, drawn, coloured or agreed on in any cell, in a file in which no cells have a name. */
export function isUntouched({ spreadsheet }: FileInRun, sheet: Sheet): boolean {
  const isBusy =
    sheet.getLastRow() > 0 ||
    spreadsheet.getNamedRanges().length > 0 ||
    sheet.getFormUrl() !== null ||
    sheet.getCharts().length > 0 ||
    sheet.getImages().length > 0 ||
    sheet.getDrawings().length > 0 ||
    sheet.getConditionalFormatRules().length > 0 ||
    sheetProtections(sheet).length > 0 ||
    sheet.getDeveloperMetadata().length > 0 ||
    sheet.getFrozenRows() > 0 ||
    sheet.getFrozenColumns() > 0;
  if (isBusy) return false;
  const whole = sheet.getRange(1, 1, sheet.getMaxRows(), sheet.getMaxColumns());
  const all = <T>(cells: readonly (readonly T[])[], isPlain: (cell: T) => boolean) =>
    cells.every((row) => row.every(isPlain));
  return (
    all(whole.getNotes(), (note) => note === '') &&
    all(whole.getDataValidations(), (rule) => rule === null) &&
    all(whole.getBackgrounds(), (color) => color.toLowerCase() === '#ffffff')
  );
}
