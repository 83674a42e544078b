import type { Sheet, Spreadsheet } from './spreadsheet.ts';

/** The sheet with the number that it keeps however it is named or moved; undefined where it is gone, or none is asked for. */
export const sheetById = (spreadsheet: Spreadsheet, id: number | undefined): Sheet | undefined =>
  spreadsheet.getSheets().find((sheet) => sheet.getSheetId() === id);
