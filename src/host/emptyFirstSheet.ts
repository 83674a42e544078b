import type { FileInRun, SheetInRun } from './fileInRun.ts';
import { isUntouched } from './isUntouched.ts';

/**
 * The one sheet of a file in which nobody has done anything yet, or undefined. It is told by what is in it and not by its
 * name, which differs from language to language.
 */
export function emptyFirstSheet({ spreadsheet, sheets: [first, ...others] }: FileInRun): SheetInRun | undefined {
  const isAlone = first !== undefined && others.length === 0 && spreadsheet.getNamedRanges().length === 0;
  return isAlone && isUntouched(first.sheet) ? first : undefined;
}
