import type { SheetView } from '../view.ts';
import type { Place } from './cellName.ts';
import { cellAt } from './workbookModel.ts';

/**
 * What stands in the column of a cell already and begins with what was typed there, nearest above first and then below;
 * undefined where nothing does. The host offers it so, whoever typed it, and Enter takes it.
 */
export function earlierEntry(
  sheet: Pick<SheetView, 'cells' | 'rows'>,
  place: Place,
  typed: string,
): string | undefined {
  const begins = typed.toLowerCase();
  if (begins === '' || /^[=+\-@']/.test(begins)) return undefined;
  const above = Array.from({ length: place.row - 1 }, (_, index) => place.row - 1 - index);
  const below = Array.from({ length: Math.max(0, sheet.rows - place.row) }, (_, index) => place.row + 1 + index);
  for (const row of [...above, ...below]) {
    const input = cellAt(sheet as SheetView, { row, column: place.column })?.input ?? '';
    const isMore = input.length > typed.length && input.toLowerCase().startsWith(begins);
    if (isMore && !input.includes('\n')) return typed + input.slice(typed.length);
  }
  return undefined;
}
