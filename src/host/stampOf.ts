import type { Spreadsheet } from './spreadsheet.ts';

/** Day and time for names of kept sheets, in the spreadsheet's own time zone. */
export const stampOf = (spreadsheet: Spreadsheet): string =>
  Utilities.formatDate(new Date(), spreadsheet.getSpreadsheetTimeZone(), 'yyyy-MM-dd HH.mm');
