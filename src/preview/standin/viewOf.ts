import type { CellView, Seat, SheetView, WorkbookView } from '../view.ts';
import { columnOf, rowOf } from './address.ts';
import { loading } from './book/engine.ts';
import type { Book } from './book.ts';
import { ruleAt } from './conditionalFormat.ts';
import { guardAt } from './guards.ts';
import { HostError } from './hostError.ts';
import type { Format, Rule, SheetState, Validation } from './sheetState.ts';

type Draft = { -readonly [Part in keyof CellView]: CellView[Part] };

/** A cell as one seat sees it; undefined where there is nothing to see. */
export function cellViewOf(book: Book, sheet: SheetState, key: number, seat: Seat): CellView | undefined {
  const row = rowOf(key);
  const column = columnOf(key);
  const { content, format = noFormat, note, validation } = sheet.cells.get(key) ?? {};
  const from = sheet.spilled.get(key)?.from;
  const spilled = from !== undefined || book.isNativeSpill(sheet, key);
  const rule = sheet.rules.length ? ruleAt(book, sheet, row, column) : undefined;
  const guard = guardAt(sheet, row, column, seat);
  if (!content && !spilled && !rule && !note && !validation) return emptyCell(format, guard);
  const view: Draft = content || spilled ? shown(book, sheet, row, column) : { text: '', input: '' };
  addLooks(view, format, rule);
  const options = optionsOf(validation);
  if (note) view.note = note;
  if (options) view.options = options;
  if (validation?.help) view.help = validation.help;
  if (guard) view.guarded = guard;
  if (spilled) view.spilled = spilled;
  if (from !== undefined) view.filledBy = `${rowOf(from)},${columnOf(from)}`;
  return orNothing(view);
}

const orNothing = (view: CellView): CellView | undefined =>
  view.text || view.input || Object.keys(view).length > 2 ? view : undefined;

const noFormat: Format = {};
const emptyCells = new WeakMap<Format, Partial<Record<'' | 'warning' | 'locked', CellView | undefined>>>();

/** A cell that only looks like something. Most cells are such, and those that look alike share one format and one view. */
function emptyCell(format: Format, guard: CellView['guarded']): CellView | undefined {
  let views = emptyCells.get(format);
  if (!views) {
    views = {};
    emptyCells.set(format, views);
  }
  const name = guard ?? '';
  if (name in views) return views[name];
  const view: Draft = { text: '', input: '' };
  addLooks(view, format, undefined);
  if (guard) view.guarded = guard;
  views[name] = orNothing(view);
  return views[name];
}

/** What a cell shows of what is in it. */
function shown(book: Book, sheet: SheetState, row: number, column: number): Draft {
  const value = book.value(sheet, row, column);
  const link = book.hyperlink(sheet, row, column);
  const view: Draft = { text: book.display(sheet, row, column), input: book.input(sheet, row, column) };
  if (value instanceof HostError) view.error = value.message || value.code;
  // Numbers stand right, logical values and errors in the middle, texts left unless the cell says otherwise.
  if (typeof value === 'number') view.align = 'right';
  if (typeof value === 'boolean' || value instanceof HostError || value === loading) view.align = 'center';
  if (link !== undefined) view.link = link;
  return view;
}

function addLooks(view: Draft, format: Format, rule: Rule | undefined): void {
  const background = rule?.background ?? format.background;
  const color = rule?.color ?? format.color;
  const border = boxOf(format);
  if (background) view.background = background;
  if (color) view.color = color;
  if (rule?.bold ?? format.weight === 'bold') view.bold = true;
  if (rule?.italic ?? format.style === 'italic') view.italic = true;
  if (format.size !== undefined) view.size = format.size;
  if (format.wrap === 'WRAP') view.wrap = true;
  if (format.wrap === 'CLIP') view.clip = true;
  if (format.horizontal) view.align = format.horizontal;
  if (format.vertical) view.vertical = format.vertical;
  if (border !== undefined) view.border = border;
}

const sides = ['top', 'left', 'bottom', 'right'] as const;

/** The colour of a line all around; lines at single sides are not drawn. */
function boxOf({ border }: Format): string | undefined {
  if (border === undefined) return undefined;
  const colours = sides.map((side) => new RegExp(`\\b${side} [A-Z_]+ (#[0-9a-f]{6})`).exec(border)?.[1]);
  const [first] = colours;
  return colours.every((colour) => colour === first) ? first : undefined;
}

function optionsOf(validation: Validation | undefined): readonly string[] | undefined {
  if (validation?.kind === 'list' && validation.dropdown !== false) return validation.options;
  return validation?.kind === 'checkbox' ? ['TRUE', 'FALSE'] : undefined;
}

export function sheetViewOf(book: Book, sheet: SheetState, seat: Seat): SheetView {
  book.settle();
  const cells: Record<string, CellView> = {};
  for (const key of book.occupied(sheet)) {
    const view = cellViewOf(book, sheet, key, seat);
    if (view) cells[`${rowOf(key)},${columnOf(key)}`] = view;
  }
  return {
    id: sheet.id,
    name: sheet.name,
    hidden: sheet.hidden,
    ...(sheet.tabColor ? { tabColor: sheet.tabColor } : {}),
    rows: sheet.rows,
    columns: sheet.columns,
    frozenRows: sheet.frozenRows,
    frozenColumns: sheet.frozenColumns,
    columnWidths: Array.from({ length: sheet.columns }, (_, index) => sheet.columnWidths.get(index + 1) ?? 100),
    rowHeights: [...sheet.rowHeights].map(([row, height]) => ({ row, height, forced: sheet.forcedRows.has(row) })),
    hiddenColumns: [...sheet.hiddenColumns],
    hiddenRows: [...sheet.hiddenRows],
    merges: sheet.merges,
    cells,
  };
}

export function workbookViewOf(book: Book, seat: Seat, activeSheet: number): WorkbookView {
  book.settle();
  return {
    name: book.name,
    locale: book.locale.name,
    version: book.version,
    activeSheet,
    sheets: book.sheets.map((sheet) => sheetViewOf(book, sheet, seat)),
  };
}
