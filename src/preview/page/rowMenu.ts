import type { ChangeView } from '../view.ts';
import { announce } from './announce.ts';
import type { BlockActions } from './blockActions.ts';
import { blockName, columnLetters, type Place } from './cellName.ts';
import type { createColumnWidths } from './columnWidths.ts';
import type { Connection } from './connection.ts';
import type { Grid } from './grid.ts';
import type { Permission } from './permission.ts';
import { type MenuLine, openMenu } from './popupMenu.ts';
import type { SheetInView } from './sheetInView.ts';
import { texts } from './texts.ts';
import type { Toasts } from './toasts.ts';
import { textExtent } from './workbookModel.ts';

const widthStep = 40;

/** The menu of the selected rows: what is done with their cells, with the rows themselves, and with a column’s width. */
interface RowMenu {
  lines(place: Place): MenuLine[];
  open(place: Place, at: { readonly x: number; readonly y: number }): void;
}

export function createRowMenu({
  connection,
  view,
  grid,
  toasts,
  permission,
  block,
  widths,
  apply,
}: {
  readonly connection: () => Connection;
  readonly view: SheetInView;
  readonly grid: Grid;
  readonly toasts: Toasts;
  readonly permission: Permission;
  readonly block: BlockActions;
  readonly widths: ReturnType<typeof createColumnWidths>;
  readonly apply: (change: ChangeView) => void;
}): RowMenu {
  async function changeRows(action: string, fields: object, said: string): Promise<void> {
    const sheet = view.id;
    // From here on keys belong to the rows again, so that Ctrl+Z takes the change back.
    grid.focus();
    try {
      const { change } = await connection().ask(action, { sheet, ...fields });
      apply(change);
      announce(said);
    } catch (error) {
      toasts.complain(error);
    }
  }
  /** Changes that may take a table apart: asked about where the rows hold guarded cells. */
  async function changeTableRows(
    rows: { readonly first: number; readonly last: number },
    change: () => Promise<void>,
  ): Promise<void> {
    const places = Object.keys(view.sheet?.cells ?? {}).map((key) => {
      const [row = 0, column = 0] = key.split(',').map(Number);
      return { row, column };
    });
    const inside = places.filter(({ row }) => row >= rows.first && row <= rows.last);
    if (await permission.allowed(inside, 'rows')) await change();
    else grid.focus();
  }
  /** By the menu, for those who do not drag. */
  function widen(column: number, by: number): void {
    const { sheet } = view;
    if (!sheet) return;
    const now = widths.of(sheet.id)[column] ?? sheet.columnWidths[column - 1] ?? 100;
    widths.set(sheet.id, column, now + by);
    grid.show(sheet);
    grid.focus();
  }
  function lines(place: Place): MenuLine[] {
    const { sheet } = view;
    if (!sheet) return [];
    const { top, bottom } = grid.block;
    const count = bottom - top + 1;
    const column = columnLetters(place.column);
    const extent = textExtent(sheet);
    const from = count > 1 ? top : sheet.frozenRows + 1;
    const to = count > 1 ? bottom : extent.row;
    const area = { row: from, column: 1, rows: to - from + 1, columns: extent.column };
    const sort = (ascending: boolean): void => {
      if (area.rows < 2) {
        toasts.warn(texts.nothingToSort);
        return;
      }
      const name = blockName({ top: from, left: 1, bottom: to, right: extent.column });
      void changeTableRows({ first: from, last: to }, () =>
        changeRows('sort-rows', { area, column: place.column, ascending }, texts.rowsOrdered(name)),
      );
    };
    const insert = (row: number): void => void changeRows('insert-rows', { row, count }, texts.rowsAdded(count));
    return [
      { label: texts.copyBlock, keys: 'Ctrl+C', act: () => void block.copy() },
      { label: texts.clearBlock, keys: 'Delete', act: () => void block.clear() },
      null,
      { label: texts.addRowAbove(count), act: () => insert(top) },
      { label: texts.addRowBelow(count), act: () => insert(bottom + 1) },
      {
        label: texts.removeRows(top, bottom),
        act: () =>
          void changeTableRows({ first: top, last: bottom }, () =>
            changeRows('delete-rows', { row: top, count }, texts.rowsRemoved(count)),
          ),
      },
      null,
      { label: texts.sortUp(column), act: () => sort(true) },
      { label: texts.sortDown(column), act: () => sort(false) },
      null,
      { label: texts.wider(column), act: () => widen(place.column, widthStep) },
      { label: texts.narrower(column), act: () => widen(place.column, -widthStep) },
    ];
  }
  return {
    lines,
    open: (place, at) => openMenu({ label: texts.rowMenu, lines: lines(place), at, onClose: () => grid.focus() }),
  };
}
