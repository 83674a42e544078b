import type {
  CellView,
  ChangeView,
  Edit,
  FunctionHelp,
  MenuView,
  PanelView,
  PreviewHost,
  Seat,
  SheetView,
  StepView,
  WorkbookView,
} from '../../src/preview/view.ts';

/** Cells of a sheet under test by "row,column". */
type Cells = Record<string, CellView>;

export interface FakeSheet {
  readonly name: string;
  readonly rows?: number;
  readonly columns?: number;
  readonly view?: Partial<SheetView>;
  readonly cells?: Readonly<Record<string, Partial<CellView>>>;
}

/** Keeps cells and versions and nothing else: what the server and the page need of a host, without formulas. */
export class FakeHost implements PreviewHost {
  readonly asked: { readonly seat: Seat; readonly what: string; readonly args: readonly unknown[] }[] = [];
  readonly counts = { host: {}, functions: {} };
  menuLines: MenuView[] = [];
  panel: PanelView | null = null;
  help: FunctionHelp[] = [];
  answer: (name: string, args: readonly unknown[]) => unknown = () => null;
  refuse: (edit: Edit) => string | undefined = () => undefined;
  private version = 1;
  private sheets: { view: Omit<SheetView, 'cells'>; cells: Cells; shape: number; changed: Map<string, number> }[];
  private readonly listeners = new Set<() => void>();
  private readonly past: string[] = [];
  private readonly future: string[] = [];
  private pending: { at: number; said: Pick<ChangeView, 'activate' | 'toast'> } = { at: 0, said: {} };

  constructor(sheets: readonly FakeSheet[]) {
    this.sheets = sheets.map(({ name, rows = 40, columns = 10, view = {}, cells = {} }, index) => ({
      view: {
        id: index + 1,
        name,
        hidden: false,
        rows,
        columns,
        frozenRows: 0,
        frozenColumns: 0,
        columnWidths: Array.from({ length: columns }, () => 100),
        rowHeights: [],
        hiddenColumns: [],
        hiddenRows: [],
        merges: [],
        ...view,
      },
      cells: Object.fromEntries(
        Object.entries(cells).map(([key, cell]) => [key, { text: '', input: cell.text ?? '', ...cell }]),
      ),
      shape: 1,
      changed: new Map(),
    }));
  }
  view(): WorkbookView {
    return {
      name: 'Invented workbook',
      locale: 'en_US',
      version: this.version,
      activeSheet: 1,
      sheets: this.sheets.map(shown),
    };
  }
  type(seat: Seat, edits: readonly Edit[]): { refused: { edit: Edit; reason: string }[] } {
    this.asked.push({ seat, what: 'type', args: edits });
    const refused: { edit: Edit; reason: string }[] = [];
    this.remember();
    for (const edit of edits) {
      const reason = this.refuse(edit);
      if (reason !== undefined) refused.push({ edit, reason });
      else this.put(edit.sheet, edit.row, edit.column, { text: edit.text, input: edit.text });
    }
    this.tell();
    return { refused };
  }
  /** Sets part of a cell, as a script would. */
  set(sheet: number, row: number, column: number, cell: Partial<CellView>): void {
    this.put(sheet, row, column, cell);
    this.tell();
  }
  say(pending: Pick<ChangeView, 'activate' | 'toast'>): void {
    this.pending = { at: this.version + 1, said: pending };
    this.tell();
  }
  undo(): StepView {
    return this.restore(this.past, this.future);
  }
  redo(): StepView {
    return this.restore(this.future, this.past);
  }
  insertRows(seat: Seat, sheet: number, before: number, count: number): void {
    this.asked.push({ seat, what: 'insertRows', args: [sheet, before, count] });
    this.shift(sheet, (row) => (row >= before ? row + count : row), count);
  }
  deleteRows(seat: Seat, sheet: number, first: number, count: number): void {
    this.asked.push({ seat, what: 'deleteRows', args: [sheet, first, count] });
    this.shift(sheet, (row) => (row < first ? row : row < first + count ? 0 : row - count), -count);
  }
  sortRows(
    seat: Seat,
    ...args: [number, { row: number; column: number; rows: number; columns: number }, number, boolean]
  ): void {
    this.asked.push({ seat, what: 'sortRows', args });
  }
  menus(): readonly MenuView[] {
    return this.menuLines;
  }
  choose(seat: Seat, run: string): PanelView | null {
    this.asked.push({ seat, what: 'choose', args: [run] });
    return this.panel;
  }
  run(seat: Seat, name: string, args: readonly unknown[]): unknown {
    this.asked.push({ seat, what: name, args });
    return this.answer(name, args);
  }
  functions(): readonly FunctionHelp[] {
    return this.help;
  }
  servedAt() {}
  onChange(listener: () => void): () => void {
    this.listeners.add(listener);
    return () => this.listeners.delete(listener);
  }
  changeSince(_seat: Seat, version: number): ChangeView {
    const whole = this.sheets.filter(({ shape }) => shape > version);
    return {
      version: this.version,
      sheets: whole.map(shown),
      removedSheets: [],
      order: this.sheets.map(({ view }) => view.id),
      cells: this.sheets
        .filter((sheet) => !whole.includes(sheet))
        .map(({ view, cells, changed }) => ({
          sheet: view.id,
          cells: Object.fromEntries(
            [...changed].filter(([, at]) => at > version).map(([key]) => [key, cells[key] ?? null]),
          ),
        }))
        .filter(({ cells }) => Object.keys(cells).length > 0),
      ...(this.pending.at > version ? this.pending.said : {}),
    };
  }
  resetCounts(): void {}
  save(): string {
    return JSON.stringify(this.sheets.map(({ cells }) => cells));
  }

  private sheet(id: number): FakeHost['sheets'][number] {
    const found = this.sheets.find(({ view }) => view.id === id);
    if (!found) throw new Error(`Expected a sheet that is there, received ${id}.`);
    return found;
  }
  private put(id: number, row: number, column: number, cell: Partial<CellView>): void {
    const sheet = this.sheet(id);
    const key = `${row},${column}`;
    sheet.cells[key] = { ...(sheet.cells[key] ?? { text: '', input: '' }), ...cell };
    sheet.changed.set(key, this.version + 1);
  }
  private shift(id: number, to: (row: number) => number, count: number): void {
    this.remember();
    const sheet = this.sheet(id);
    const moved: Cells = {};
    for (const [key, cell] of Object.entries(sheet.cells)) {
      const [row = 0, column = 0] = key.split(',').map(Number);
      if (to(row) > 0) moved[`${to(row)},${column}`] = cell;
    }
    sheet.cells = moved;
    sheet.view = { ...sheet.view, rows: sheet.view.rows + count };
    sheet.shape = this.version + 1;
    this.tell();
  }
  private remember(): void {
    this.past.push(JSON.stringify(this.sheets.map(({ cells }) => cells)));
    this.future.length = 0;
  }
  private restore(from: string[], to: string[]): StepView {
    const saved = from.pop();
    if (saved === undefined) return { done: false, changed: [], left: [] };
    to.push(JSON.stringify(this.sheets.map(({ cells }) => cells)));
    const changed: { sheet: number; row: number; column: number }[] = [];
    for (const [index, cells] of (JSON.parse(saved) as Cells[]).entries()) {
      const sheet = this.sheets[index];
      if (!sheet) continue;
      for (const key of new Set([...Object.keys(cells), ...Object.keys(sheet.cells)])) {
        if (cells[key]?.input === sheet.cells[key]?.input) continue;
        const [row = 0, column = 0] = key.split(',').map(Number);
        changed.push({ sheet: sheet.view.id, row, column });
      }
      Object.assign(sheet, { cells, shape: this.version + 1 });
    }
    this.tell();
    return { done: true, changed, left: [] };
  }
  private tell(): void {
    this.version += 1;
    for (const listener of this.listeners) listener();
  }
}

const shown = ({ view, cells }: { view: Omit<SheetView, 'cells'>; cells: Cells }): SheetView => ({ ...view, cells });
