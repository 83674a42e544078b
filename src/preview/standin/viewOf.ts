import type { CellView, Seat, SheetView, WorkbookView } from '../view.ts';
import { columnOf, rowOf } from './address.ts';
import { loading } from './book/engine.ts';
import type { Book } from './book.ts';
import { ruleAt } from './conditionalFormat.ts';
import { guardAt } from './guards.ts';
import { HostError } from './hostError.ts';
import type { Format, Rule, SheetState, Validation } from './sheetState.ts';

/** A cell as one seat sees it; undefined where there is nothing to see. */
export function cellViewOf(book: Book, sheet: SheetState, key: number, seat: Seat): CellView | undefined {
  const row = rowOf(key);
  const column = columnOf(key);
  const { format = {}, note, validation } = book.cell(sheet, row, column);
  const value = book.value(sheet, row, column);
  const error = value instanceof HostError ? { error: value.message || value.code } : {};
  const link = book.hyperlink(sheet, row, column);
  const options = optionsOf(validation);
  const guard = guardAt(sheet, row, column, seat);
  const from = sheet.spilled.get(key)?.from;
  const spilled = from !== undefined || book.isNativeSpill(sheet, key);
  const view: CellView = {
    text: book.display(sheet, row, column),
    input: book.input(sheet, row, column),
    ...error,
    ...(note ? { note } : {}),
    ...looks(format, sheet.rules.length ? ruleAt(book, sheet, row, column) : undefined),
    ...alignment(format, value),
    ...(link === undefined ? {} : { link }),
    ...(options ? { options } : {}),
    ...(validation?.help ? { help: validation.help } : {}),
    ...(guard ? { guarded: guard } : {}),
    ...(spilled ? { spilled } : {}),
    ...(from === undefined ? {} : { filledBy: `${rowOf(from)},${columnOf(from)}` }),
  };
  return Object.keys(view).length > 2 || view.text || view.input ? view : undefined;
}

function looks(format: Format, rule: Rule | undefined): Partial<CellView> {
  const background = rule?.background ?? format.background;
  const color = rule?.color ?? format.color;
  const bold = rule?.bold ?? format.weight === 'bold';
  const italic = rule?.italic ?? format.style === 'italic';
  return {
    ...(background ? { background } : {}),
    ...(color ? { color } : {}),
    ...(bold ? { bold } : {}),
    ...(italic ? { italic } : {}),
    ...(format.size === undefined ? {} : { size: format.size }),
    ...(format.wrap === 'WRAP' ? { wrap: true } : {}),
    ...(format.wrap === 'CLIP' ? { clip: true } : {}),
    ...(format.vertical ? { vertical: format.vertical } : {}),
    ...boxOf(format),
  };
}

const sides = ['top', 'left', 'bottom', 'right'] as const;

/** A line all around in one colour; lines at single sides are not drawn. */
function boxOf({ border }: Format): Partial<CellView> {
  if (border === undefined) return {};
  const colours = sides.map((side) => new RegExp(`\\b${side} [A-Z_]+ (#[0-9a-f]{6})`).exec(border)?.[1]);
  const [first] = colours;
  return first !== undefined && colours.every((colour) => colour === first) ? { border: first } : {};
}

/** Numbers stand right, logical values and errors in the middle, texts left unless the cell says otherwise. */
function alignment(format: Format, value: unknown): Partial<CellView> {
  if (format.horizontal) return { align: format.horizontal };
  if (typeof value === 'number') return { align: 'right' };
  if (typeof value === 'boolean' || value instanceof HostError || value === loading) return { align: 'center' };
  return {};
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
