import type { CellView, SheetView } from '../view.ts';
import { boxName } from './boxName.ts';
import { hrefOf } from './cellLink.ts';
import { type Block, blockBetween, cellKey, cellName, columnLetters, type Place, readCellName } from './cellName.ts';
import { element } from './element.ts';
import { gripDrag, handleDrag } from './gridDrags.ts';
import { coloursShown } from './sheetColours.ts';
import { texts } from './texts.ts';
import { cellAt, mergeAt, ownerOf, usedExtent, wholeBlock } from './workbookModel.ts';

interface Selection {
  /** The cell that has the focus and takes what is typed. */
  readonly active: Place;
  /** The other corner of the block; the active cell itself where one cell is selected. */
  readonly reach: Place;
}
/** How a selection is brought into view: where it is nearest, or with its row first under the held rows. */
export interface Arrival {
  readonly focus?: boolean;
  readonly at?: 'nearest' | 'top';
}
export interface GridEvents {
  /** A press on a cell; returns true where it was used for something else, such as a formula being typed. */
  press(place: Place, event: MouseEvent): boolean;
  open(place: Place): void;
  choose(place: Place): void;
  follow(link: string): void;
  /** Text that came without a key of its own, as from an input method, while a cell was selected. */
  composed(place: Place, text: string): void;
  menu(place: Place, at: { readonly x: number; readonly y: number }): void;
  moved(): void;
  /** The handle of the selected block was dragged down to this row. */
  filled(lastRow: number): void;
  /** The edge of a column was dragged; undefined gives back its own width. */
  resized(column: number, width: number | undefined): void;
  /** Widths of this window's own. */
  ownWidths(sheet: number): Readonly<Record<number, number>>;
}
export interface Grid {
  readonly sheet: SheetView | undefined;
  readonly selection: Selection;
  readonly block: Block;
  /** Draws a whole sheet, keeping the selection that the sheet had before. */
  show(sheet: SheetView): void;
  /** Draws the rows of the cells that changed. */
  patch(sheet: SheetView, keys: readonly string[]): void;
  select(active: Place, reach?: Place, options?: Arrival): void;
  extend(reach: Place): void;
  /** Moves the selection without the focus, as when rows moved under a cell being typed in. */
  mark(place: Place): void;
  focus(): void;
  hasFocus(): boolean;
  cell(place: Place): HTMLTableCellElement | undefined;
  /** Text that is on its way to the server, shown at once. */
  echo(sheetId: number, place: Place, text: string | undefined): void;
  /** What formulas say in these rows is being worked out anew, and no longer known to be true. */
  working(sheetId: number, rows: readonly number[], on: boolean): void;
  /** How many rows fit in view, for the page keys. */
  rowsInView(): number;
}

/** Row numbers take less room where there is little. */
const headingWidths = { narrow: 34, usual: 46, narrowBelow: 500 };
const slightBelow = 20;
const spareRows = 24;
const spareColumns = 2;
const rowsAtFirst = 120;
const rowsAtOnce = 60;

/** The sheet as a real table with the roles of a grid. Rows beyond what is used are added when somebody goes there. */
export function createGrid(container: HTMLElement, events: GridEvents): Grid {
  const table = element('table', { role: 'grid', class: 'grid', 'aria-multiselectable': 'true' });
  container.append(table);
  const family = getComputedStyle(table).fontFamily;
  const dark = window.matchMedia('(prefers-color-scheme: dark)');
  let sheet: SheetView | undefined;
  let lastRow = 0;
  let drawnSheet: number | undefined;
  let lastColumn = 0;
  let columnsHeld = true;
  let headingWidth = headingWidths.usual;
  let selection: Selection = { active: { row: 1, column: 1 }, reach: { row: 1, column: 1 } };
  const remembered = new Map<number, Selection>();
  const cells = new Map<string, HTMLTableCellElement>();
  const rows = new Map<number, HTMLTableRowElement>();
  const lefts = new Map<number, number>();
  let heights = new Map<number, SheetView['rowHeights'][number]>();
  const echoes = new Map<string, string>();
  let body = element('tbody');
  let marked: HTMLElement[] = [];
  let own: Readonly<Record<number, number>> = {};
  /** Rows whose checks are being worked out, each with how many entries wait for it. */
  const busy = new Map<string, number>();
  const handle = element('span', { class: 'fill-handle', 'aria-hidden': 'true' });
  let handleHome: HTMLElement | undefined;

  const wantedHeadingWidth = (): number =>
    container.clientWidth < headingWidths.narrowBelow ? headingWidths.narrow : headingWidths.usual;
  const echoKey = (sheetId: number, place: Place): string => `${sheetId}:${cellKey(place)}`;
  const visibleColumns = (of: SheetView): number[] => {
    const hidden = new Set(of.hiddenColumns);
    return Array.from({ length: lastColumn }, (_, index) => index + 1).filter((column) => !hidden.has(column));
  };
  const widthOf = (of: SheetView, column: number): number => own[column] ?? of.columnWidths[column - 1] ?? 100;
  const frozenWidth = (of: SheetView): number =>
    visibleColumns(of)
      .filter((column) => column <= of.frozenColumns)
      .reduce((sum, column) => sum + widthOf(of, column), headingWidth);

  function describe(cell: CellView | undefined): string | undefined {
    if (!cell) return undefined;
    const parts = [
      cell.error,
      cell.note,
      cell.help,
      cell.spilled ? texts.spilledCell : undefined,
      cell.guarded === 'locked' ? texts.lockedCell : undefined,
    ].filter((part) => part !== undefined && part !== '');
    return parts.length > 0 ? parts.join(' ') : undefined;
  }

  /** Width over which text that is not wrapped may run: its own cell and the empty ones that follow. */
  function roomFor(of: SheetView, place: Place, cell: CellView): number {
    let room = widthOf(of, place.column);
    const alone = cell.clip || cell.options || cell.align === 'right' || cell.align === 'center';
    if (alone || mergeAt(of, place)) return room;
    let free = true;
    let ended = false;
    let heldRoom = 0;
    for (let column = place.column + 1; column <= lastColumn; column += 1) {
      // Text ends at a gap: beyond hidden columns it would seem to belong to others.
      if (of.hiddenColumns.includes(column)) {
        ended = true;
        continue;
      }
      const next = { row: place.row, column };
      const neighbour = cellAt(of, next);
      if ((neighbour && neighbour.text !== '') || mergeAt(of, next) || echoes.has(echoKey(of.id, next))) {
        free = false;
        break;
      }
      if (ended) continue;
      room += widthOf(of, column);
      if (column <= of.frozenColumns) heldRoom += widthOf(of, column);
    }
    // Text of a held column would lie over whatever is scrolled under it, unless the row holds nothing else.
    if (place.column <= of.frozenColumns && columnsHeld && !free) return widthOf(of, place.column) + heldRoom;
    return room;
  }

  function draw(of: SheetView, place: Place, td: HTMLTableCellElement): void {
    const cell = cellAt(of, place);
    const echoed = echoes.get(echoKey(of.id, place));
    const text = echoed ?? cell?.text ?? '';
    const colours = coloursShown(cell ?? {}, dark.matches ? 'dark' : 'light');
    td.style.background = colours.background ?? '';
    td.style.color = colours.color ?? '';
    td.style.fontWeight = cell?.bold ? '600' : '';
    td.style.fontStyle = cell?.italic ? 'italic' : '';
    const fontSize = cell?.size ? Math.max(10, Math.round((cell.size / 10) * 14)) : undefined;
    td.style.fontSize = fontSize ? `${fontSize}px` : '';
    td.style.lineHeight = fontSize ? `${Math.round(fontSize * 1.42)}px` : '';
    td.style.verticalAlign = cell?.vertical ?? '';
    td.style.textAlign = cell?.align ?? '';
    td.classList.toggle('wrap', cell?.wrap === true);
    const line = cell?.border && coloursShown({ color: cell.border }, dark.matches ? 'dark' : 'light').color;
    td.classList.toggle('boxed', line !== undefined);
    td.style.setProperty('--box', line ?? '');
    td.classList.toggle('error', cell?.error !== undefined && echoed === undefined);
    td.classList.toggle('noted', Boolean(cell?.note));
    td.classList.toggle('sending', echoed !== undefined);
    td.classList.toggle('locked', cell?.guarded === 'locked');
    const readOnly = cell?.guarded === 'locked';
    if (readOnly) td.setAttribute('aria-readonly', 'true');
    else td.removeAttribute('aria-readonly');
    const description = describe(cell);
    if (description) td.setAttribute('aria-description', description);
    else td.removeAttribute('aria-description');
    const label = line === undefined ? undefined : boxName(of, place, text);
    if (label) td.setAttribute('aria-label', label);
    else td.removeAttribute('aria-label');
    if (cell?.options) td.setAttribute('aria-haspopup', 'listbox');
    else td.removeAttribute('aria-haspopup');

    const working = cell?.spilled === true && (busy.get(`${of.id}:${place.row}`) ?? 0) > 0;
    td.classList.toggle('working', working);
    if (working) td.setAttribute('aria-busy', 'true');
    else td.removeAttribute('aria-busy');

    const content: HTMLElement[] = [];
    if (text !== '') {
      const href = cell?.link && echoed === undefined ? hrefOf(cell.link) : undefined;
      const shown =
        href !== undefined
          ? element('a', { href, tabindex: -1, class: 'text', rel: 'noopener noreferrer' }, text)
          : element('span', { class: 'text' }, text);
      if (!cell?.wrap) {
        const room = roomFor(of, place, cell ?? { text, input: text });
        if (room > widthOf(of, place.column)) shown.style.maxWidth = `${room - 13}px`;
        shown.classList.toggle('runs-on', room > widthOf(of, place.column));
        // Clipping thousands of cells is slow to draw; only text that may be too long needs it.
        shown.classList.toggle('clip', text.length * 11 > room - 13);
      }
      // The old text keeps its room, so that nothing jumps, and says nothing meanwhile.
      if (working) shown.setAttribute('aria-hidden', 'true');
      content.push(shown);
      if (working) content.push(element('span', { class: 'working-mark' }, `… ${texts.working}`));
    }
    if (cell?.options && !readOnly)
      content.push(element('span', { class: 'choose', 'aria-hidden': 'true', title: texts.choose }));
    if (td === handleHome) content.push(handle);
    td.replaceChildren(...content);
  }

  function drawRow(of: SheetView, row: number): void {
    for (const column of visibleColumns(of)) {
      const td = cells.get(cellKey({ row, column }));
      if (td) draw(of, { row, column }, td);
    }
    openLines(of, row);
  }

  const pen = document.createElement('canvas').getContext('2d');
  /** Lines between cells would strike through text that runs over them. */
  function openLines(of: SheetView, row: number): void {
    const columns = visibleColumns(of);
    const crossed = new Set<number>();
    for (const [index, column] of columns.entries()) {
      const td = cells.get(cellKey({ row, column }));
      const shown = td?.querySelector<HTMLElement>('.runs-on');
      if (!td || !shown || !pen) continue;
      // Measured without the page, which would be laid out anew for every row.
      pen.font = `${td.style.fontStyle || 'normal'} ${td.style.fontWeight || '400'} ${td.style.fontSize || '14px'} ${family}`;
      const end = Math.min(6 + pen.measureText(shown.textContent ?? '').width, Number.parseFloat(shown.style.maxWidth));
      let edge = 0;
      for (const over of columns.slice(index)) {
        edge += widthOf(of, over);
        if (end <= edge) break;
        crossed.add(over);
      }
    }
    for (const column of columns) {
      cells.get(cellKey({ row, column }))?.classList.toggle('crossed', crossed.has(column));
    }
  }

  function makeRow(of: SheetView, row: number): HTMLTableRowElement {
    const tr = element('tr', { 'aria-rowindex': row + 1 });
    const height = heights.get(row);
    if (height !== undefined) {
      tr.style.setProperty('--height', `${height.height}px`);
      tr.classList.toggle('forced', height.forced);
      // Hardly more than a line: nothing can be read in it.
      tr.classList.toggle('slight', height.forced && height.height < slightBelow);
    }
    tr.append(
      element(
        'th',
        { role: 'rowheader', scope: 'row', class: 'row-heading', 'aria-colindex': 1, 'data-row': row },
        String(row),
      ),
    );
    for (const column of visibleColumns(of)) {
      const place = { row, column };
      const merge = mergeAt(of, place);
      if (merge && (merge.row !== row || merge.column !== column)) continue;
      const td = element('td', {
        role: 'gridcell',
        'aria-colindex': column + 1,
        'aria-selected': 'false',
        'data-cell': cellName(place),
        tabindex: -1,
      });
      if (merge) {
        const hidden = of.hiddenColumns.filter((at) => at >= merge.column && at < merge.column + merge.columns).length;
        td.colSpan = Math.min(merge.columns - hidden, lastColumn - column + 1);
        td.rowSpan = merge.rows;
      }
      const left = lefts.get(column);
      const lastOwn = merge ? merge.column + merge.columns - 1 : column;
      // Merged cells that reach past the held columns go along with the others.
      if (left !== undefined && columnsHeld && lastOwn <= of.frozenColumns) {
        td.classList.add('held');
        td.style.left = `${left}px`;
        if (lastOwn === of.frozenColumns) td.classList.add('held-last');
      }
      cells.set(cellKey(place), td);
      tr.append(td);
    }
    rows.set(row, tr);
    drawRow(of, row);
    return tr;
  }

  function addRows(of: SheetView, upTo: number): void {
    const hidden = new Set(of.hiddenRows);
    const last = Math.min(of.rows, upTo);
    for (let row = lastRow + 1; row <= last; row += 1) {
      if (!hidden.has(row)) body.append(makeRow(of, row));
    }
    lastRow = Math.max(lastRow, last);
  }

  function render(of: SheetView): void {
    const used = usedExtent(of);
    const drawnBefore = drawnSheet === of.id ? lastRow : 0;
    drawnSheet = of.id;
    own = events.ownWidths(of.id);
    cells.clear();
    rows.clear();
    lefts.clear();
    heights = new Map(of.rowHeights.map((one) => [one.row, one]));
    lastColumn = Math.min(
      of.columns,
      Math.max(used.column + spareColumns, selection.active.column, selection.reach.column),
    );
    let covered = visibleColumns(of).reduce((sum, column) => sum + widthOf(of, column), headingWidth);
    for (; lastColumn < of.columns && covered < container.clientWidth; lastColumn += 1) {
      covered += widthOf(of, lastColumn + 1);
    }
    const columns = visibleColumns(of);
    headingWidth = wantedHeadingWidth();
    // Held columns that leave no room to read the others are let go, as on a phone.
    columnsHeld = frozenWidth(of) <= container.clientWidth * 0.55;
    let left = headingWidth;
    for (const column of columns) {
      if (column <= of.frozenColumns) lefts.set(column, left);
      left += widthOf(of, column);
    }
    const group = element('colgroup', {}, element('col'));
    (group.firstElementChild as HTMLElement).style.width = `${headingWidth}px`;
    for (const column of columns) {
      const col = element('col');
      col.style.width = `${widthOf(of, column)}px`;
      group.append(col);
    }
    table.style.width = `${left}px`;
    const headings = element(
      'tr',
      { 'aria-rowindex': 1, class: 'headings' },
      element(
        'th',
        {
          role: 'columnheader',
          scope: 'col',
          class: 'corner',
          'aria-colindex': 1,
        },
        element('span', { class: 'unseen' }, texts.cornerLabel),
      ),
    );
    for (const column of columns) {
      const th = element(
        'th',
        { role: 'columnheader', scope: 'col', 'aria-colindex': column + 1, 'data-column': column },
        columnLetters(column),
        element('span', { class: 'width-grip', 'aria-hidden': 'true', title: texts.gripLabel }),
      );
      const held = lefts.get(column);
      if (held !== undefined && columnsHeld) {
        th.classList.add('held');
        th.style.left = `${held}px`;
      }
      headings.append(th);
    }
    const head = element('thead', { role: 'rowgroup' }, headings);
    const hiddenRows = new Set(of.hiddenRows);
    for (let row = 1; row <= of.frozenRows; row += 1) {
      if (!hiddenRows.has(row)) head.append(makeRow(of, row));
    }
    head.classList.toggle('holds-rows', of.frozenRows > 0);
    body = element('tbody', { role: 'rowgroup' });
    lastRow = of.frozenRows;
    const selected = Math.max(selection.active.row, selection.reach.row);
    addRows(of, Math.max(selected + spareRows, Math.min(used.row + spareRows, Math.max(rowsAtFirst, drawnBefore))));
    table.replaceChildren(group, head, body);
    table.setAttribute('aria-label', of.name);
    table.setAttribute('aria-rowcount', String(of.rows + 1));
    table.setAttribute('aria-colcount', String(of.columns + 1));
    container.style.scrollPaddingLeft = `${columnsHeld ? frozenWidth(of) : headingWidth}px`;
    container.style.scrollPaddingTop = `${head.offsetHeight}px`;
  }

  function mark(): void {
    for (const old of marked) {
      old.classList.remove('active', 'in-block', 'pointed');
      if (old.matches('td')) {
        old.setAttribute('aria-selected', 'false');
        old.tabIndex = -1;
        old.removeAttribute('contenteditable');
      }
    }
    marked = [];
    if (!sheet) return;
    const { top, left, bottom, right } = grid.block;
    const one = cells.get(cellKey(ownerOf(sheet, selection.active)));
    const many = top !== bottom || left !== right;
    for (let row = top; row <= Math.min(bottom, lastRow); row += 1) {
      const heading = rows.get(row)?.firstElementChild as HTMLElement | null;
      if (heading) {
        heading.classList.add('pointed');
        marked.push(heading);
      }
      for (let column = left; column <= Math.min(right, lastColumn); column += 1) {
        const td = cells.get(cellKey({ row, column }));
        if (!td) continue;
        td.setAttribute('aria-selected', 'true');
        if (many && td !== one) td.classList.add('in-block');
        marked.push(td);
      }
    }
    for (const th of table.querySelectorAll<HTMLElement>('.headings th[data-column]')) {
      const column = Number(th.dataset.column);
      if (column < left || column > right) continue;
      th.classList.add('pointed');
      marked.push(th);
    }
    if (one) {
      one.classList.add('active');
      one.setAttribute('aria-selected', 'true');
      one.tabIndex = 0;
      if (one.getAttribute('aria-readonly') !== 'true') {
        // Only a field that can be written in is offered to an input method; on a touch screen no keys come up yet.
        one.contentEditable = 'plaintext-only';
        one.inputMode = 'none';
        one.spellcheck = false;
      }
      marked.push(one);
    }
    handle.remove();
    handleHome = cells.get(cellKey({ row: bottom, column: right })) ?? one;
    handleHome?.append(handle);
  }

  /** Scrolls the grid alone, once the line above it has settled at its height. */
  function toTop(td: HTMLElement): void {
    if (td.closest('thead')) return;
    const held = table.tHead?.getBoundingClientRect().bottom ?? container.getBoundingClientRect().top;
    container.scrollTop += td.getBoundingClientRect().top - held;
  }

  function reveal(place: Place): void {
    if (!sheet) return;
    if (place.row > lastRow) addRows(sheet, place.row + spareRows);
    if (place.column > lastColumn) render(sheet);
  }

  const grid: Grid = {
    get sheet() {
      return sheet;
    },
    get selection() {
      return selection;
    },
    get block() {
      const block = blockBetween(selection.active, selection.reach);
      return sheet ? wholeBlock(sheet, block) : block;
    },
    show(next) {
      const had = grid.hasFocus();
      const same = sheet?.id === next.id;
      if (sheet && !same) remembered.set(sheet.id, selection);
      const scroll = same ? { top: container.scrollTop, left: container.scrollLeft } : { top: 0, left: 0 };
      if (!same) {
        const first = { row: 1, column: 1 };
        selection = remembered.get(next.id) ?? { active: first, reach: first };
      }
      const inside = (place: Place): Place => ({
        row: Math.min(place.row, next.rows),
        column: Math.min(place.column, next.columns),
      });
      selection = { active: inside(selection.active), reach: inside(selection.reach) };
      sheet = next;
      render(next);
      container.scrollTo(scroll);
      mark();
      if (had) grid.focus();
      if (!same)
        cells.get(cellKey(ownerOf(next, selection.active)))?.scrollIntoView({ block: 'nearest', inline: 'nearest' });
    },
    patch(next, keys) {
      sheet = next;
      const changed = new Set(keys.map((key) => Number(key.slice(0, key.indexOf(',')))));
      const furthest = Math.max(0, ...keys.map((key) => Number(key.slice(key.indexOf(',') + 1))));
      if (furthest > lastColumn) {
        grid.show(next);
        return;
      }
      for (const row of changed) {
        if (row > lastRow) addRows(next, row + spareRows);
        else drawRow(next, row);
      }
    },
    select(active, reach = active, { focus = true, at = 'nearest' } = {}) {
      if (!sheet) return;
      selection = { active: ownerOf(sheet, active), reach };
      reveal(active);
      reveal(reach);
      mark();
      // Rows enough below, so that even the last one drawn can stand first.
      if (at === 'top') addRows(sheet, selection.active.row + rowsAtOnce);
      const td = grid.cell(active);
      if (focus) td?.focus({ preventScroll: true });
      td?.scrollIntoView({ block: 'nearest', inline: 'nearest' });
      events.moved();
      if (at === 'top' && td) toTop(td);
    },
    extend(reach) {
      if (!sheet) return;
      selection = { ...selection, reach };
      reveal(reach);
      mark();
      grid.cell(reach)?.scrollIntoView({ block: 'nearest', inline: 'nearest' });
      events.moved();
    },
    mark(place) {
      selection = { active: place, reach: place };
      mark();
    },
    focus() {
      grid.cell(selection.active)?.focus({ preventScroll: true });
    },
    hasFocus: () => table.contains(document.activeElement),
    cell: (place) => (sheet ? cells.get(cellKey(ownerOf(sheet, place))) : undefined),
    echo(sheetId, place, text) {
      if (text === undefined) echoes.delete(echoKey(sheetId, place));
      else echoes.set(echoKey(sheetId, place), text);
      if (sheet?.id === sheetId && rows.has(place.row)) drawRow(sheet, place.row);
    },
    working(sheetId, workingRows, on) {
      for (const row of workingRows) {
        const key = `${sheetId}:${row}`;
        busy.set(key, Math.max(0, (busy.get(key) ?? 0) + (on ? 1 : -1)));
        if (sheet?.id === sheetId && rows.has(row)) drawRow(sheet, row);
      }
    },
    rowsInView: () => Math.max(3, Math.floor(container.clientHeight / 30) - 3),
  };

  const placeOf = (target: EventTarget | null): Place | undefined => {
    const td = (target as HTMLElement | null)?.closest<HTMLElement>('td[data-cell]');
    return td ? readCellName(td.dataset.cell ?? '') : undefined;
  };
  let dragging = false;
  let pressedActive = false;
  const fill = handleDrag(table, {
    block: () => grid.block,
    rowAt: (target) => placeOf(target)?.row,
    rowElement: (row) => rows.get(row),
    filled: (lastRow) => events.filled(lastRow),
  });
  const widths = gripDrag(table, {
    width: (column) => (sheet ? widthOf(sheet, column) : 100),
    column: (column) => table.querySelectorAll<HTMLElement>('col')[visibleColumnIndex(column)],
    resized: (column, width) => {
      events.resized(column, width);
      if (sheet) grid.show(sheet);
    },
  });
  const visibleColumnIndex = (column: number): number => (sheet ? visibleColumns(sheet).indexOf(column) + 1 : -1);
  table.addEventListener('mousedown', (event) => {
    if (fill.start(event) || widths.start(event)) return;
    const target = event.target as HTMLElement;
    const place = placeOf(target);
    const heading = target.closest<HTMLElement>('th');
    if (!sheet) return;
    if (place) {
      pressedActive = place.row === selection.active.row && place.column === selection.active.column;
      event.preventDefault();
      if (events.press(place, event)) return;
      // A press on a link is on its way elsewhere; selecting its cell first would move the grid under the pointer.
      if (event.button === 0 && !event.shiftKey && target.closest('a')) return;
      if (event.button === 2) {
        const { top, left, bottom, right } = grid.block;
        const within = place.row >= top && place.row <= bottom && place.column >= left && place.column <= right;
        if (!within) grid.select(place);
        return;
      }
      if (event.button !== 0) return;
      if (event.shiftKey) grid.extend(place);
      else grid.select(place);
      dragging = true;
    } else if (heading && event.button === 0) {
      event.preventDefault();
      const row = Number(heading.dataset.row ?? 0);
      const column = Number(heading.dataset.column ?? 0);
      const used = usedExtent(sheet);
      const last = { row: Math.max(1, used.row), column: Math.max(1, used.column) };
      if (events.press({ row: row || 1, column: column || 1 }, event)) return;
      if (row) grid.select({ row, column: 1 }, { row, column: last.column });
      else if (column) grid.select({ row: 1, column }, { row: last.row, column });
      else grid.select({ row: 1, column: 1 }, last);
    }
  });
  table.addEventListener('mouseover', (event) => {
    if (!dragging) return;
    const place = placeOf(event.target);
    if (place) grid.extend(place);
  });
  window.addEventListener('mouseup', () => {
    dragging = false;
  });
  table.addEventListener('click', (event) => {
    const target = event.target as HTMLElement;
    const place = placeOf(target);
    const link = target.closest('a');
    if (link) {
      event.preventDefault();
      events.follow(link.getAttribute('href') ?? '');
      return;
    }
    if (!place) return;
    if (target.closest('.choose')) events.choose(place);
    // A finger has no double click: a second touch on the same cell opens it.
    else if (pressedActive && (event as PointerEvent).pointerType === 'touch') events.open(place);
  });
  table.addEventListener('dblclick', (event) => {
    const place = placeOf(event.target);
    if (place && !(event.target as HTMLElement).closest('a')) events.open(place);
  });
  table.addEventListener('contextmenu', (event) => {
    const place = placeOf(event.target);
    if (!place) return;
    event.preventDefault();
    events.menu(place, { x: event.clientX, y: event.clientY });
  });
  table.addEventListener('beforeinput', (event) => {
    const place = placeOf(event.target);
    // While it is composed, text stands in the cell itself: a change of focus would end the composition.
    if (!place || event.isComposing) return;
    event.preventDefault();
    if (event.inputType === 'insertText' && event.data) events.composed(place, event.data);
  });
  table.addEventListener('compositionend', (event) => {
    const place = placeOf(event.target);
    if (!sheet || !place) return;
    drawRow(sheet, place.row);
    const { data } = event;
    // A press on another cell ends a composition too; what it does comes first, then the text gets its field.
    if (data !== '') queueMicrotask(() => events.composed(place, data));
  });
  container.addEventListener(
    'scroll',
    () => {
      const nearEnd = container.scrollTop + container.clientHeight > container.scrollHeight - 200;
      if (sheet && nearEnd && lastRow < sheet.rows) {
        addRows(sheet, lastRow + rowsAtOnce);
        mark();
      }
    },
    { passive: true },
  );
  dark.addEventListener('change', () => {
    if (sheet) grid.show(sheet);
  });
  let widthBefore = container.clientWidth;
  new ResizeObserver(() => {
    // Drawn again only where holding columns turns on or off, or the row numbers change their width.
    if (!sheet || container.clientWidth === widthBefore) return;
    widthBefore = container.clientWidth;
    const holds = frozenWidth(sheet) <= container.clientWidth * 0.55;
    if (holds !== columnsHeld || wantedHeadingWidth() !== headingWidth) grid.show(sheet);
  }).observe(container);
  return grid;
}
