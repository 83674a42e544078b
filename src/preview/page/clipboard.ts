import type { SheetView } from '../view.ts';
import { type Block, cellKey, type Place } from './cellName.ts';
import { shiftFormula } from './shiftFormula.ts';
import { readTabbed, writeTabbed } from './tabbedText.ts';

export interface Clip {
  readonly text: string;
  readonly from: Block;
  /** What each cell held, so that a formula copied within the workbook stays a formula. */
  readonly inputs: readonly (readonly string[])[];
}

const visible = (sheet: SheetView, block: Block): { rows: number[]; columns: number[] } => {
  const [hiddenRows, hiddenColumns] = [new Set(sheet.hiddenRows), new Set(sheet.hiddenColumns)];
  const between = (first: number, last: number, hidden: ReadonlySet<number>): number[] =>
    Array.from({ length: last - first + 1 }, (_, index) => first + index).filter((at) => !hidden.has(at));
  return {
    rows: between(block.top, block.bottom, hiddenRows),
    columns: between(block.left, block.right, hiddenColumns),
  };
};

/** What a block says, as text for other programs and as inputs for this one. */
export function clipOf(sheet: SheetView, block: Block): Clip {
  const { rows, columns } = visible(sheet, block);
  const pick = (of: 'text' | 'input'): string[][] =>
    rows.map((row) =>
      columns.map((column) => {
        const cell = sheet.cells[cellKey({ row, column })];
        // A spilled cell holds nothing of its own; copied, it is the value that it shows.
        return (of === 'input' && !cell?.spilled ? cell?.input : cell?.text) ?? '';
      }),
    );
  return { text: writeTabbed(pick('text')), from: block, inputs: pick('input') };
}

export interface PlacedText extends Place {
  readonly text: string;
}

/** The cells that a paste would fill: one value fills the whole block, a block goes where its first cell is. */
export function pasteInto(
  block: Block,
  pasted: string,
  clip: Clip | undefined,
): { readonly cells: readonly PlacedText[]; readonly rows: number; readonly columns: number } {
  const own = clip !== undefined && clip.text === pasted.replace(/\r\n/g, '\n') ? clip : undefined;
  const source = own ? own.inputs : readTabbed(pasted);
  const single = source.length === 1 && source[0]?.length === 1;
  const rows = single ? block.bottom - block.top + 1 : source.length;
  const columns = single ? block.right - block.left + 1 : Math.max(...source.map((cells) => cells.length));
  const cells: PlacedText[] = [];
  for (let row = 0; row < rows; row += 1) {
    for (let column = 0; column < columns; column += 1) {
      const text = source[single ? 0 : row]?.[single ? 0 : column];
      if (text === undefined) continue;
      const by = own
        ? {
            rows: block.top - own.from.top + (single ? row : 0),
            columns: block.left - own.from.left + (single ? column : 0),
          }
        : { rows: 0, columns: 0 };
      cells.push({ row: block.top + row, column: block.left + column, text: shiftFormula(text, by) });
    }
  }
  return { cells, rows, columns };
}
