import type { SheetView } from '../view.ts';
import type { Place } from './cellName.ts';
import type { Grid } from './grid.ts';
import { nextPlace, textExtent, usedExtent } from './workbookModel.ts';

/** What the keys of the grid do besides moving. */
export interface KeyActions {
  readonly grid: Grid;
  readonly sheet: () => SheetView | undefined;
  typeOver(): void;
  open(): void;
  clear(): void;
  step(action: 'undo' | 'redo'): void;
  menu(): void;
  fillDown(): void;
  /** The link of the selected cell. */
  link(): string | undefined;
  follow(link: string): void;
  leave(): void;
  /** The reader moved by something else than Tab. */
  moved(): void;
  escape(): void;
}

const arrows: Readonly<Record<string, { readonly rows: number; readonly columns: number }>> = {
  ArrowUp: { rows: -1, columns: 0 },
  ArrowDown: { rows: 1, columns: 0 },
  ArrowLeft: { rows: 0, columns: -1 },
  ArrowRight: { rows: 0, columns: 1 },
};

/** Listens for keys while a cell of the grid has the focus. */
export function gridKeys(container: HTMLElement, actions: KeyActions): void {
  const { grid } = actions;

  /** Where a run of filled cells ends, or the next filled cell begins. */
  function edge(sheet: SheetView, from: Place, step: { readonly rows: number; readonly columns: number }): Place {
    const filled = ({ row, column }: Place): boolean => (sheet.cells[`${row},${column}`]?.text ?? '') !== '';
    let at = nextPlace(sheet, from, step);
    const running = filled(from) && filled(at);
    for (;;) {
      const next = nextPlace(sheet, at, step);
      if (next.row === at.row && next.column === at.column) return at;
      if (running && !filled(next)) return at;
      if (!running && filled(at)) return at;
      at = next;
    }
  }
  function pageAway(sheet: SheetView, from: Place, direction: number): Place {
    let at = from;
    for (let count = grid.rowsInView(); count > 0; count -= 1)
      at = nextPlace(sheet, at, { rows: direction, columns: 0 });
    return at;
  }
  function goal(sheet: SheetView, from: Place, event: KeyboardEvent): Place | undefined {
    const far = event.ctrlKey || event.metaKey;
    const arrow = arrows[event.key];
    if (arrow) return far ? edge(sheet, from, arrow) : nextPlace(sheet, from, arrow);
    const used = textExtent(sheet);
    switch (event.key) {
      case 'Home':
        return far ? { row: 1, column: 1 } : { row: from.row, column: 1 };
      case 'End':
        return far ? used : { row: from.row, column: used.column };
      case 'PageDown':
        return pageAway(sheet, from, 1);
      case 'PageUp':
        return pageAway(sheet, from, -1);
      default:
        return undefined;
    }
  }

  container.addEventListener('keydown', (event) => {
    const sheet = actions.sheet();
    if (!sheet || !(event.target as HTMLElement).closest('td') || event.isComposing) return;
    const { active, reach } = grid.selection;
    const control = event.ctrlKey || event.metaKey;
    const link = actions.link();
    const used = (): void => event.preventDefault();

    if (event.altKey && event.key === 'ArrowDown') {
      used();
      actions.open();
      return;
    }
    if ((event.key === 'F10' && event.shiftKey) || event.key === 'ContextMenu') {
      used();
      actions.menu();
      return;
    }
    if (event.altKey && !event.ctrlKey) return;
    const to = goal(sheet, event.shiftKey ? reach : active, event);
    if (to) {
      used();
      actions.moved();
      if (event.shiftKey) grid.extend(to);
      else grid.select(to);
      return;
    }
    if (event.key === 'Tab') {
      const next = nextPlace(sheet, active, { rows: 0, columns: event.shiftKey ? -1 : 1 });
      // At the edge of the sheet Tab leaves the grid.
      if (next.column === active.column && next.row === active.row) return;
      used();
      grid.select(next);
      return;
    }
    if (event.key === ' ' && (event.shiftKey || control)) {
      used();
      const { top, left, bottom, right } = grid.block;
      const last = usedExtent(sheet);
      if (event.shiftKey) grid.select({ row: top, column: 1 }, { row: bottom, column: Math.max(1, last.column) });
      else grid.select({ row: 1, column: left }, { row: Math.max(1, last.row), column: right });
      return;
    }
    if (control) {
      const key = event.key.toLowerCase();
      if (key === 'z') actions.step(event.shiftKey ? 'redo' : 'undo');
      else if (key === 'y') actions.step('redo');
      else if (key === 'd') actions.fillDown();
      else if (key === 'a') grid.select({ row: 1, column: 1 }, textExtent(sheet));
      else if (event.key === 'Enter' && link) actions.follow(link);
      else return;
      used();
      return;
    }
    switch (event.key) {
      case 'Enter':
        used();
        if (event.shiftKey) grid.select(nextPlace(sheet, active, { rows: -1, columns: 0 }));
        else if (link) actions.follow(link);
        else actions.open();
        return;
      case 'F2':
        used();
        actions.open();
        return;
      case 'F6':
        used();
        actions.leave();
        return;
      case 'Delete':
      case 'Backspace':
        used();
        actions.clear();
        return;
      case 'Escape':
        used();
        actions.escape();
        return;
    }
    // The key itself is not stopped: it goes on into the field that opens now.
    if (event.key.length === 1 || event.key === 'Dead' || event.key === 'Process' || event.key === 'Unidentified') {
      actions.moved();
      actions.typeOver();
    }
  });
}
