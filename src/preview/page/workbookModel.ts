import type { CellView, ChangeView, MergeView, SheetView, WorkbookView } from '../view.ts';
import { type Block, cellKey, type Place } from './cellName.ts';

/** What one change touched: sheets that came whole, and cells by sheet. */
interface Touched {
  readonly sheets: ReadonlySet<number>;
  readonly cells: ReadonlyMap<number, readonly string[]>;
  readonly tabs: boolean;
}

/** The workbook as the server last told it. */
export interface WorkbookModel {
  readonly name: string;
  readonly locale: string;
  version: number;
  readonly sheets: Map<number, SheetView>;
  order: number[];
  /** True where a change is news; an older one, or one that came by two ways, is not. */
  apply(change: ChangeView): Touched | undefined;
}

export function workbookModel(view: WorkbookView): WorkbookModel {
  const sheets = new Map(view.sheets.map((sheet) => [sheet.id, sheet]));
  return {
    name: view.name,
    locale: view.locale,
    version: view.version,
    sheets,
    order: view.sheets.map(({ id }) => id),
    apply(change) {
      if (change.version <= this.version) return undefined;
      const orderBefore = this.order.join();
      const cells = new Map<number, string[]>();
      for (const removed of change.removedSheets) sheets.delete(removed);
      for (const sheet of change.sheets) sheets.set(sheet.id, sheet);
      if (change.order.length > 0) this.order = change.order.filter((id) => sheets.has(id));
      for (const { sheet: id, cells: news } of change.cells) {
        const sheet = sheets.get(id);
        if (!sheet) continue;
        const known: Record<string, CellView> = { ...sheet.cells };
        for (const [key, cell] of Object.entries(news)) {
          if (cell) known[key] = cell;
          else delete known[key];
        }
        sheets.set(id, { ...sheet, cells: known });
        cells.set(id, [...(cells.get(id) ?? []), ...Object.keys(news)]);
      }
      this.version = change.version;
      return {
        sheets: new Set(change.sheets.map(({ id }) => id)),
        cells,
        tabs: change.sheets.length > 0 || change.removedSheets.length > 0 || this.order.join() !== orderBefore,
      };
    },
  };
}

export const cellAt = (sheet: SheetView, place: Place): CellView | undefined => sheet.cells[cellKey(place)];

export const mergeAt = (sheet: SheetView, { row, column }: Place): MergeView | undefined =>
  sheet.merges.find(
    (merge) =>
      row >= merge.row &&
      row < merge.row + merge.rows &&
      column >= merge.column &&
      column < merge.column + merge.columns,
  );

/** The cell that stands for a place: itself, or the first cell of the merged cells it belongs to. */
export function ownerOf(sheet: SheetView, place: Place): Place {
  const merge = mergeAt(sheet, place);
  return merge ? { row: merge.row, column: merge.column } : place;
}

/** Last row and column that hold anything to see. */
export function usedExtent(sheet: SheetView): Place {
  let row = 0;
  let column = 0;
  for (const key of Object.keys(sheet.cells)) {
    const comma = key.indexOf(',');
    row = Math.max(row, Number(key.slice(0, comma)));
    column = Math.max(column, Number(key.slice(comma + 1)));
  }
  return { row, column };
}

/** Last row and column that hold text; formats alone do not count. */
export function textExtent(sheet: SheetView): Place {
  let row = 1;
  let column = 1;
  for (const [key, cell] of Object.entries(sheet.cells)) {
    if (cell.text === '' && cell.input === '') continue;
    const comma = key.indexOf(',');
    row = Math.max(row, Number(key.slice(0, comma)));
    column = Math.max(column, Number(key.slice(comma + 1)));
  }
  return { row, column };
}

/** The next visible place in a direction, past merged cells, hidden rows and hidden columns; stays where there is none. */
export function nextPlace(
  sheet: SheetView,
  from: Place,
  step: { readonly rows: number; readonly columns: number },
): Place {
  const hiddenRows = new Set(sheet.hiddenRows);
  const hiddenColumns = new Set(sheet.hiddenColumns);
  const start = ownerOf(sheet, from);
  let { row, column } = from;
  for (;;) {
    row += Math.sign(step.rows);
    column += Math.sign(step.columns);
    if (row < 1 || column < 1 || row > sheet.rows || column > sheet.columns) return from;
    if (hiddenRows.has(row) || hiddenColumns.has(column)) continue;
    const owner = ownerOf(sheet, { row, column });
    if (owner.row === start.row && owner.column === start.column) continue;
    return owner;
  }
}

/** A block grown until it cuts through no merged cells. */
export function wholeBlock(sheet: SheetView, block: Block): Block {
  let { top, left, bottom, right } = block;
  for (let grown = true; grown; ) {
    grown = false;
    for (const merge of sheet.merges) {
      const lastRow = merge.row + merge.rows - 1;
      const lastColumn = merge.column + merge.columns - 1;
      if (merge.row > bottom || lastRow < top || merge.column > right || lastColumn < left) continue;
      if (merge.row < top || lastRow > bottom || merge.column < left || lastColumn > right) {
        top = Math.min(top, merge.row);
        left = Math.min(left, merge.column);
        bottom = Math.max(bottom, lastRow);
        right = Math.max(right, lastColumn);
        grown = true;
      }
    }
  }
  return { top, left, bottom, right };
}

/** What a row says to the left and right of one column, so that the row is known again after rows moved. */
export const rowMark = (sheet: SheetView, place: Place): string => {
  const words: string[] = [];
  for (let column = 1; column <= sheet.columns; column += 1) {
    const cell = sheet.cells[cellKey({ row: place.row, column })];
    if (column === place.column || !cell || cell.spilled || cell.input === '') continue;
    words.push(`${column}:${cell.input.startsWith('=') ? cell.text : cell.input}`);
  }
  return words.join('\n');
};
