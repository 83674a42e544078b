import { type Area, cellName, columnOf, rowOf } from './address.ts';
import type { Book } from './book.ts';
import { longestText } from './enginePlugins.ts';
import type { Stores } from './services/stores.ts';
import type { CellState, Format, Metadata, ProtectionState, Rule, SheetState } from './sheetState.ts';
import type { Content } from './typed.ts';

interface SavedSheet {
  readonly id: number;
  readonly name: string;
  readonly hidden: boolean;
  readonly tabColor?: string;
  readonly gridlinesHidden: boolean;
  readonly rows: number;
  readonly columns: number;
  readonly frozenRows: number;
  readonly frozenColumns: number;
  readonly columnWidths: readonly (readonly [number, number])[];
  readonly rowHeights: readonly (readonly [number, number])[];
  /** Left out in files of earlier versions. */
  readonly forcedRows?: readonly number[];
  readonly hiddenColumns: readonly number[];
  readonly hiddenRows: readonly number[];
  readonly merges: readonly Area[];
  readonly cells: readonly SavedCell[];
  readonly rules: readonly Rule[];
  readonly protections: readonly ProtectionState[];
  readonly metadata: readonly Metadata[];
}
/** Row, column, what the cell holds besides its format, and which of the formats it has. */
type SavedCell = readonly [row: number, column: number, cell: CellState, format?: number];
interface Saved {
  /** In form 1, of earlier versions, each cell held its own format. */
  readonly form: 1 | 2;
  /** Of a workbook's thousands of cells most look like others. */
  readonly formats: readonly Format[];
  readonly name: string;
  readonly locale: string;
  readonly interval: Book['interval'];
  readonly metadata: readonly Metadata[];
  readonly named: readonly { readonly name: string; readonly sheet: number; readonly area: Area }[];
  readonly properties: Readonly<Record<string, readonly (readonly [string, string])[]>>;
  readonly active: Readonly<Record<'teacher' | 'student', number>>;
  readonly sheets: readonly SavedSheet[];
}

export function savedText(book: Book, stores: Stores, active: Saved['active']): string {
  book.settle();
  const formats = new Formats();
  const saved: Saved = {
    form: 2,
    name: book.name,
    locale: book.locale.name,
    interval: book.interval,
    metadata: book.metadata,
    named: book.named,
    properties: Object.fromEntries(Object.entries(stores.properties).map(([name, store]) => [name, [...store]])),
    active,
    sheets: book.sheets.map((sheet) => ({
      id: sheet.id,
      name: sheet.name,
      hidden: sheet.hidden,
      ...(sheet.tabColor ? { tabColor: sheet.tabColor } : {}),
      gridlinesHidden: sheet.gridlinesHidden,
      rows: sheet.rows,
      columns: sheet.columns,
      frozenRows: sheet.frozenRows,
      frozenColumns: sheet.frozenColumns,
      columnWidths: [...sheet.columnWidths],
      rowHeights: [...sheet.rowHeights],
      forcedRows: [...sheet.forcedRows],
      hiddenColumns: [...sheet.hiddenColumns],
      hiddenRows: [...sheet.hiddenRows],
      merges: sheet.merges,
      cells: [...sheet.cells].map(([key, { format, ...cell }]): SavedCell => {
        const at = [rowOf(key), columnOf(key)] as const;
        return format === undefined ? [...at, cell] : [...at, cell, formats.numberOf(format)];
      }),
      rules: sheet.rules,
      protections: sheet.protections,
      metadata: sheet.metadata,
    })),
    formats: formats.all,
  };
  return JSON.stringify(saved);
}

let last: { readonly text: string; readonly saved: Saved } | undefined;

/** What a saved workbook holds; all who open it share that, so nobody may change it. */
export function readSaved(text: string): Saved {
  // One file is opened again and again, and reading it takes a tenth of the time.
  if (last?.text !== text) last = { text, saved: readText(text) };
  return last.saved;
}

function readText(text: string): Saved {
  const saved = JSON.parse(text) as Partial<Saved>;
  if (!(saved.form === 1 || (saved.form === 2 && Array.isArray(saved.formats))) || !Array.isArray(saved.sheets)) {
    throw new Error(
      `Expected a workbook saved by the stand-in (form 1 or 2) for the saved workbook, received form ${String(saved.form)}. Start with a fresh one.`,
    );
  }
  return saved.form === 2 ? (saved as Saved) : withFormatsApart(saved as Saved);
}

/** A workbook of form 1 as one of form 2. */
function withFormatsApart(saved: Saved): Saved {
  const formats = new Formats();
  const apart = (line: SavedCell): SavedCell => {
    const [row, column, cell] = line;
    if ((cell as Partial<CellState> | null)?.format === undefined) return line;
    const { format, ...rest } = cell;
    return [row, column, rest, formats.numberOf(format as Format)];
  };
  const sheets = saved.sheets.map((sheet) => ({ ...sheet, cells: sheet.cells.map(apart) }));
  return { ...saved, form: 2, formats: formats.all, sheets };
}

/** Each format once, with its number in the order in which they came. */
class Formats {
  readonly all: Format[] = [];
  readonly #numbers = new Map<string, number>();
  /** Cells that look alike mostly share one object, whose words need not be made again. */
  readonly #known = new Map<Format, number>();

  numberOf(format: Format): number {
    const known = this.#known.get(format);
    if (known !== undefined) return known;
    const words = JSON.stringify(format);
    const number = this.#numbers.get(words) ?? this.all.push(format) - 1;
    this.#numbers.set(words, number);
    this.#known.set(format, number);
    return number;
  }
}

/**
 * Puts a saved workbook into an empty one; every formula is worked out again.
 * A cell that cannot be read becomes a text that says what was saved of it, so that the rest is there all the same.
 * Returns the names of such cells.
 */
export function restore(saved: Saved, book: Book, stores: Stores): readonly string[] {
  const unread: string[] = [];
  book.interval = saved.interval;
  book.metadata.push(...saved.metadata.map((entry) => ({ ...entry })));
  for (const [name, entries] of Object.entries(saved.properties)) {
    const store = stores.properties[name as keyof Stores['properties']];
    for (const [key, value] of entries) store.set(key, value);
  }
  const states = saved.sheets.map((sheet): [SavedSheet, SheetState] => {
    const state = book.addSheet(sheet.name, book.sheets.length, sheet.id);
    book.shapeSheet(state, {
      hidden: sheet.hidden,
      tabColor: sheet.tabColor,
      gridlinesHidden: sheet.gridlinesHidden,
      rows: sheet.rows,
      columns: sheet.columns,
      frozenRows: sheet.frozenRows,
      frozenColumns: sheet.frozenColumns,
      columnWidths: new Map(sheet.columnWidths),
      rowHeights: new Map(sheet.rowHeights),
      forcedRows: new Set(sheet.forcedRows ?? []),
      hiddenColumns: new Set(sheet.hiddenColumns),
      hiddenRows: new Set(sheet.hiddenRows),
      merges: [...sheet.merges],
      rules: [...sheet.rules],
      protections: structuredClone([...sheet.protections]),
      metadata: sheet.metadata.map((entry) => ({ ...entry })),
    });
    return [sheet, state];
  });
  for (const { name, sheet, area } of saved.named) book.setNamed(name, book.sheet(sheet), area);
  for (const [sheet, state] of states) {
    for (const line of sheet.cells) {
      if (restoreCell(book, state, line, saved.formats)) continue;
      const [row, column, cell] = line;
      unread.push(`${sheet.name} ${cellName(row, column)}`);
      const kept = `Could not be read: ${JSON.stringify(cell)}`.slice(0, longestText);
      book.decorate(state, row, column, () => ({}));
      book.setContent(state, row, column, { kind: 'text', text: kept });
    }
  }
  book.settle();
  return unread;
}

function restoreCell(book: Book, sheet: SheetState, line: SavedCell, formats: readonly Format[]): boolean {
  try {
    const [row, column, cell, number] = line;
    const { content } = cell;
    if (content !== undefined && !isContent(content)) return false;
    const format = number === undefined ? undefined : formats[number];
    if (number !== undefined && format === undefined) return false;
    book.putCell(sheet, row, column, format === undefined ? cell : { ...cell, format });
    return true;
  } catch {
    return false;
  }
}

function isContent(content: unknown): content is Content {
  const { kind, value, text, formula } = content as Record<string, unknown>;
  if (kind === 'number') return typeof value === 'number' && Number.isFinite(value);
  if (kind === 'boolean') return typeof value === 'boolean';
  return kind === 'text' ? typeof text === 'string' : kind === 'formula' && typeof formula === 'string';
}
