import { isUntouched } from './isUntouched.ts';
import type { Sheet, Spreadsheet } from './spreadsheet.ts';

/**
 * The one sheet of a file in which nobody has done anything yet, or undefined. It is told by what is in it and not by its
 * name, which differs from language to language.
 */
export function emptyFirstSheet(spreadsheet: Spreadsheet): Sheet | undefined {
  const [sheet, ...others] = spreadsheet.getSheets();
  const isAlone = sheet !== undefined && others.length === 0 && spreadsheet.getNamedRanges().length === 0;
  return isAlone && isUntouched(sheet) ? sheet : undefined;
}
