import { announce } from './announce.ts';
import { blockName, type Place } from './cellName.ts';
import { type Clip, clipOf, type PlacedText, pasteInto } from './clipboard.ts';
import { fillDown } from './fillDown.ts';
import type { Grid } from './grid.ts';
import type { Permission } from './permission.ts';
import type { Sending } from './sending.ts';
import type { SheetInView } from './sheetInView.ts';
import { texts } from './texts.ts';
import type { Toasts } from './toasts.ts';
import { typingRefused } from './typingRefused.ts';
import { cellAt } from './workbookModel.ts';

/** What is done with all cells of the selected block. */
export interface BlockActions {
  clear(): Promise<void>;
  /** By the menu: keys copy through the browser. */
  copy(): Promise<void>;
  /** Fills down from the block's first row, or goes on with its last down to another row. */
  fill(lastRow?: number): Promise<void>;
}

/** Makes them, and listens to the browser where it copies, cuts and pastes. */
export function createBlockActions({
  view,
  grid,
  toasts,
  permission,
  sending,
}: {
  readonly view: SheetInView;
  readonly grid: Grid;
  readonly toasts: Toasts;
  readonly permission: Permission;
  readonly sending: Sending;
}): BlockActions {
  let clip: Clip | undefined;

  async function clear(): Promise<void> {
    const sheet = sending.sheetAsTyped;
    if (!sheet) return;
    const { top, left, bottom, right } = grid.block;
    const places: Place[] = [];
    for (const [key, cell] of Object.entries(sheet.cells)) {
      const [row = 0, column = 0] = key.split(',').map(Number);
      if (row < top || row > bottom || column < left || column > right) continue;
      if (cell.input !== '' && !cell.spilled) places.push({ row, column });
    }
    const refused = typingRefused(sheet, grid.selection.active);
    if (places.length === 0 && refused) toasts.warn(refused);
    if (places.length > 0 && (await permission.allowed(places))) {
      await sending.send(places.map((place) => ({ sheet: sheet.id, ...place, text: '' })));
    }
  }
  async function paste(text: string): Promise<void> {
    const { sheet } = view;
    if (!sheet || text === '') return;
    const { cells, rows, columns } = pasteInto(grid.block, text, clip);
    const { top, left } = grid.block;
    const block = { top, left, bottom: top + rows - 1, right: left + columns - 1 };
    if (block.bottom > sheet.rows || block.right > sheet.columns) {
      toasts.warn(texts.pasteTooLarge(rows, columns));
      return;
    }
    // Blank cells beside what is pasted say nothing about what a formula or the table holds there.
    const wanted = cells.filter(({ text: pasted, ...place }: PlacedText) => {
      const cell = cellAt(sheet, place);
      return pasted !== '' || ((cell?.input ?? '') !== '' && !cell?.spilled && cell?.guarded === undefined);
    });
    if (!(await permission.allowed(wanted))) return;
    grid.select({ row: top, column: left }, { row: block.bottom, column: block.right });
    if (await sending.send(wanted.map((cell) => ({ sheet: sheet.id, ...cell }))))
      announce(texts.pasted(blockName(block)));
  }
  async function copy(): Promise<void> {
    const sheet = sending.sheetAsTyped;
    if (!sheet) return;
    clip = clipOf(sheet, grid.block);
    await navigator.clipboard?.writeText(clip.text).catch(toasts.complain);
    announce(texts.copied(blockName(grid.block)));
  }
  async function fill(lastRow?: number): Promise<void> {
    const sheet = sending.sheetAsTyped;
    if (!sheet) return;
    const { block } = grid;
    if (lastRow === undefined && block.bottom === 1) {
      toasts.warn(texts.nothingAbove);
      return;
    }
    const cells = fillDown(sheet, block, lastRow);
    if (cells.length === 0 || !(await permission.allowed(cells))) return;
    const bottom = lastRow ?? block.bottom;
    if (lastRow !== undefined) {
      grid.select({ row: block.top, column: block.left }, { row: bottom, column: block.right });
    }
    const whole = await sending.send(cells.map((cell) => ({ sheet: sheet.id, ...cell })));
    if (whole) announce(texts.filledDown(blockName({ ...block, bottom })));
  }

  const ours = (event: ClipboardEvent): boolean => grid.hasFocus() && !(event.target instanceof HTMLTextAreaElement);
  for (const kind of ['copy', 'cut'] as const) {
    document.addEventListener(kind, (event) => {
      const sheet = sending.sheetAsTyped;
      if (!ours(event) || !sheet) return;
      clip = clipOf(sheet, grid.block);
      event.clipboardData?.setData('text/plain', clip.text);
      event.preventDefault();
      announce(texts.copied(blockName(grid.block)));
      if (kind === 'cut') void clear();
    });
  }
  document.addEventListener('paste', (event) => {
    if (!ours(event)) return;
    event.preventDefault();
    void paste(event.clipboardData?.getData('text/plain') ?? '');
  });
  return { clear, copy, fill };
}
