import { isDateFormat } from 'numfmt';
import { type Area, cellKey, columnOf, rowOf } from './address.ts';
import { BookSheets } from './book/bookSheets.ts';
import { displayText, inputText } from './book/cellText.ts';
import { ChangeLog } from './book/changeLog.ts';
import { Engine, type Value } from './book/engine.ts';
import { lastLine, occupiedKeys } from './book/extent.ts';
import { type FormulaTexts, formulaTexts, rewrittenFormulas } from './book/formulaTexts.ts';
import { inheritedLooks, moveLines } from './book/moveLines.ts';
import { NamedAreas } from './book/namedAreas.ts';
import { ScriptCalls, type ScriptRunner } from './book/scriptCalls.ts';
import { Spills } from './book/spills.ts';
import { stuckCalls } from './book/stuckCalls.ts';
import { reopenedFormula, shiftedFormula } from './formulaText.ts';
import { HostException } from './hostError.ts';
import { type Locale, localeOf } from './localeOf.ts';
import { movedLines } from './movedLines.ts';
import type { CellState, Format, Metadata, SheetState } from './sheetState.ts';
import type { Content } from './typed.ts';

interface BookOptions {
  readonly name: string;
  readonly locale: string;
  readonly timeZone: string;
  readonly plainTextKeepsApostrophe?: boolean;
  readonly clock: () => Date;
  readonly scripts: ScriptRunner;
}

const withoutEmpty = (cell: CellState): CellState =>
  Object.fromEntries(Object.entries(cell).filter(([, part]) => part !== undefined && part !== '')) as CellState;

/** The workbook: what people and scripts put in, what the engine makes of it, and what changed since when. */
export class Book {
  readonly locale: Locale;
  readonly timeZone: string;
  readonly clock: () => Date;
  readonly metadata: Metadata[] = [];
  readonly log = new ChangeLog();
  readonly calls: ScriptCalls;
  name: string;
  interval: 'ON_CHANGE' | 'MINUTE' | 'HOUR' = 'ON_CHANGE';
  readonly #names: readonly string[];
  readonly #engine: Engine;
  readonly #sheets: BookSheets;
  readonly #spills: Spills;
  readonly #named: NamedAreas;
  #volatileDirty = false;

  constructor(options: BookOptions) {
    this.name = options.name;
    this.locale = localeOf(options.locale, options.plainTextKeepsApostrophe);
    this.timeZone = options.timeZone;
    this.clock = options.clock;
    this.#names = options.scripts.names;
    this.calls = new ScriptCalls(options.scripts, () => this.#engine);
    this.#engine = new Engine({
      names: this.#names,
      log: this.log,
      clock: options.clock,
      call: (call) => this.calls.call(call),
    });
    this.#sheets = new BookSheets(this.#engine, this.log);
    this.#spills = new Spills(this.#engine, this.log);
    this.#named = new NamedAreas(this.#engine);
  }

  get engine(): Engine['formulas'] {
    return this.#engine.formulas;
  }
  /** How far ranges that are open at their end reach in the engine. */
  get openEnd(): number {
    return this.#engine.openEnd;
  }
  get version(): number {
    return this.log.version;
  }

  // Sheets

  get sheets(): readonly SheetState[] {
    return this.#sheets.all;
  }
  sheet(id: number): SheetState {
    return this.#sheets.byId(id);
  }
  sheetNamed(name: string): SheetState | undefined {
    return this.#sheets.named(name);
  }
  addSheet(name: string | undefined, index?: number, id?: number): SheetState {
    return this.#sheets.add(name, index, id);
  }
  removeSheet(sheet: SheetState): void {
    this.#sheets.refuseRemoving(sheet);
    const before = formulaTexts(this.#engine, this.sheets);
    this.#sheets.remove(sheet);
    this.#named.removeSheet(sheet);
    this.#takeOver(before);
  }
  renameSheet(sheet: SheetState, name: string): void {
    this.#sheets.refuseName(sheet, name);
    const before = formulaTexts(this.#engine, this.sheets);
    this.#engine.renameSheet(sheet, name);
    sheet.name = name;
    this.#takeOver(before);
    this.restructure(sheet);
  }
  /** Takes over what a sheet was saved as, all but its cells. */
  shapeSheet(sheet: SheetState, shape: Partial<SheetState>): void {
    Object.assign(sheet, shape);
    this.#engine.reachRows();
  }
  moveSheet(sheet: SheetState, index: number): void {
    this.#sheets.move(sheet, index);
  }
  restructure(sheet: SheetState): void {
    this.log.restructure(sheet);
  }

  // Cells

  cell(sheet: SheetState, row: number, column: number): CellState {
    return sheet.cells.get(cellKey(row, column)) ?? {};
  }

  /** Changes anything but the content. */
  decorate(sheet: SheetState, row: number, column: number, change: (cell: CellState) => CellState): void {
    const key = cellKey(row, column);
    this.#keep(sheet, key, change(sheet.cells.get(key) ?? {}));
    this.log.mark(sheet, key);
  }

  /** Changes how a cell looks; one that already looks so has not changed. */
  reformat(
    sheet: SheetState,
    row: number,
    column: number,
    change: (format: Format | undefined) => Format | undefined,
  ): void {
    const key = cellKey(row, column);
    const cell = sheet.cells.get(key);
    const after = change(cell?.format);
    if (after === cell?.format) return;
    const { format: _, ...rest } = cell ?? {};
    if (after) sheet.cells.set(key, { ...rest, format: after });
    else this.#keep(sheet, key, rest);
    this.log.mark(sheet, key);
  }

  #keep(sheet: SheetState, key: number, cell: CellState): void {
    let empty = 0;
    let parts = 0;
    for (const part of Object.values(cell)) {
      parts += 1;
      if (part === undefined || part === '') empty += 1;
    }
    if (empty === parts) sheet.cells.delete(key);
    else sheet.cells.set(key, empty === 0 ? cell : withoutEmpty(cell));
  }

  /** Puts a whole cell where nothing stands and nothing is filled yet. */
  putCell(sheet: SheetState, row: number, column: number, cell: CellState): void {
    const key = cellKey(row, column);
    this.#keep(sheet, key, cell);
    if (cell.content) this.#engine.enter(sheet, key, cell.content);
    if (cell.content?.kind === 'formula') this.#volatileDirty = true;
    this.log.mark(sheet, key);
  }

  setContent(sheet: SheetState, row: number, column: number, content: Content | undefined): void {
    const key = cellKey(row, column);
    const before = sheet.cells.get(key) ?? {};
    const { content: replaced, ...rest } = before;
    if (!content && !replaced) return;
    this.#engine.hold();
    this.#forget(sheet, key);
    this.#keep(sheet, key, content ? { ...rest, content } : rest);
    this.#spills.covered(sheet, key);
    this.#engine.enter(sheet, key, content);
    if (!content) this.#spills.madeRoom(sheet);
    if (content?.kind === 'formula' || replaced?.kind === 'formula') this.#volatileDirty = true;
    this.log.mark(sheet, key);
  }

  /** Drops what is known of a cell's own formula: its result, its spill, and what its calls returned. */
  #forget(sheet: SheetState, key: number): void {
    this.calls.forget(sheet, key);
    this.#engine.forget(sheet, key);
    this.#spills.forget(sheet, key);
  }

  /** Puts back cells as they were, without a call for a formula that did not change. */
  restoreCells(sheet: SheetState, cells: ReadonlyMap<number, CellState | undefined>): void {
    for (const [key, cell] of cells) {
      const { content } = sheet.cells.get(key) ?? {};
      const { content: _, ...looks } = cell ?? {};
      this.#keep(sheet, key, content ? { ...looks, content } : looks);
      if (JSON.stringify(content) !== JSON.stringify(cell?.content)) {
        this.setContent(sheet, rowOf(key), columnOf(key), cell?.content);
      }
      this.log.mark(sheet, key);
    }
    this.settle();
  }

  // What cells show

  /** Everything typed or spilled, worked out. */
  value(sheet: SheetState, row: number, column: number): Value {
    this.settle();
    return this.#engine.value(sheet, row, column);
  }
  /** The number format in force: set on the cell, or taken from what its formula gives. */
  numberFormat(sheet: SheetState, row: number, column: number): string {
    const own = this.cell(sheet, row, column).format?.numberFormat;
    if (own !== undefined && own !== 'General') return own;
    return this.#engine.formatOfResult(sheet, row, column);
  }
  display(sheet: SheetState, row: number, column: number): string {
    return displayText(this.value(sheet, row, column), this.numberFormat(sheet, row, column), this.locale);
  }
  /** What the line above the grid shows. */
  input(sheet: SheetState, row: number, column: number): string {
    return inputText(this.cell(sheet, row, column), {
      numberFormat: this.numberFormat(sheet, row, column),
      display: () => this.display(sheet, row, column),
      locale: this.locale,
    });
  }
  isDate(sheet: SheetState, row: number, column: number): boolean {
    return isDateFormat(this.numberFormat(sheet, row, column));
  }
  hyperlink(sheet: SheetState, row: number, column: number): string | undefined {
    const { content } = this.cell(sheet, row, column);
    if (content?.kind !== 'formula' || !/HYPERLINK\s*\(/i.test(content.formula)) return undefined;
    return this.#engine.link(sheet, row, column);
  }
  isNativeSpill(sheet: SheetState, key: number): boolean {
    return this.#engine.isNativeSpill(sheet, key);
  }
  lastRow(sheet: SheetState): number {
    this.settle();
    return lastLine(sheet, rowOf);
  }
  lastColumn(sheet: SheetState): number {
    this.settle();
    return lastLine(sheet, columnOf);
  }
  occupied(sheet: SheetState): number[] {
    return occupiedKeys(this.#engine, sheet);
  }

  // Working out

  /** Works out everything that waits, lays out results that fill several cells, until nothing changes any more. */
  settle(): void {
    for (let round = 0; round < 200; round += 1) {
      this.#engine.resume();
      if (this.#spills.takeRoomMade()) this.#engine.reenterCramped();
      if (this.#volatileDirty) {
        this.#volatileDirty = false;
        this.calls.setStuck(stuckCalls(this.#engine, this.sheets, this.#names));
      }
      if (!this.#spills.absorb(this.calls.takeArrived()) && !this.#engine.held) return;
    }
    throw new Error('The stand-in could not settle: functions that fill cells keep changing each other.');
  }
  /** Everything up to here is one change; the next differs from it by its number. */
  publish(): void {
    this.settle();
    this.log.version += 1;
  }
  /** Lets delayed results through: the oldest `count` cells that wait for one. */
  release(count = Number.POSITIVE_INFINITY): number {
    this.settle();
    const released = this.calls.release(count);
    this.settle();
    return released;
  }
  /** The host's own recalculation, each minute where that is switched on: what depends on NOW follows the clock. */
  recalculate(): void {
    this.settle();
    this.#engine.tick();
    this.settle();
  }

  // Rows and columns

  insertRows(sheet: SheetState, before: number, count: number): void {
    this.#moveLines(sheet, 'row', before, count);
  }
  insertColumns(sheet: SheetState, before: number, count: number): void {
    this.#moveLines(sheet, 'column', before, count);
  }
  deleteRows(sheet: SheetState, first: number, count: number): void {
    if (count >= sheet.rows) throw new HostException("You can't delete all the rows on the sheet.");
    this.#moveLines(sheet, 'row', first, -count);
  }
  deleteColumns(sheet: SheetState, first: number, count: number): void {
    if (count >= sheet.columns) throw new HostException("You can't delete all the columns on the sheet.");
    this.#moveLines(sheet, 'column', first, -count);
  }

  #moveLines(sheet: SheetState, along: 'row' | 'column', at: number, by: number): void {
    this.settle();
    const before = formulaTexts(this.#engine, this.sheets);
    const change = { along, at, by };
    const lines = movedLines(change);
    this.#engine.moveLines(sheet, change);
    this.log.moves += 1;
    for (const orphan of moveLines(sheet, change, lines)) this.#engine.fill(sheet, orphan, undefined);
    this.calls.moved(sheet, lines.movedKey);
    this.#engine.moved(sheet, lines.movedKey);
    this.#named.moved(sheet, lines.movedArea);
    if (by > 0) for (const { key, looks } of inheritedLooks(sheet, change)) this.#keep(sheet, key, looks);
    this.#takeOver(before, { sheet, key: lines.movedKey });
    this.#engine.reachRows();
    for (const from of sheet.results.keys()) this.#spills.layOut(sheet, from);
    this.restructure(sheet);
    this.settle();
  }

  /** Formulas whose references the engine rewrote take its text; all others stay as they were written. */
  #takeOver(before: FormulaTexts, moved?: Parameters<typeof rewrittenFormulas>[3]): void {
    for (const { sheet, key, text } of rewrittenFormulas(this.#engine, this.sheets, before, moved)) {
      const cell = sheet.cells.get(key);
      if (cell?.content?.kind !== 'formula') continue;
      this.#keep(sheet, key, {
        ...cell,
        content: { kind: 'formula', formula: reopenedFormula(text, this.#engine.openEnd) },
      });
      this.log.mark(sheet, key);
    }
  }

  /** Puts the rows of an area in another order, each with its looks; formulas keep pointing along their own row. */
  arrangeRows(sheet: SheetState, area: Area, order: readonly number[]): void {
    this.settle();
    const cells = new Map(sheet.cells);
    order.forEach((from, index) => {
      const to = area.row + index;
      if (from === to) return;
      for (let column = area.column; column < area.column + area.columns; column += 1) {
        const { content, ...looks } = cells.get(cellKey(from, column)) ?? {};
        this.decorate(sheet, to, column, ({ content: kept }) => ({ ...looks, ...(kept ? { content: kept } : {}) }));
        const by = { rows: to - from, columns: 0 };
        const formula = content?.kind === 'formula' ? shiftedFormula(content.formula, by) : undefined;
        this.setContent(sheet, to, column, formula === undefined ? content : { kind: 'formula', formula });
      }
    });
    this.settle();
  }

  // Names

  get named(): NamedAreas['all'] {
    return this.#named.all;
  }
  setNamed(name: string, sheet: SheetState, area: Area): void {
    this.#named.set(name, sheet, area);
  }
  removeNamed(name: string): void {
    this.#named.remove(name);
  }
}
