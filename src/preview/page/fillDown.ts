import type { SheetView } from '../view.ts';
import type { Block } from './cellName.ts';
import { clipOf, type PlacedText, pasteInto } from './clipboard.ts';

/** Cells that take what stands above them: the block's last row goes on down to `lastRow`, or its first fills the block. */
export function fillDown(sheet: SheetView, block: Block, lastRow?: number): readonly PlacedText[] {
  const source =
    lastRow !== undefined ? block.bottom : block.top === block.bottom ? Math.max(1, block.top - 1) : block.top;
  const first = source + 1;
  const last = lastRow ?? block.bottom;
  const clip = clipOf(sheet, { ...block, top: source, bottom: source });
  const hidden = new Set(sheet.hiddenRows);
  const cells: PlacedText[] = [];
  for (let row = first; row <= last; row += 1) {
    if (hidden.has(row)) continue;
    cells.push(...pasteInto({ ...block, top: row, bottom: row }, clip.text, clip).cells);
  }
  return cells;
}
