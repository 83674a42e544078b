import type { CellView, SheetView } from '../view.ts';
import { announce } from './announce.ts';
import { destination } from './cellLink.ts';
import { blockName, cellName, type Place } from './cellName.ts';
import type { CellTips } from './cellTips.ts';
import type { Editor } from './editor.ts';
import { byId } from './element.ts';
import type { Grid } from './grid.ts';
import { messageParts } from './messageParts.ts';
import type { SheetInView } from './sheetInView.ts';
import { texts } from './texts.ts';
import { cellAt } from './workbookModel.ts';

/** What stands above the grid about the selected cell: its name, its text, what is said of it, and where its link leads. */
export function createCellLine({
  view,
  grid,
  editor,
  tips,
  isWarned,
  follow,
}: {
  readonly view: SheetInView;
  readonly grid: Grid;
  readonly editor: Editor;
  readonly tips: CellTips;
  /** Whether the reader has said already that guarded cells may be changed. */
  readonly isWarned: () => boolean;
  readonly follow: (address: string) => void;
}): { show(): void } {
  const followButton = byId<HTMLButtonElement>('follow-link');
  const selected = (): CellView | undefined => view.sheet && cellAt(view.sheet, grid.selection.active);
  const guardText = (cell: CellView | undefined): string | undefined =>
    cell?.guarded === 'locked'
      ? texts.lockedCell
      : cell?.guarded === 'warning' && !isWarned()
        ? texts.guardedCell
        : undefined;
  followButton.addEventListener('click', () => {
    const address = selected()?.link;
    if (address) follow(address);
  });
  return {
    show() {
      const { sheet } = view;
      if (!sheet) return;
      const { active } = grid.selection;
      const block = grid.block;
      const cell = selected();
      const [rows, columns] = [block.bottom - block.top + 1, block.right - block.left + 1];
      const many = rows * columns > 1 && !mergedWhole(sheet, active, rows, columns);
      byId('cell-name').textContent = many ? blockName(block) : cellName(active);
      editor.rest({
        text: cell?.input ?? '',
        readOnly: cell?.guarded === 'locked',
      });
      const message = byId('cell-message');
      const said =
        cell?.error ?? cell?.note ?? cell?.help ?? (cell?.spilled ? texts.spilledCell : undefined) ?? guardText(cell);
      message.replaceChildren(...messageParts(said ?? ''));
      message.title = said ?? '';
      message.classList.toggle('wrong', cell?.error !== undefined);
      const leads = cell?.link ? destination(cell.link, view.model?.sheets.values() ?? []) : undefined;
      followButton.hidden = !leads;
      followButton.textContent = leads?.kind === 'outside' ? texts.followOutside : texts.followLink;
      tips.show(active);
      if (many) announce(texts.selected(blockName(block), rows, columns));
    },
  };
}

const mergedWhole = (sheet: SheetView, { row, column }: Place, rows: number, columns: number): boolean =>
  sheet.merges.some(
    (merge) => merge.row === row && merge.column === column && merge.rows === rows && merge.columns === columns,
  );
