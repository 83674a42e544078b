import type { CellWish } from '../../host/calls.ts';
import type { PlanReading } from '../../workbook/readLesson.ts';
import type { BookSheet } from '../file/book.ts';
import { cellWish } from '../file/cellWish.ts';
import { planRow } from './planRow.ts';

/** Writes what a team has of its own; nothing where it stands there already, or where the Plan has no such column or line. */
export function ownCell(
  { reading, sheet }: { readonly reading: PlanReading; readonly sheet: BookSheet },
  { key, name, now }: { readonly key: unknown; readonly name: string; readonly now: string },
): readonly CellWish[] {
  const column = reading.places.teamColumns[name];
  const row = planRow(reading, sheet, key);
  if (column === undefined || row === 0) return [];
  const cell = cellWish(sheet, { row, column }, now);
  return cell.was === now ? [] : [cell];
}
