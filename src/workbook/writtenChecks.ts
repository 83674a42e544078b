import type { Settings } from '../lab/lesson/setup.ts';
import type { CellValue } from '../measurement/cellValue.ts';
import { cellText } from './cellText.ts';
import { checksMark } from './layout.ts';

/** Whether checks are to be written by the teacher's open sidebar, for schools where functions do not run for students. */
export const checksComeFromSidebar = (settings: Settings): boolean => settings['checks come from'] === 'sidebar';

/** Whether a class sheet with these cells was built so: its checks are texts then, and formulas nowhere. */
export const checksAreWritten = (cells: readonly (readonly CellValue[])[]): boolean =>
  cellText(cells[checksMark.row - 1]?.[checksMark.column - 1]) === checksMark.text;
