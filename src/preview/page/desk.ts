import type {
  CellView,
  ChangeView,
  Edit,
  FunctionHelp,
  MenuView,
  PlaceView,
  Seat,
  SheetView,
  StepView,
} from '../view.ts';
import { announce } from './announce.ts';
import { asTyped } from './asTyped.ts';
import { destination } from './cellLink.ts';
import { blockName, cellKey, cellName, columnLetters, type Place, readCellName } from './cellName.ts';
import { createCellTip } from './cellTip.ts';
import { type Clip, clipOf, type PlacedText, pasteInto } from './clipboard.ts';
import { createColumnWidths } from './columnWidths.ts';
import { connect, type State, Unreachable } from './connection.ts';
import { askFirst, openDialog } from './dialogs.ts';
import { earlierEntry } from './earlierEntry.ts';
import { createEditor, type Session } from './editor.ts';
import { byId, element } from './element.ts';
import { fillDown } from './fillDown.ts';
import { followedRow } from './followedRow.ts';
import { type Arrival, createGrid } from './grid.ts';
import { gridKeys } from './gridKeys.ts';
import { guardQuestion } from './guardQuestion.ts';
import { createKeptEdits, type KeptEdit, typedOver } from './keptEdits.ts';
import { messageParts } from './messageParts.ts';
import { createPanels, type PanelAddress } from './panel.ts';
import { type MenuLine, menuButtons, openMenu } from './popupMenu.ts';
import { rowNews } from './rowNews.ts';
import { slowAnswers } from './slowAnswers.ts';
import { createTabs } from './tabs.ts';
import { texts } from './texts.ts';
import { whoseRows } from './whose.ts';
import { cellAt, nextPlace, ownerOf, textExtent, type WorkbookModel, workbookModel } from './workbookModel.ts';

interface TypeAnswer {
  readonly refused: readonly { readonly edit: Edit; readonly reason: string }[];
}
type Guarded = 'cells' | 'rows';
const widthStep = 40;
/** So many cells emptied at once by another window are worth a word. */
const manyCleared = 10;
type Step = { readonly rows: number; readonly columns: number };

/**
 * The window of one seat: puts grid, line, tabs, menus and panel to work on one connection. With `offersEarlier` the grid
 * offers what stands in a column already to whoever types there, as the host may.
 */
export function startDesk(seat: Seat, { offersEarlier }: { readonly offersEarlier: boolean }): void {
  document.body.dataset.seat = seat;
  byId('seat-line').textContent = texts.seatLine[seat];
  const sheetBox = byId('sheet');
  const followButton = byId<HTMLButtonElement>('follow-link');
  const remembersSheet = `labrow sheet ${seat}`;

  let model: WorkbookModel | undefined;
  let functions: readonly FunctionHelp[] = [];
  let menus: readonly MenuView[] = [];
  let current = -1;
  let link: 'open' | 'lost' = 'open';
  /** The line that the server wants shown, as when the workbook cannot be saved. */
  let notice: string | null = null;
  /** Questions that hold for this window once they were answered with yes. */
  const answered = new Set<Guarded>();
  let clip: Clip | undefined;
  /** Column where a run of Tab began: Enter goes back under it. */
  let tabColumn: number | undefined;
  const latestEcho = new Map<string, { readonly send: number; readonly edit: Edit }>();
  let sends = 0;
  /** Counts what is on its way, and what the reader did: what comes back must not take the focus from somebody busy. */
  let sending = 0;
  let doings = 0;
  /** Rows whose news were told since the last entry went out. */
  const told = new Set<number>();
  const widths = createColumnWidths(sessionStorage, seat);

  const sheetNow = (): SheetView | undefined => model?.sheets.get(current);
  /** The sheet in view with what this window has typed there and not yet heard of. */
  const sheetAsTyped = (): SheetView | undefined => {
    const sheet = sheetNow();
    const going = [...latestEcho.values()].filter(({ edit }) => edit.sheet === current);
    return sheet && asTyped(sheet, new Map(going.map(({ edit }) => [cellKey(edit), edit.text])));
  };
  const visibleSheets = (): SheetView[] =>
    (model?.order ?? []).flatMap((id) => {
      const sheet = model?.sheets.get(id);
      return sheet && !sheet.hidden ? [sheet] : [];
    });

  // ── what is shown ──
  const grid = createGrid(sheetBox, {
    press(place, event) {
      if (!editor.session) return false;
      // A link keeps what is being typed by itself.
      if ((event.target as HTMLElement).closest('a') && !editor.text.startsWith('=')) return false;
      if (editor.session.sheet === current && event.button === 0 && editor.pointAt(cellName(place))) return true;
      void keep(editor.text, undefined, () => grid.select(place));
      return true;
    },
    open: (place) => openCell(place),
    choose: (place) => {
      grid.select(place);
      openCell(place);
    },
    follow,
    composed(place, text) {
      if (place.row !== grid.selection.active.row || place.column !== grid.selection.active.column) grid.select(place);
      typeOver(text);
    },
    menu: (place, at) => rowMenu(place, at),
    moved() {
      doings += 1;
      showCell();
    },
    filled: (lastRow) => void fill(lastRow),
    resized(column, width) {
      widths.set(current, column, width);
    },
    ownWidths: (sheet) => widths.of(sheet),
  });
  const editor = createEditor({
    container: sheetBox,
    cellElement: (place) => (editor.session && editor.session.sheet === current ? grid.cell(place) : undefined),
    functions: () => functions,
    events: {
      keep: (text, move) => void keep(text, move),
      leave() {
        editor.close();
        showCell();
        grid.focus();
      },
      lineFocused() {
        const sheet = sheetNow();
        const { active } = grid.selection;
        if (!sheet || refusesTyping(sheet, active)) return;
        editor.open(sessionAt(sheet, active, false), { text: editor.text, where: 'line', list: false });
      },
    },
  });
  const tabs = createTabs(
    (id) =>
      void leaveCell(() => {
        // To draw the sheet in view anew takes long and would change nothing.
        if (id !== current) openSheet(id);
      }),
  );

  function showCell(): void {
    const sheet = sheetNow();
    if (!sheet) return;
    const { active } = grid.selection;
    const block = grid.block;
    const cell = cellAt(sheet, active);
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
    const leads = cell?.link ? destination(cell.link, model?.sheets.values() ?? []) : undefined;
    followButton.hidden = !leads;
    followButton.textContent = leads?.kind === 'outside' ? texts.followOutside : texts.followLink;
    showTip(active);
    if (many) announce(texts.selected(blockName(block), rows, columns));
  }
  const mergedWhole = (sheet: SheetView, { row, column }: Place, rows: number, columns: number): boolean =>
    sheet.merges.some(
      (merge) => merge.row === row && merge.column === column && merge.rows === rows && merge.columns === columns,
    );
  const guardText = (cell: CellView | undefined): string | undefined =>
    cell?.guarded === 'locked'
      ? texts.lockedCell
      : cell?.guarded === 'warning' && !answered.has('cells')
        ? texts.guardedCell
        : undefined;

  const tip = createCellTip();
  let tipSentAway = '';
  function showTip(place: Place): void {
    const sheet = sheetNow();
    const cell = sheet && cellAt(sheet, ownerOf(sheet, place));
    const name = `${current} ${cellName(place)}`;
    if (name !== tipSentAway) tipSentAway = '';
    if (!cell || editor.session || tipSentAway !== '') tip.hide();
    else tip.show(grid.cell(place), cell.error ?? cell.note, cell.error !== undefined);
  }
  sheetBox.addEventListener('mouseover', (event) => {
    const name = (event.target as HTMLElement).closest<HTMLElement>('td')?.dataset.cell;
    const place = name ? readCellName(name) : undefined;
    const hovered = place && grid.cell(place);
    showTip(place && hovered?.matches('.noted, .error') ? place : grid.selection.active);
  });
  sheetBox.addEventListener('scroll', () => showTip(grid.selection.active), { passive: true });

  function openSheet(id: number, at?: Place, arrival: Arrival = {}): void {
    const sheet = model?.sheets.get(id);
    if (!model || !sheet) return;
    current = id;
    sessionStorage.setItem(remembersSheet, String(id));
    document.title = `${sheet.name} · ${model.name}`;
    tabs.show(visibleSheets(), id);
    grid.show(sheet);
    const inside = at && { row: Math.min(at.row, sheet.rows), column: Math.min(at.column, sheet.columns) };
    if (inside) grid.select(inside, inside, arrival);
    else showCell();
    editor.reposition();
  }
  const slow = slowAnswers(() => {
    kept.show();
    if (slow.any) announce(texts.slowAnswers);
  });
  const kept = createKeptEdits({
    strip: byId('strip'),
    lines: () => [
      ...(notice === null ? [] : [notice]),
      ...(link === 'lost' ? [texts.linkLost] : slow.any ? [texts.slowAnswers] : []),
    ],
    sheet: (id) => model?.sheets.get(id),
    send: (edits) => void sendAgain(edits),
    putBack: (one) =>
      void leaveCell(() => {
        kept.forget(one);
        openSheet(one.edit.sheet, one.edit);
        openCell(one.edit, one.edit.text, one.reason);
      }),
  });
  /** A place that the address of the window names is shown once; then the reader goes where they like. */
  function openAsked(): boolean {
    const { hash, pathname, search } = window.location;
    const leads = destination(hash, visibleSheets());
    if (leads?.kind !== 'cell') return false;
    history.replaceState(null, '', `${pathname}${search}`);
    openSheet(leads.sheet, leads.place, { at: 'top' });
    return true;
  }
  window.addEventListener('hashchange', () => {
    if (model) void leaveCell(() => openAsked());
  });
  async function sendAgain(edits: readonly Edit[]): Promise<void> {
    if (await send(edits)) announce(texts.savedAfterAll(edits.map((edit) => cellName(edit)).join(', ')));
  }
  function toast(title: string, message: string, back = false): void {
    const undo = element('button', { type: 'button', class: 'close' }, texts.undo);
    const close = element('button', { type: 'button', class: 'close' }, texts.dismiss);
    const box = element(
      'div',
      { class: 'toast' },
      element('p', {}, element('b', {}, title), title ? ' ' : '', message),
      ...(back ? [undo] : []),
      close,
    );
    undo.addEventListener('click', () => {
      box.remove();
      void step('undo');
    });
    close.addEventListener('click', () => box.remove());
    document.querySelector('.toast')?.remove();
    byId('desk').append(box);
    window.setTimeout(() => box.remove(), 12_000);
    announce(`${title} ${message}`.trim());
  }
  const complain = (error: unknown): void => {
    const said = error instanceof Error ? error.message : String(error);
    toast('', said);
    announce(said, 'urgent');
  };

  // ── typing ──
  const sessionAt = (sheet: SheetView, at: Place, quick: boolean): Session => {
    const place = ownerOf(sheet, at);
    const cell = cellAt(sheet, place);
    return {
      sheet: sheet.id,
      place,
      before: cell?.input ?? '',
      quick,
      choices: cell?.options,
      offers: offersEarlier ? (typed) => earlierEntry(sheetNow() ?? sheet, place, typed) : undefined,
    };
  };
  const refusesTyping = (sheet: SheetView, place: Place): string | undefined =>
    cellAt(sheet, ownerOf(sheet, place))?.guarded === 'locked' ? texts.lockedRefused : undefined;
  function openCell(place: Place, text?: string, message?: string): void {
    const sheet = sheetNow();
    if (!sheet) return;
    const refused = refusesTyping(sheet, place);
    if (refused && text === undefined) {
      toast('', refused);
      announce(refused, 'urgent');
      return;
    }
    const session = sessionAt(sheet, place, false);
    editor.open(session, { text: text ?? session.before, where: 'cell', ...(message ? { message } : {}) });
    tip.hide();
    if (message) announce(message, 'urgent');
  }
  /** Opens an empty field for the key that is on its way: it lands there, accents and input methods included. */
  function typeOver(text = ''): void {
    const sheet = sheetNow();
    if (!sheet) return;
    const { active } = grid.selection;
    const refused = refusesTyping(sheet, active);
    if (refused) {
      toast('', refused);
      announce(refused, 'urgent');
      return;
    }
    editor.open(sessionAt(sheet, active, true), { text, where: 'cell' });
    tip.hide();
  }
  /** Keeps what is being typed, if anything is, then goes on; stays where it was refused. */
  async function leaveCell(then: () => void): Promise<void> {
    if (editor.session) await keep(editor.text, undefined, then);
    else then();
  }
  /** Asks before a change that may hurt: how many cells, and whose. */
  async function allowed(places: readonly Place[], kind: Guarded = 'cells'): Promise<boolean> {
    const sheet = sheetNow();
    if (!sheet) return true;
    const mine = lastTypedRow === 0 ? [] : whoseRows(sheet, [lastTypedRow]);
    const question = guardQuestion(sheet, { kind, places, mine });
    if (!question || (!question.eachTime && answered.has(kind))) return true;
    if (!(await askFirst(question))) return false;
    if (!question.eachTime) answered.add(kind);
    return true;
  }
  async function keep(text: string, move: Step | undefined, then?: () => void): Promise<void> {
    const session = editor.session;
    const sheet = model?.sheets.get(session?.sheet ?? -1);
    if (!session) return;
    if (!sheet) {
      editor.message(texts.sheetGone);
      return;
    }
    const { place } = session;
    const refused = refusesTyping(sheet, place);
    const untouched = text === session.before;
    if (refused && !untouched) {
      editor.message(refused);
      announce(refused, 'urgent');
      return;
    }
    if (!untouched && !(await allowed([place]))) {
      editor.focus();
      return;
    }
    editor.close();
    if (then) then();
    else {
      if (move?.columns) tabColumn ??= place.column;
      const under = move?.rows && tabColumn !== undefined ? { row: place.row, column: tabColumn } : place;
      if (!move?.columns) tabColumn = undefined;
      grid.select(move ? nextPlace(sheet, under, move) : place);
    }
    showCell();
    if (untouched) return;
    lastTypedRow = place.row;
    const covered = cellAt(sheet, place)?.spilled === true && text !== '';
    if ((await send([{ sheet: sheet.id, ...place, text }])) && covered)
      toast('', texts.inTheWay(cellName(place)), true);
  }

  /** Shows what was typed at once, sends it, and brings it back with the reason where it was not taken. */
  async function send(edits: readonly Edit[]): Promise<boolean> {
    if (edits.length === 0) return true;
    sends += 1;
    const mine = sends;
    const done = doings;
    const before = new Map<Edit, KeptEdit['typedOver']>();
    for (const edit of edits) {
      const sheet = model?.sheets.get(edit.sheet);
      if (sheet) before.set(edit, typedOver(sheet, edit));
      latestEcho.set(`${edit.sheet}:${cellKey(edit)}`, { send: mine, edit });
      const formula = edit.text.startsWith('=');
      grid.echo(edit.sheet, edit, formula ? '…' : edit.text.replace(/^'/, ''));
    }
    const working = workingRows(edits);
    for (const [sheet, rows] of working) grid.working(sheet, rows, true);
    told.clear();
    sending += 1;
    let refused: TypeAnswer['refused'] = [];
    let failed: unknown;
    try {
      const answer = await slow.wait(connection.ask<TypeAnswer>('type', { edits }));
      refused = answer.refused;
      apply(answer.change);
    } catch (error) {
      failed = error;
      refused = edits.map((edit) => ({ edit, reason: error instanceof Error ? error.message : String(error) }));
    }
    sending -= 1;
    for (const [sheet, rows] of working) grid.working(sheet, rows, false);
    for (const edit of edits) {
      const key = `${edit.sheet}:${cellKey(edit)}`;
      if (latestEcho.get(key)?.send !== mine) continue;
      latestEcho.delete(key);
      grid.echo(edit.sheet, edit, undefined);
    }
    const [first] = refused;
    if (!first) {
      sayUnchanged(edits);
      return true;
    }
    if (failed instanceof Unreachable) {
      kept.add(refused.map((one) => ({ ...one, typedOver: before.get(one.edit) }) as KeptEdit));
      announce(first.reason, 'urgent');
    } else if (edits.length === 1) giveBack(first, done === doings);
    else {
      const said = texts.someRefused(refused.length, edits.length, first.reason);
      toast('', said);
      announce(said, 'urgent');
    }
    return false;
  }
  /** Rows whose checks an entry sets to work, by sheet. */
  function workingRows(edits: readonly Edit[]): Map<number, number[]> {
    const rows = new Map<number, number[]>();
    for (const { sheet, row } of edits) {
      const known = rows.get(sheet) ?? [];
      rows.set(sheet, known.includes(row) ? known : [...known, row]);
    }
    return rows;
  }
  /** An entry whose check stays as it was changes no cell; who listens wants to hear the check all the same. */
  function sayUnchanged(edits: readonly Edit[]): void {
    const sheet = sheetNow();
    const [edit] = edits;
    if (!sheet || !edit || edits.length > 1 || edit.sheet !== sheet.id || edit.text === '' || told.has(edit.row))
      return;
    announce(rowNews(sheet, edit.row) ?? '');
  }
  /** A text that was not taken goes back into its cell only while nobody does anything else. */
  function giveBack(one: KeptEdit, idle: boolean): void {
    if (!idle || editor.session || document.querySelector('dialog[open]')) {
      kept.add([{ edit: one.edit, reason: one.reason }]);
      announce(one.reason, 'urgent');
      return;
    }
    if (one.edit.sheet !== current) openSheet(one.edit.sheet);
    grid.select(one.edit);
    openCell(one.edit, one.edit.text, one.reason);
  }

  // ── changes from the server ──
  function apply(change: ChangeView): void {
    if (!model) return;
    const before = sheetNow();
    const touched = model.apply(change);
    if (!touched) return;
    if (!model.sheets.has(current) || model.sheets.get(current)?.hidden) {
      const [first] = visibleSheets();
      if (first) openSheet(first.id);
    }
    const sheet = sheetNow();
    if (!sheet) return;
    if (touched.tabs) tabs.show(visibleSheets(), current);
    const keys = touched.cells.get(current) ?? [];
    let found = true;
    if (touched.sheets.has(current)) {
      grid.show(sheet);
      if (before && editor.session?.sheet === current) found = followRow(before, sheet);
    } else if (keys.length > 0) grid.patch(sheet, keys);
    if (editor.session) {
      if (found) noticeOthers();
      editor.reposition();
    } else showCell();
    if (!before || before.id !== sheet.id) return;
    sayRowNews(before, sheet, keys);
    sayCleared(before, sheet, keys);
  }
  /** Rows moved under the cell being typed in: goes along with its row, or says that it cannot. */
  function followRow(before: SheetView, sheet: SheetView): boolean {
    const { session } = editor;
    if (!session) return true;
    const row = followedRow(before, sheet, session.place);
    if (row === session.place.row) return true;
    if (row === undefined) {
      session.before = cellAt(sheet, session.place)?.input ?? '';
      editor.message(texts.rowLost);
      announce(texts.rowLost, 'urgent');
      return false;
    }
    session.place = { row, column: session.place.column };
    grid.mark(session.place);
    const said = texts.rowMoved(cellName(session.place));
    editor.message(said);
    announce(said);
    return true;
  }
  function noticeOthers(): void {
    const { session } = editor;
    const sheet = session && model?.sheets.get(session.sheet);
    if (!session || !sheet) return;
    const input = cellAt(sheet, session.place)?.input ?? '';
    if (input === session.before) return;
    session.before = input;
    const said = texts.changedMeanwhile(input);
    editor.message(said);
    announce(said);
  }
  /** Says what formulas now tell about the row in hand: its check, and what to look at. */
  function sayRowNews(before: SheetView, sheet: SheetView, keys: readonly string[]): void {
    const changed = new Set(keys.map((key) => Number.parseInt(key, 10)));
    const rows = [...new Set([lastTypedRow, grid.selection.active.row])].filter((row) => changed.has(row));
    const news = rows.flatMap((row) => {
      const said = rowNews(sheet, row, before);
      if (said !== undefined) told.add(row);
      return said === undefined ? [] : [said];
    });
    announce(news.join(' '));
  }
  /** Says when another window emptied many cells of the sheet in view. */
  function sayCleared(before: SheetView, sheet: SheetView, keys: readonly string[]): void {
    if (sending > 0) return;
    const cleared = keys.filter((key) => {
      const was = before.cells[key];
      return was && was.input !== '' && !was.spilled && (sheet.cells[key]?.input ?? '') === '';
    }).length;
    if (cleared >= manyCleared) toast('', texts.clearedElsewhere(cleared));
  }
  let lastTypedRow = 0;

  // ── the grid's own doings ──
  async function clearBlock(): Promise<void> {
    const sheet = sheetAsTyped();
    if (!sheet) return;
    const { top, left, bottom, right } = grid.block;
    const places: Place[] = [];
    for (const [key, cell] of Object.entries(sheet.cells)) {
      const [row = 0, column = 0] = key.split(',').map(Number);
      if (row < top || row > bottom || column < left || column > right) continue;
      if (cell.input !== '' && !cell.spilled) places.push({ row, column });
    }
    const one = refusesTyping(sheet, grid.selection.active);
    if (places.length === 0 && one) {
      toast('', one);
      announce(one, 'urgent');
    }
    if (places.length > 0 && (await allowed(places))) {
      await send(places.map((place) => ({ sheet: sheet.id, ...place, text: '' })));
    }
  }
  async function paste(text: string): Promise<void> {
    const sheet = sheetNow();
    if (!sheet || text === '') return;
    const { cells, rows, columns } = pasteInto(grid.block, text, clip);
    const { top, left } = grid.block;
    const block = { top, left, bottom: top + rows - 1, right: left + columns - 1 };
    if (block.bottom > sheet.rows || block.right > sheet.columns) {
      complain(new Error(texts.pasteTooLarge(rows, columns)));
      return;
    }
    // Blank cells beside what is pasted say nothing about what a formula or the table holds there.
    const wanted = cells.filter(({ text: pasted, ...place }: PlacedText) => {
      const cell = cellAt(sheet, place);
      return pasted !== '' || ((cell?.input ?? '') !== '' && !cell?.spilled && cell?.guarded === undefined);
    });
    if (!(await allowed(wanted))) return;
    grid.select({ row: top, column: left }, { row: block.bottom, column: block.right });
    if (await send(wanted.map((cell) => ({ sheet: sheet.id, ...cell })))) announce(texts.pasted(blockName(block)));
  }
  /** Fills down from the block's first row, or goes on with its last down to another row. */
  async function fill(lastRow?: number): Promise<void> {
    const sheet = sheetAsTyped();
    if (!sheet) return;
    const { block } = grid;
    if (lastRow === undefined && block.bottom === 1) {
      complain(new Error(texts.nothingAbove));
      return;
    }
    const cells = fillDown(sheet, block, lastRow);
    if (cells.length === 0 || !(await allowed(cells))) return;
    const bottom = lastRow ?? block.bottom;
    if (lastRow !== undefined) {
      grid.select({ row: block.top, column: block.left }, { row: bottom, column: block.right });
    }
    const whole = await send(cells.map((cell) => ({ sheet: sheet.id, ...cell })));
    if (whole) announce(texts.filledDown(blockName({ ...block, bottom })));
  }
  /** Takes back, or does again, what this window did; goes to the cell that it changes and names it. */
  async function step(action: 'undo' | 'redo'): Promise<void> {
    try {
      const { change, changed, left } = await connection.ask<StepView>(action, {});
      apply(change);
      const [first] = changed;
      const leftAlone = left.length > 0 ? texts.leftAlone(namesOf(left)) : '';
      if (!first) {
        const said = leftAlone || (action === 'undo' ? texts.nothingToUndo : texts.nothingToRedo);
        toast('', said);
        return;
      }
      openSheet(first.sheet, first);
      const sheet = model?.sheets.get(first.sheet);
      const now = changed.length === 1 && sheet ? texts.nowHolds(cellAt(sheet, first)?.text ?? '') : '';
      const said = (action === 'undo' ? texts.undone : texts.redone)(namesOf(changed), now);
      if (leftAlone) toast('', `${said} ${leftAlone}`);
      else announce(said);
    } catch (error) {
      complain(error);
    }
  }
  const namesOf = (places: readonly PlaceView[]): string => {
    const most = 3;
    const names = places.slice(0, most).map((place) => cellName(place));
    return [...names, ...(places.length > most ? [texts.moreCells(places.length - most)] : [])].join(', ');
  };
  async function changeRows(action: string, fields: object, said: string): Promise<void> {
    const sheet = current;
    // From here on keys belong to the rows again, so that Ctrl+Z takes the change back.
    grid.focus();
    try {
      const { change } = await connection.ask(action, { sheet, ...fields });
      apply(change);
      announce(said);
    } catch (error) {
      complain(error);
    }
  }
  /** Changes that may take a table apart: asked about where the rows hold guarded cells. */
  async function changeTableRows(
    rows: { readonly first: number; readonly last: number },
    change: () => Promise<void>,
  ): Promise<void> {
    const places = Object.keys(sheetNow()?.cells ?? {}).map((key) => {
      const [row = 0, column = 0] = key.split(',').map(Number);
      return { row, column };
    });
    const inside = places.filter(({ row }) => row >= rows.first && row <= rows.last);
    if (await allowed(inside, 'rows')) await change();
    else grid.focus();
  }
  function rowLines(place: Place): MenuLine[] {
    const sheet = sheetNow();
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
        complain(new Error(texts.nothingToSort));
        return;
      }
      const name = blockName({ top: from, left: 1, bottom: to, right: extent.column });
      void changeTableRows({ first: from, last: to }, () =>
        changeRows('sort-rows', { area, column: place.column, ascending }, texts.rowsOrdered(name)),
      );
    };
    const insert = (row: number): void => void changeRows('insert-rows', { row, count }, texts.rowsAdded(count));
    return [
      { label: texts.copyBlock, keys: 'Ctrl+C', act: () => void copyBlock() },
      { label: texts.clearBlock, keys: 'Delete', act: () => void clearBlock() },
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
  /** By the menu, for those who do not drag. */
  function widen(column: number, by: number): void {
    const sheet = sheetNow();
    if (!sheet) return;
    const now = widths.of(sheet.id)[column] ?? sheet.columnWidths[column - 1] ?? 100;
    widths.set(sheet.id, column, now + by);
    grid.show(sheet);
    grid.focus();
  }
  function rowMenu(place: Place, at: { readonly x: number; readonly y: number }): void {
    openMenu({ label: texts.rowMenu, lines: rowLines(place), at, onClose: () => grid.focus() });
  }
  async function copyBlock(): Promise<void> {
    const sheet = sheetAsTyped();
    if (!sheet) return;
    clip = clipOf(sheet, grid.block);
    await navigator.clipboard?.writeText(clip.text).catch(complain);
    announce(texts.copied(blockName(grid.block)));
  }
  function follow(address: string): void {
    const leads = destination(address, model?.sheets.values() ?? []);
    if (!leads) complain(new Error(texts.linkBroken));
    else if (leads.kind === 'outside') window.open(leads.address, '_blank', 'noopener,noreferrer');
    else void leaveCell(() => openSheet(leads.sheet, leads.place, { at: 'top' }));
  }
  gridKeys(sheetBox, {
    grid,
    sheet: sheetNow,
    typeOver,
    open: () => openCell(grid.selection.active),
    link: () => {
      const sheet = sheetNow();
      return sheet && cellAt(sheet, grid.selection.active)?.link;
    },
    clear: () => void clearBlock(),
    step: (action) => void step(action),
    fillDown: () => void fill(),
    menu() {
      const box = grid.cell(grid.selection.active)?.getBoundingClientRect();
      rowMenu(grid.selection.active, { x: (box?.left ?? 0) + 12, y: box?.bottom ?? 0 });
    },
    follow,
    leave: () => document.querySelector<HTMLElement>('#menus button, #tools button')?.focus(),
    moved: () => {
      tabColumn = undefined;
    },
    escape() {
      if (tip.shown) tipSentAway = `${current} ${cellName(grid.selection.active)}`;
      grid.select(grid.selection.active);
    },
  });
  followButton.addEventListener('click', () => {
    const sheet = sheetNow();
    const address = sheet && cellAt(sheet, grid.selection.active)?.link;
    if (address) follow(address);
  });
  const ours = (event: ClipboardEvent): boolean => grid.hasFocus() && !(event.target instanceof HTMLTextAreaElement);
  for (const kind of ['copy', 'cut'] as const) {
    document.addEventListener(kind, (event) => {
      const sheet = sheetAsTyped();
      if (!ours(event) || !sheet) return;
      clip = clipOf(sheet, grid.block);
      event.clipboardData?.setData('text/plain', clip.text);
      event.preventDefault();
      announce(texts.copied(blockName(grid.block)));
      if (kind === 'cut') void clearBlock();
    });
  }
  document.addEventListener('paste', (event) => {
    if (!ours(event)) return;
    event.preventDefault();
    void paste(event.clipboardData?.getData('text/plain') ?? '');
  });

  // ── menus, tools, panels ──
  /** A script that is run from here is told which sheet is in front, as the host knows it. */
  const runScript = <T>(action: 'run' | 'choose', fields: object) =>
    connection.askBeside<T>(action, { ...fields, ...(sheetNow() ? { sheet: current } : {}) });
  const panels = createPanels({
    async run(name, args) {
      const answer = await runScript<{ value: unknown; panel: PanelAddress | null }>('run', { name, args });
      apply(answer.change);
      return answer;
    },
    onFocusGrid: () => grid.focus(),
  });
  async function choose(run: string): Promise<void> {
    try {
      const answer = await runScript<{ panel: PanelAddress | null }>('choose', { run });
      apply(answer.change);
      if (answer.panel) panels.open(answer.panel);
    } catch (error) {
      complain(error);
    }
  }
  function showMenus(): void {
    menuButtons(
      byId('menus'),
      menus.map(({ title, items }) => ({
        label: title,
        lines: () =>
          items.map((item) =>
            item ? { label: item.label, act: () => void leaveCell(() => void choose(item.run)) } : null,
          ),
      })),
    );
    const [menu] = menus;
    const first = menu?.items[0];
    if (menu === undefined || !first) {
      byId('start').replaceChildren();
      return;
    }
    const start = element('button', { type: 'button', class: 'menu-button start-button' }, first.label);
    start.addEventListener('click', () => void leaveCell(() => void choose(first.run)));
    byId('start').replaceChildren(texts.startIn(menu.title), ' ', start);
  }
  function showTools(): void {
    const tools = byId('tools');
    const button = (label: string, act: () => void): HTMLButtonElement => {
      const made = element('button', { type: 'button', class: 'menu-button' }, label);
      made.addEventListener('click', act);
      return made;
    };
    const rows = element('div', { class: 'menus' });
    menuButtons(rows, [{ label: texts.rowMenu, lines: () => rowLines(grid.selection.active) }]);
    tools.replaceChildren(
      button(texts.undo, () => void leaveCell(() => void step('undo'))),
      button(texts.redo, () => void leaveCell(() => void step('redo'))),
      rows,
      button(texts.keys, () => {
        const list = element('dl', { class: 'keys' });
        for (const [keys, what] of texts.keyList) list.append(element('dt', {}, keys), element('dd', {}, what));
        const close = element('button', { type: 'button', class: 'act quiet' }, texts.closePanel);
        const dialog = openDialog({
          title: texts.keysTitle,
          content: [list, element('div', { class: 'answers' }, close)],
        });
        close.addEventListener('click', () => dialog.close());
      }),
    );
  }
  showTools();

  // ── the connection ──
  const connection = connect({
    seat,
    version: () => model?.version ?? 0,
    onState(state: State) {
      const first = model === undefined;
      const before = sheetNow();
      model = workbookModel(state.view);
      functions = state.functions;
      menus = state.menus;
      byId('workbook-name').textContent = model.name;
      showMenus();
      const shown = visibleSheets();
      const remembered = sessionStorage.getItem(remembersSheet);
      if (first && openAsked()) {
        grid.focus();
        return;
      }
      const wanted = !first ? current : remembered === null ? state.view.activeSheet : Number(remembered);
      const sheet =
        shown.find(({ id }) => id === wanted) ?? shown.find(({ id }) => id === state.view.activeSheet) ?? shown[0];
      if (!sheet) {
        sheetBox.append(element('p', { class: 'soft' }, texts.noSheet));
        return;
      }
      openSheet(sheet.id);
      if (editor.session) {
        if (!before || before.id !== sheet.id || followRow(before, sheet)) noticeOthers();
      } else if (first) grid.focus();
    },
    onChange(change) {
      apply(change);
      if (change.toast) toast(change.toast.title, change.toast.message);
      const { activate } = change;
      if (activate && activate.seat === seat) {
        // As on the host, a panel that goes to a cell keeps the focus until it asks to give it away.
        const focus = !(document.activeElement instanceof HTMLIFrameElement);
        void leaveCell(() => openSheet(activate.sheet, activate, { focus, at: 'top' }));
      }
    },
    onLink(next) {
      const was = link;
      link = next;
      kept.show();
      if (next === 'lost' && was !== 'lost') announce(texts.linkLost, 'urgent');
      if (next === 'open' && was === 'lost') {
        announce(texts.linkBack);
        kept.sendAgain();
      }
    },
    onNotice(next) {
      if (next !== null && next !== notice) announce(next, 'urgent');
      notice = next;
      kept.show();
    },
  });
  window.addEventListener('beforeunload', (event) => {
    // The browser asks before text that is nowhere else is thrown away.
    if (kept.any || sending > 0 || (editor.session && editor.text !== editor.session.before)) event.preventDefault();
  });
}
