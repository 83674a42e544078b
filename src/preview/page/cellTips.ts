import { cellName, type Place, readCellName } from './cellName.ts';
import { createCellTip } from './cellTip.ts';
import type { Grid } from './grid.ts';
import type { SheetInView } from './sheetInView.ts';
import { cellAt, ownerOf } from './workbookModel.ts';

export interface CellTips {
  show(place: Place): void;
  hide(): void;
  /** It stays away until another cell is pointed at or selected. */
  sendAway(): void;
}

/** Which cell's note or error is shown: that of the cell under the pointer, or else of the selected one. */
export function createCellTips({
  sheetBox,
  view,
  grid,
  isTyping,
}: {
  readonly sheetBox: HTMLElement;
  readonly view: SheetInView;
  readonly grid: Grid;
  readonly isTyping: () => boolean;
}): CellTips {
  const tip = createCellTip();
  let sentAway = '';
  const nameOf = (place: Place): string => `${view.id} ${cellName(place)}`;
  function show(place: Place): void {
    const { sheet } = view;
    const cell = sheet && cellAt(sheet, ownerOf(sheet, place));
    if (nameOf(place) !== sentAway) sentAway = '';
    if (!cell || isTyping() || sentAway !== '') tip.hide();
    else tip.show(grid.cell(place), cell.error ?? cell.note, cell.error !== undefined);
  }
  sheetBox.addEventListener('mouseover', (event) => {
    const name = (event.target as HTMLElement).closest<HTMLElement>('td')?.dataset.cell;
    const place = name ? readCellName(name) : undefined;
    const hovered = place && grid.cell(place);
    show(place && hovered?.matches('.noted, .error') ? place : grid.selection.active);
  });
  sheetBox.addEventListener('scroll', () => show(grid.selection.active), { passive: true });
  return {
    show,
    hide: () => tip.hide(),
    sendAway() {
      if (tip.shown) sentAway = nameOf(grid.selection.active);
    },
  };
}
