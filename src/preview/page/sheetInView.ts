import type { Seat, SheetView } from '../view.ts';
import { destination } from './cellLink.ts';
import type { Place } from './cellName.ts';
import type { Editor } from './editor.ts';
import type { Arrival, Grid } from './grid.ts';
import { createTabs } from './tabs.ts';
import type { WorkbookModel } from './workbookModel.ts';

/** The workbook as the server last told it to this window, and the sheet of it that is in view. */
export interface SheetInView {
  model: WorkbookModel | undefined;
  /** Number of the sheet in view; of none that is there before one was opened. */
  readonly id: number;
  readonly sheet: SheetView | undefined;
  /** Sheets that are not hidden, in the order of their tabs. */
  readonly visible: readonly SheetView[];
  /** The sheet that was in view when this window was last closed or loaded again. */
  readonly remembered: number | undefined;
  open(id: number, at?: Place, arrival?: Arrival): void;
  /** A place that the address of the window names is shown once; then the reader goes where they like. */
  openAsked(): boolean;
  showTabs(): void;
}

export function createSheetInView({
  seat,
  parts,
  leaveCell,
}: {
  readonly seat: Seat;
  /** Looked up when a sheet is opened: these know of the sheet in view as well. */
  readonly parts: () => { readonly grid: Grid; readonly editor: Editor; showCell(): void };
  /** Keeps what is being typed, then goes on. */
  readonly leaveCell: (then: () => void) => void;
}): SheetInView {
  const remembersSheet = `labrow sheet ${seat}`;
  let model: WorkbookModel | undefined;
  let current = -1;
  const tabs = createTabs((id) =>
    leaveCell(() => {
      // To draw the sheet in view anew takes long and would change nothing.
      if (id !== current) open(id);
    }),
  );
  const visible = (): SheetView[] =>
    (model?.order ?? []).flatMap((id) => {
      const sheet = model?.sheets.get(id);
      return sheet && !sheet.hidden ? [sheet] : [];
    });

  function open(id: number, at?: Place, arrival: Arrival = {}): void {
    const sheet = model?.sheets.get(id);
    if (!model || !sheet) return;
    const { grid, editor, showCell } = parts();
    current = id;
    sessionStorage.setItem(remembersSheet, String(id));
    document.title = `${sheet.name} · ${model.name}`;
    tabs.show(visible(), id);
    grid.show(sheet);
    const inside = at && { row: Math.min(at.row, sheet.rows), column: Math.min(at.column, sheet.columns) };
    if (inside) grid.select(inside, inside, arrival);
    else showCell();
    editor.reposition();
  }
  function openAsked(): boolean {
    const { hash, pathname, search } = window.location;
    const leads = destination(hash, visible());
    if (leads?.kind !== 'cell') return false;
    history.replaceState(null, '', `${pathname}${search}`);
    open(leads.sheet, leads.place, { at: 'top' });
    return true;
  }
  window.addEventListener('hashchange', () => {
    if (model) leaveCell(() => openAsked());
  });

  return {
    get model() {
      return model;
    },
    set model(next) {
      model = next;
    },
    get id() {
      return current;
    },
    get sheet() {
      return model?.sheets.get(current);
    },
    get visible() {
      return visible();
    },
    get remembered() {
      const id = sessionStorage.getItem(remembersSheet);
      return id === null ? undefined : Number(id);
    },
    open,
    openAsked,
    showTabs: () => tabs.show(visible(), current),
  };
}
