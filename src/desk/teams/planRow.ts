import { cellText } from '../../workbook/cellText.ts';
import { planColumns } from '../../workbook/layout.ts';
import type { PlanReading } from '../../workbook/readLesson.ts';
import type { BookSheet } from '../file/book.ts';
import { cellsOf } from '../file/sheets.ts';

/** Row of the Plan's line with this key, wherever it was sorted to; 0 where there is none. */
export const planRow = ({ places }: Pick<PlanReading, 'places'>, sheet: BookSheet, key: unknown): number =>
  cellsOf(sheet).findIndex((line, index) => index >= places.keys.row && cellText(line[planColumns.key - 1]) === key) +
  1;
