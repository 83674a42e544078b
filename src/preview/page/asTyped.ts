import type { CellView, SheetView } from '../view.ts';

/**
 * A sheet with what this window has sent and not yet heard of: whoever copies, fills or clears at once after typing means
 * what they see in the cell.
 *
 * @param going - Texts by the key of their cell.
 */
export function asTyped(sheet: SheetView, going: ReadonlyMap<string, string>): SheetView {
  if (going.size === 0) return sheet;
  const cells: Record<string, CellView> = { ...sheet.cells };
  for (const [key, input] of going)
    cells[key] = { ...cells[key], input, text: input.replace(/^'/, ''), spilled: false };
  return { ...sheet, cells };
}
