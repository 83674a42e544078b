import type { CellValue } from '../measurement/cellValue.ts';
import type { Sheet } from './spreadsheet.ts';

/** Every cell in use, from A1 on. */
export const valuesOf = (sheet: Sheet): CellValue[][] => sheet.getDataRange().getValues();
