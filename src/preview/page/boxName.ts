import type { SheetView } from '../view.ts';
import type { Place } from './cellName.ts';
import { texts } from './texts.ts';
import { cellAt } from './workbookModel.ts';

/** The last text above or beside a cell that stays in view while the sheet is scrolled. */
const heldText = (sheet: SheetView, places: readonly Place[]): string =>
  places
    .map((place) => cellAt(sheet, place)?.text.trim() ?? '')
    .filter((text) => text !== '')
    .at(-1) ?? '';

const upTo = (last: number): number[] => Array.from({ length: last }, (_, index) => index + 1);

/**
 * What a place to type in is called, where nobody sees its border: the heading of its column, what its row is, and what
 * stands there. Undefined where neither heading nor row stays in view: then its text alone names it.
 */
export function boxName(sheet: SheetView, { row, column }: Place, text: string): string | undefined {
  const heading = heldText(
    sheet,
    upTo(sheet.frozenRows).map((held) => ({ row: held, column })),
  );
  const title = heldText(
    sheet,
    upTo(sheet.frozenColumns).map((held) => ({ row, column: held })),
  );
  const parts = [heading, title].filter((part) => part !== '').map((part) => part.replace(/\s+/g, ' '));
  return parts.length === 0 ? undefined : texts.boxName(parts.join(', '), text.trim());
}
