import type { ChangeView, FunctionHelp, Seat } from '../view.ts';
import { createArrivals } from './arrivals.ts';
import { createBlockActions } from './blockActions.ts';
import { createCellLine } from './cellLine.ts';
import { destination } from './cellLink.ts';
import { cellName } from './cellName.ts';
import { createCellTips } from './cellTips.ts';
import { createColumnWidths } from './columnWidths.ts';
import { type Connection, connect, type State } from './connection.ts';
import { createEditor } from './editor.ts';
import { byId, element } from './element.ts';
import { createGrid } from './grid.ts';
import { gridKeys } from './gridKeys.ts';
import { createPermission } from './permission.ts';
import { createRowMenu } from './rowMenu.ts';
import { createScriptMenus } from './scriptMenus.ts';
import { createSending } from './sending.ts';
import { createSheetInView } from './sheetInView.ts';
import { showTools } from './showTools.ts';
import { takeBack } from './takeBack.ts';
import { texts } from './texts.ts';
import { createToasts } from './toasts.ts';
import { createTyping } from './typing.ts';
import { cellAt, workbookModel } from './workbookModel.ts';

/**
 * The window of one seat: puts grid, line, tabs, menus and panel to work on one connection. With `offersEarlier` the grid
 * offers what stands in a column already to whoever types there, as the host may. Each part looks up the others when it
 * is used, so they may know of each other.
 */
export function startDesk(seat: Seat, { offersEarlier }: { readonly offersEarlier: boolean }): void {
  document.body.dataset.seat = seat;
  byId('seat-line').textContent = texts.seatLine[seat];
  const sheetBox = byId('sheet');
  let functions: readonly FunctionHelp[] = [];
  /** Counts what the reader did: what comes back must not take the focus from somebody busy. */
  let doings = 0;
  const widths = createColumnWidths(sessionStorage, seat);
  const leaveCell = (then: () => void): void => void typing.leave(then);
  const apply = (change: ChangeView): void => arrivals.apply(change);
  const showCell = (): void => line.show();
  const step = (action: 'undo' | 'redo') => void takeBack(action, { connection, view, toasts, apply });

  const toasts = createToasts(() => step('undo'));
  const view = createSheetInView({ seat, leaveCell, parts: () => ({ grid, editor, showCell }) });
  const grid = createGrid(sheetBox, {
    press(place, event) {
      if (!editor.session) return false;
      // A link keeps what is being typed by itself.
      if ((event.target as HTMLElement).closest('a') && !editor.text.startsWith('=')) return false;
      if (editor.session.sheet === view.id && event.button === 0 && editor.pointAt(cellName(place))) return true;
      void typing.keep(editor.text, undefined, () => grid.select(place));
      return true;
    },
    open: (place) => typing.openCell(place),
    choose: (place) => {
      grid.select(place);
      typing.openCell(place);
    },
    follow,
    composed(place, text) {
      if (place.row !== grid.selection.active.row || place.column !== grid.selection.active.column) grid.select(place);
      typing.typeOver(text);
    },
    menu: (place, at) => rowMenu.open(place, at),
    moved() {
      doings += 1;
      showCell();
    },
    filled: (lastRow) => void block.fill(lastRow),
    resized(column, width) {
      widths.set(view.id, column, width);
    },
    ownWidths: (sheet) => widths.of(sheet),
  });
  const editor = createEditor({
    container: sheetBox,
    cellElement: (place) => (editor.session && editor.session.sheet === view.id ? grid.cell(place) : undefined),
    functions: () => functions,
    events: {
      keep: (text, move) => void typing.keep(text, move),
      leave() {
        editor.close();
        showCell();
        grid.focus();
      },
      lineFocused: () => typing.openLine(),
    },
  });
  const tips = createCellTips({ sheetBox, view, grid, isTyping: () => editor.session !== undefined });
  const permission = createPermission({ sheet: () => view.sheet, lastRow: () => typing.lastRow });
  const line = createCellLine({ view, grid, editor, tips, isWarned: () => permission.isGiven, follow });
  const sending = createSending({
    connection: () => connection,
    view,
    grid,
    toasts,
    doings: () => doings,
    isBusy: () => editor.session !== undefined || document.querySelector('dialog[open]') !== null,
    apply,
    goBackTo(edit, reason) {
      if (edit.sheet !== view.id) view.open(edit.sheet);
      grid.select(edit);
      typing.openCell(edit, edit.text, reason);
    },
    putBack: ({ edit, reason }, forget) =>
      leaveCell(() => {
        forget();
        view.open(edit.sheet, edit);
        typing.openCell(edit, edit.text, reason);
      }),
  });
  const typing = createTyping({
    view,
    grid,
    editor,
    tips,
    toasts,
    permission,
    sending,
    showCell,
    offersEarlier,
  });
  const arrivals = createArrivals({ view, grid, editor, toasts, typing, sending, showCell });
  const block = createBlockActions({ view, grid, toasts, permission, sending });
  const rowMenu = createRowMenu({
    connection: () => connection,
    view,
    grid,
    toasts,
    permission,
    block,
    widths,
    apply,
  });
  const menus = createScriptMenus({ connection: () => connection, view, grid, toasts, apply, leaveCell });
  gridKeys(sheetBox, {
    grid,
    sheet: () => view.sheet,
    typeOver: () => typing.typeOver(),
    open: () => typing.openCell(grid.selection.active),
    link: () => view.sheet && cellAt(view.sheet, grid.selection.active)?.link,
    clear: () => void block.clear(),
    step,
    fillDown: () => void block.fill(),
    menu() {
      const box = grid.cell(grid.selection.active)?.getBoundingClientRect();
      rowMenu.open(grid.selection.active, { x: (box?.left ?? 0) + 12, y: box?.bottom ?? 0 });
    },
    follow,
    leave: () => document.querySelector<HTMLElement>('#menus button, #tools button')?.focus(),
    moved: () => typing.endTabs(),
    escape() {
      tips.sendAway();
      grid.select(grid.selection.active);
    },
  });
  showTools({
    step: (action) => leaveCell(() => step(action)),
    rowLines: () => rowMenu.lines(grid.selection.active),
  });

  function follow(address: string): void {
    const leads = destination(address, view.model?.sheets.values() ?? []);
    if (!leads) toasts.warn(texts.linkBroken);
    else if (leads.kind === 'outside') window.open(leads.address, '_blank', 'noopener,noreferrer');
    else leaveCell(() => view.open(leads.sheet, leads.place, { at: 'top' }));
  }
  /** Everything was read: shows the sheet that was in view, or the one that the address or the host names. */
  function begin(state: State): void {
    const first = view.model === undefined;
    const before = view.sheet;
    view.model = workbookModel(state.view);
    functions = state.functions;
    byId('workbook-name').textContent = view.model.name;
    menus.show(state.menus);
    const shown = view.visible;
    if (first && view.openAsked()) {
      grid.focus();
      return;
    }
    const wanted = first ? (view.remembered ?? state.view.activeSheet) : view.id;
    const sheet =
      shown.find(({ id }) => id === wanted) ?? shown.find(({ id }) => id === state.view.activeSheet) ?? shown[0];
    if (!sheet) {
      sheetBox.append(element('p', { class: 'soft' }, texts.noSheet));
      return;
    }
    view.open(sheet.id);
    if (editor.session) arrivals.readAnew(before, sheet);
    else if (first) grid.focus();
  }
  const connection: Connection = connect({
    seat,
    version: () => view.model?.version ?? 0,
    onState: begin,
    onChange(change) {
      apply(change);
      if (change.toast) toasts.show(change.toast.title, change.toast.message);
      const { activate } = change;
      if (activate && activate.seat === seat) {
        // As on the host, a panel that goes to a cell keeps the focus until it asks to give it away.
        const focus = !(document.activeElement instanceof HTMLIFrameElement);
        leaveCell(() => view.open(activate.sheet, activate, { focus, at: 'top' }));
      }
    },
    onLink: (link) => sending.linkIs(link),
    onNotice: (notice) => sending.noticeIs(notice),
  });
  window.addEventListener('beforeunload', (event) => {
    // The browser asks before text that is nowhere else is thrown away.
    if (sending.holdsText || (editor.session && editor.text !== editor.session.before)) event.preventDefault();
  });
}
