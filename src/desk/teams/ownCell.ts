import type { CellWish } from '../../host/calls.ts';
import { cellText } from '../../workbook/cellText.ts';
import { planColumns } from '../../workbook/layout.ts';
import type { PlanReading } from '../../workbook/readLesson.ts';
import type { BookSheet } from '../file/book.ts';
import { cellWas } from '../file/cellWas.ts';
import { cellsOf } from '../file/sheets.ts';

/** Row of the Plan's line with this key, wherever it was sorted to; 0 where there is none. */
const rowOf = ({ places }: PlanReading, sheet: BookSheet, key: unknown): number =>
  cellsOf(sheet).findIndex((line, index) => index >= places.keys.row && cellText(line[planColumns.key - 1]) === key) +
  1;

/** Writes what a team has of its own; nothing where it stands there already, or where the Plan has no such column or line. */
export function ownCell(
  { reading, sheet }: { readonly reading: PlanReading; readonly sheet: BookSheet },
  { key, name, now }: { readonly key: unknown; readonly name: string; readonly now: string },
): readonly CellWish[] {
  const column = reading.places.teamColumns[name];
  const row = rowOf(reading, sheet, key);
  if (column === undefined || row === 0) return [];
  const was = cellWas(sheet, { row, column });
  return was === now ? [] : [{ sheetId: sheet.id, row, column, was, now }];
}
