import type { Spreadsheet } from './spreadsheet.ts';

/** The day of a moment as year-month-day, in the spreadsheet's own time zone. */
export const dayOf = (spreadsheet: Spreadsheet, moment: number): string =>
  Utilities.formatDate(new Date(moment), spreadsheet.getSpreadsheetTimeZone(), 'yyyy-MM-dd');
