import {
  DetailedCellError,
  ErrorType,
  ExportedCellChange,
  type ExportedChange,
  HyperFormula,
  type RawCellContent,
} from 'hyperformula';
import { format as formatNumber, isDateFormat, isTextFormat } from 'numfmt';
import { type Area, areaName, cellKey, cellName, columnOf, rowOf } from './address.ts';
import {
  type CallOutcome,
  type EngineAddress,
  type EngineCall,
  engineLanguage,
  enginePlugins,
} from './enginePlugins.ts';
import { engineFormula, functionsIn, localFormula, reopenedFormula, shiftedFormula } from './formulaText.ts';
import { HostError, HostException, hostError } from './hostError.ts';
import { type Locale, localeOf } from './localeOf.ts';
import { movedLines, remapped } from './movedLines.ts';
import { dateOf, serialOf } from './serial.ts';
import {
  type CellState,
  emptySheet,
  type Metadata,
  type ProtectionState,
  type SheetState,
  type SpilledValue,
} from './sheetState.ts';
import { type Content, needsApostrophe } from './typed.ts';

/** What a cell shows to a script: as the host types it, with the loading state apart. */
export type Value = number | string | boolean | HostError | typeof loading;
export const loading: unique symbol = Symbol('loading');

export interface ScriptRunner {
  readonly names: readonly string[];
  /** Runs a function of the script for a cell; exactly one call on the host. */
  call(call: EngineCall): CallOutcome;
}

export interface BookOptions {
  readonly name: string;
  readonly locale: string;
  readonly timeZone: string;
  readonly plainTextKeepsApostrophe?: boolean;
  readonly clock: () => Date;
  readonly scripts: ScriptRunner;
}

interface NamedArea {
  readonly name: string;
  sheet: number;
  area: Area;
}

const noRows: readonly (readonly SpilledValue[])[] = [['']];

/** The workbook: what people and scripts put in, what the engine makes of it, and what changed since when. */
export class Book {
  readonly locale: Locale;
  readonly timeZone: string;
  readonly clock: () => Date;
  readonly sheets: SheetState[] = [];
  readonly named: NamedArea[] = [];
  readonly metadata: Metadata[] = [];
  name: string;
  interval: 'ON_CHANGE' | 'MINUTE' | 'HOUR' = 'ON_CHANGE';
  version = 1;
  orderVersion = 1;
  readonly changed = new Map<number, Map<number, number>>();
  readonly restructured = new Map<number, number>();
  readonly removed = new Map<number, number>();
  /** When true, results of scripts arrive only when they are let through. */
  delayed = false;
  readonly engine: HyperFormula;
  #nextId = 0;
  #ticks = 0;
  #entering = false;
  readonly #scripts: ScriptRunner;
  readonly #bySheet = new Map<number, SheetState>();
  readonly #memo = new Map<string, Map<string, CallOutcome>>();
  readonly #waiting = new Map<string, Map<string, EngineCall>>();
  readonly #inner = new Map<string, { rows: number; columns: number }>();
  readonly #innerUsed = new Map<string, string>();
  readonly #pending = new Map<string, { address: EngineAddress; outcome: CallOutcome }>();
  readonly #recheck = new Set<string>();
  readonly #stuck = new Set<string>();
  /** The engine's own array formulas that found no room; the engine does not try again by itself. */
  readonly #cramped = new Set<string>();
  #roomMade = false;
  /** Counts changes that move cells, after which kept positions mean something else. */
  moves = 0;
  #volatileDirty = false;

  constructor(options: BookOptions) {
    this.name = options.name;
    this.locale = localeOf(options.locale, options.plainTextKeepsApostrophe);
    this.timeZone = options.timeZone;
    this.clock = options.clock;
    this.#scripts = options.scripts;
    const plugins = enginePlugins(options.scripts.names, {
      call: (call) => this.#call(call),
      isDate: (address) => this.#isDateCell(address),
      innerSize: (cell) => this.#inner.get(addressKey(cell)),
      enteringWholeCall: () => this.#entering,
      now: () => serialOf(this.clock()),
    });
    this.engine = HyperFormula.buildEmpty({
      licenseKey: 'gpl-v3',
      language: engineLanguage(options.scripts.names),
      functionPlugins: [...HyperFormula.getAllFunctionPlugins(), ...plugins],
      smartRounding: false,
      undoLimit: 0,
      dateFormats: ['YYYY-MM-DD', 'DD/MM/YYYY'],
      maxRows: 100_000,
    });
    for (const constant of ['TRUE', 'FALSE']) this.engine.addNamedExpression(constant, `=${constant}()`);
    this.engine.addNamedExpression('StandInTicks', 0);
  }

  // Sheets

  sheet(id: number): SheetState {
    const found = this.sheets.find((sheet) => sheet.id === id);
    if (!found) throw new HostException(`The sheet ${id} no longer exists.`);
    return found;
  }

  sheetNamed(name: string): SheetState | undefined {
    return this.sheets.find((sheet) => sheet.name.toLowerCase() === name.toLowerCase());
  }

  addSheet(name: string | undefined, index = this.sheets.length, id = this.#freeId()): SheetState {
    let title = name;
    for (let count = this.sheets.length + 1; title === undefined; count += 1) {
      if (!this.sheetNamed(`Sheet${count}`)) title = `Sheet${count}`;
    }
    if (this.sheetNamed(title)) {
      throw new HostException(`A sheet with the name "${title}" already exists. Please enter another name.`);
    }
    this.#hold();
    this.engine.addSheet(title);
    const state = emptySheet(id, title, this.engine.getSheetId(title) ?? 0);
    this.sheets.splice(index, 0, state);
    this.#bySheet.set(state.engine, state);
    this.orderVersion = this.version + 1;
    this.restructured.set(state.id, this.version + 1);
    return state;
  }

  #freeId(): number {
    // The first sheet of a file has the id 0 on the host, the others any number.
    const id = this.#nextId === 0 ? 0 : 1000 + this.#nextId * 137;
    this.#nextId += 1;
    return this.sheets.some((sheet) => sheet.id === id) ? this.#freeId() : id;
  }

  removeSheet(sheet: SheetState): void {
    if (this.sheets.length === 1) throw new HostException("You can't remove all the sheets in a document.");
    if (!sheet.hidden && !this.sheets.some((other) => other !== sheet && !other.hidden)) {
      throw new HostException("You can't remove all the visible sheets in a document.");
    }
    const before = this.#formulaTexts();
    this.#hold();
    this.engine.removeSheet(sheet.engine);
    this.moves += 1;
    this.sheets.splice(this.sheets.indexOf(sheet), 1);
    this.#bySheet.delete(sheet.engine);
    this.changed.delete(sheet.id);
    this.restructured.delete(sheet.id);
    this.removed.set(sheet.id, this.version + 1);
    for (let index = this.named.length - 1; index >= 0; index -= 1) {
      if (this.named[index]?.sheet === sheet.id) this.named.splice(index, 1);
    }
    this.#takeOverTexts(before);
  }

  renameSheet(sheet: SheetState, name: string): void {
    const other = this.sheetNamed(name);
    if (other && other !== sheet) {
      throw new HostException(`A sheet with the name "${name}" already exists. Please enter another name.`);
    }
    const before = this.#formulaTexts();
    this.#hold();
    this.engine.renameSheet(sheet.engine, name);
    sheet.name = name;
    this.#takeOverTexts(before);
    this.restructure(sheet);
  }

  moveSheet(sheet: SheetState, index: number): void {
    this.sheets.splice(this.sheets.indexOf(sheet), 1);
    this.sheets.splice(index, 0, sheet);
    this.orderVersion = this.version + 1;
  }

  restructure(sheet: SheetState): void {
    this.restructured.set(sheet.id, this.version + 1);
  }

  // Cells

  cell(sheet: SheetState, row: number, column: number): CellState {
    return sheet.cells.get(cellKey(row, column)) ?? {};
  }

  /** Changes anything but the content. */
  decorate(sheet: SheetState, row: number, column: number, change: (cell: CellState) => CellState): void {
    const key = cellKey(row, column);
    const next = change(sheet.cells.get(key) ?? {});
    this.#keep(sheet, key, next);
    this.#mark(sheet, key);
  }

  #keep(sheet: SheetState, key: number, cell: CellState): void {
    const kept = Object.fromEntries(Object.entries(cell).filter(([, part]) => part !== undefined && part !== ''));
    if (Object.keys(kept).length) sheet.cells.set(key, kept as CellState);
    else sheet.cells.delete(key);
  }

  setContent(sheet: SheetState, row: number, column: number, content: Content | undefined): void {
    const key = cellKey(row, column);
    const before = sheet.cells.get(key) ?? {};
    const { content: replaced, ...rest } = before;
    if (!content && !replaced) return;
    this.#hold();
    this.#forget(sheet, key);
    this.#keep(sheet, key, content ? { ...rest, content } : rest);
    const filled = sheet.spilled.get(key);
    if (filled) {
      sheet.spilled.delete(key);
      this.#recheck.add(placeKey(sheet, filled.from));
    }
    this.#enter(sheet, key, content);
    if (!content) {
      this.#roomMade = true;
      for (const blocked of sheet.blocked.keys()) this.#recheck.add(placeKey(sheet, blocked));
    }
    if (content?.kind === 'formula' || replaced?.kind === 'formula') this.#volatileDirty = true;
    this.#mark(sheet, key);
  }

  /** Drops what is known of a cell's own formula: its result, its spill, and what its calls returned. */
  #forget(sheet: SheetState, key: number): void {
    const place = placeKey(sheet, key);
    this.#memo.delete(place);
    this.#waiting.delete(place);
    this.#inner.delete(place);
    this.#innerUsed.delete(place);
    this.#stuck.delete(place);
    this.#pending.delete(place);
    sheet.blocked.delete(key);
    if (sheet.results.delete(key)) this.#clearSpill(sheet, key);
  }

  #enter(sheet: SheetState, key: number, content: Content | undefined): void {
    const address = engineAddress(sheet, key);
    this.#entering = content?.kind === 'formula' && this.#isWholeCall(content.formula);
    if (content?.kind === 'formula' && !this.#entering) {
      const size = this.#inner.get(placeKey(sheet, key));
      this.#innerUsed.set(placeKey(sheet, key), size ? `${size.rows}x${size.columns}` : '1x1');
    }
    try {
      this.#record(this.engine.setCellContents(address, this.#raw(sheet, key, content)));
    } finally {
      this.#entering = false;
    }
  }

  #raw(sheet: SheetState, key: number, content: Content | undefined): RawCellContent {
    if (!content) return null;
    if (content.kind === 'formula') return engineFormula(content.formula);
    if (content.kind === 'text') return `'${content.text}`;
    if (content.kind === 'boolean') return content.value;
    const numberFormat = sheet.cells.get(key)?.format?.numberFormat;
    return numberFormat && isDateFormat(numberFormat) ? dateOf(content.value) : content.value;
  }

  #isWholeCall(formula: string): boolean {
    const call = /^=\s*([A-Za-z_][\w.]*)\s*\(/.exec(formula);
    if (!call || !this.#scripts.names.some((name) => name.toUpperCase() === call[1]?.toUpperCase())) return false;
    // The bracket that the call opens must be the last thing closed.
    let depth = 0;
    let quote = '';
    for (let index = call[0].length - 1; index < formula.length; index += 1) {
      const mark = formula[index] ?? '';
      if (quote) {
        if (mark === quote) quote = '';
      } else if (mark === '"' || mark === "'") quote = mark;
      else if (mark === '(') depth += 1;
      else if (mark === ')') {
        depth -= 1;
        if (depth === 0) return formula.slice(index + 1).trim() === '';
      }
    }
    return false;
  }

  /** Everything typed or spilled, worked out. */
  value(sheet: SheetState, row: number, column: number): Value {
    this.settle();
    return this.#valueOf(this.engine.getCellValue({ sheet: sheet.engine, row: row - 1, col: column - 1 }));
  }

  #valueOf(raw: unknown): Value {
    if (raw === null || raw === undefined) return '';
    if (raw instanceof DetailedCellError) return hostError(raw) ?? loading;
    return raw as number | string | boolean;
  }

  /** The number format in force: set on the cell, or taken from what its formula gives. */
  numberFormat(sheet: SheetState, row: number, column: number): string {
    const own = this.cell(sheet, row, column).format?.numberFormat;
    if (own !== undefined && own !== 'General') return own;
    const address = { sheet: sheet.engine, row: row - 1, col: column - 1 };
    switch (this.engine.getCellValueDetailedType(address)) {
      case 'NUMBER_DATE':
        return 'yyyy-mm-dd';
      case 'NUMBER_TIME':
        return 'h:mm:ss';
      case 'NUMBER_DATETIME':
        return 'yyyy-mm-dd h:mm:ss';
      case 'NUMBER_PERCENT':
        return '0.00%';
      default:
        return 'General';
    }
  }

  display(sheet: SheetState, row: number, column: number): string {
    const value = this.value(sheet, row, column);
    if (value === loading) return 'Loading...';
    if (value instanceof HostError) return value.code;
    if (value === '') return '';
    if (typeof value === 'boolean') return value ? 'TRUE' : 'FALSE';
    const format = this.numberFormat(sheet, row, column);
    if (typeof value === 'string') return isTextFormat(format) ? formatNumber(format, value) : textPart(format, value);
    return formatNumber(format, value, { locale: this.locale.tag, throws: false } as object);
  }

  /** What the line above the grid shows. */
  input(sheet: SheetState, row: number, column: number): string {
    const { content, format } = this.cell(sheet, row, column);
    if (!content) return '';
    if (content.kind === 'formula') return localFormula(content.formula, this.locale.decimalComma);
    if (content.kind === 'text') {
      const cell = { numberFormat: format?.numberFormat, locale: this.locale };
      return needsApostrophe(content.text, cell) ? `'${content.text}` : content.text;
    }
    if (content.kind === 'boolean') return content.value ? 'TRUE' : 'FALSE';
    const shown = this.numberFormat(sheet, row, column);
    if (isDateFormat(shown)) return this.display(sheet, row, column);
    if (shown.includes('%')) return `${this.#plainNumber(Number((content.value * 100).toPrecision(15)))}%`;
    return this.#plainNumber(content.value);
  }

  #plainNumber(value: number): string {
    return this.locale.decimalComma ? String(value).replace('.', ',') : String(value);
  }

  isDate(sheet: SheetState, row: number, column: number): boolean {
    return isDateFormat(this.numberFormat(sheet, row, column));
  }

  #isDateCell(address: EngineAddress): boolean | undefined {
    const sheet = this.#bySheet.get(address.sheet);
    const own = sheet?.cells.get(cellKey(address.row + 1, address.col + 1))?.format?.numberFormat;
    return own === undefined || own === 'General' ? undefined : isDateFormat(own);
  }

  isNativeSpill(sheet: SheetState, key: number): boolean {
    if (sheet.cells.get(key)?.content || sheet.spilled.has(key)) return false;
    return this.engine.isCellPartOfArray(engineAddress(sheet, key));
  }

  hyperlink(sheet: SheetState, row: number, column: number): string | undefined {
    const { content } = this.cell(sheet, row, column);
    if (content?.kind !== 'formula' || !/HYPERLINK\s*\(/i.test(content.formula)) return undefined;
    return this.engine.getCellHyperlink({ sheet: sheet.engine, row: row - 1, col: column - 1 });
  }

  lastRow(sheet: SheetState): number {
    return this.#last(sheet, rowOf);
  }

  lastColumn(sheet: SheetState): number {
    return this.#last(sheet, columnOf);
  }

  #last(sheet: SheetState, place: (key: number) => number): number {
    this.settle();
    let last = 0;
    for (const [key, cell] of sheet.cells) if (cell.content) last = Math.max(last, place(key));
    for (const [key, { value }] of sheet.spilled) if (value !== '') last = Math.max(last, place(key));
    return last;
  }

  // Calls to the script

  #call(call: EngineCall): CallOutcome {
    const key = addressKey(call.cell);
    const sheet = this.#bySheet.get(call.cell.sheet);
    if (this.#stuck.has(key)) return { kind: 'loading' };
    const signature = `${call.name}|${JSON.stringify(call.arguments)}`;
    const known = this.#memo.get(key)?.get(signature);
    let outcome = known;
    if (!outcome && this.delayed) {
      // A whole call that changed while it waited is only worth its latest arguments.
      const waiting = (!call.whole && this.#waiting.get(key)) || new Map<string, EngineCall>();
      this.#waiting.set(key, waiting.set(signature, call));
      return { kind: 'loading' };
    }
    if (!outcome) {
      outcome = this.#scripts.call(call);
      this.#remember(key, signature, outcome, call.whole);
    }
    if (outcome.kind !== 'rows') {
      if (call.whole) this.#pending.set(key, { address: call.cell, outcome });
      return outcome;
    }
    if (!call.whole) {
      this.#inner.set(key, { rows: outcome.rows.length, columns: outcome.rows[0]?.length ?? 1 });
      return outcome;
    }
    this.#pending.set(key, { address: call.cell, outcome });
    const words = sheet?.blocked.get(cellKey(call.cell.row + 1, call.cell.col + 1));
    return words ? { kind: 'reference', message: words } : outcome;
  }

  #remember(key: string, signature: string, outcome: CallOutcome, whole: boolean): void {
    const calls = whole ? new Map<string, CallOutcome>() : (this.#memo.get(key) ?? new Map<string, CallOutcome>());
    if (calls.size > 16) calls.clear();
    this.#memo.set(key, calls.set(signature, outcome));
  }

  /** Lets delayed results through: the oldest `count` cells that wait for one. */
  release(count = Number.POSITIVE_INFINITY): number {
    this.settle();
    let released = 0;
    for (const [key, calls] of [...this.#waiting]) {
      if (released >= count) break;
      this.#waiting.delete(key);
      for (const [signature, call] of calls) this.#remember(key, signature, this.#scripts.call(call), call.whole);
      const place = this.#place(key);
      if (place) this.#reenter(place.sheet, place.key);
      released += 1;
    }
    this.settle();
    return released;
  }

  get waiting(): number {
    return this.#waiting.size;
  }

  #place(key: string): { sheet: SheetState; key: number } | undefined {
    const [engine, cell] = key.split(':').map(Number);
    const sheet = this.#bySheet.get(engine ?? -1);
    return sheet && cell !== undefined ? { sheet, key: cell } : undefined;
  }

  #reenter(sheet: SheetState, key: number): void {
    const content = sheet.cells.get(key)?.content;
    if (content?.kind !== 'formula') return;
    this.#hold();
    this.#enter(sheet, key, content);
  }

  // Working out

  #hold(): void {
    if (!this.engine.isEvaluationSuspended()) this.engine.suspendEvaluation();
  }

  #record(changes: readonly ExportedChange[]): void {
    for (const change of changes) {
      if (!(change instanceof ExportedCellChange)) continue;
      const sheet = this.#bySheet.get(change.sheet);
      if (!sheet) continue;
      const key = cellKey(change.row + 1, change.col + 1);
      const cramped = change.value instanceof DetailedCellError && change.value.type === ErrorType.SPILL;
      if (cramped) this.#cramped.add(placeKey(sheet, key));
      else this.#cramped.delete(placeKey(sheet, key));
      this.#mark(sheet, key);
    }
  }

  #mark(sheet: SheetState, key: number): void {
    let cells = this.changed.get(sheet.id);
    if (!cells) {
      cells = new Map();
      this.changed.set(sheet.id, cells);
    }
    cells.set(key, this.version + 1);
  }

  /** Works out everything that waits, lays out results that fill several cells, until nothing changes any more. */
  settle(): void {
    for (let round = 0; round < 200; round += 1) {
      if (this.engine.isEvaluationSuspended()) this.#record(this.engine.resumeEvaluation());
      if (this.#roomMade) {
        this.#roomMade = false;
        for (const key of [...this.#cramped]) {
          const place = this.#place(key);
          if (place) this.#reenter(place.sheet, place.key);
        }
      }
      if (this.#volatileDirty) this.#findStuck();
      if (!this.#absorb() && !this.engine.isEvaluationSuspended()) return;
    }
    throw new Error('The stand-in could not settle: functions that fill cells keep changing each other.');
  }

  #absorb(): boolean {
    const pending = [...this.#pending];
    this.#pending.clear();
    for (const [key, { outcome }] of pending) {
      const place = this.#place(key);
      if (place?.sheet.cells.get(place.key)?.content?.kind !== 'formula') continue;
      const rows = outcome.kind === 'rows' ? outcome.rows : noRows;
      const single = rows.length === 1 && rows[0]?.length === 1;
      if (single) {
        place.sheet.results.delete(place.key);
        this.#clearSpill(place.sheet, place.key);
        if (place.sheet.blocked.delete(place.key)) this.#reenter(place.sheet, place.key);
      } else {
        place.sheet.results.set(place.key, rows);
        this.#layOut(place.sheet, place.key);
      }
    }
    const recheck = [...this.#recheck];
    this.#recheck.clear();
    for (const key of recheck) {
      const place = this.#place(key);
      if (place?.sheet.results.has(place.key)) this.#layOut(place.sheet, place.key);
    }
    for (const [key, size] of this.#inner) {
      const wanted = `${size.rows}x${size.columns}`;
      if (this.#innerUsed.get(key) === wanted) continue;
      const place = this.#place(key);
      if (!place) continue;
      this.#innerUsed.set(key, wanted);
      this.#reenter(place.sheet, place.key);
    }
    return pending.length > 0 || recheck.length > 0;
  }

  /** Puts an array result into the cells right of and below its formula, or says why it cannot. */
  #layOut(sheet: SheetState, from: number): void {
    const rows = sheet.results.get(from);
    if (!rows) return;
    const top = rowOf(from);
    const left = columnOf(from);
    const words = this.#obstacle(sheet, from, rows);
    const before = sheet.blocked.get(from);
    if (words !== undefined) {
      this.#clearSpill(sheet, from);
      if (before === words) return;
      sheet.blocked.set(from, words);
      this.#reenter(sheet, from);
      return;
    }
    if (before !== undefined) {
      sheet.blocked.delete(from);
      this.#reenter(sheet, from);
    }
    const wanted = new Set<number>();
    rows.forEach((row, down) => {
      row.forEach((value, across) => {
        const key = cellKey(top + down, left + across);
        if (key === from) return;
        wanted.add(key);
        const there = sheet.spilled.get(key);
        sheet.spilled.set(key, { from, value });
        if (there?.value === value) return;
        this.#hold();
        this.engine.setCellContents(engineAddress(sheet, key), typeof value === 'string' ? `'${value}` : value);
        this.#mark(sheet, key);
      });
    });
    this.#clearSpill(sheet, from, wanted);
  }

  #obstacle(sheet: SheetState, from: number, rows: readonly (readonly SpilledValue[])[]): string | undefined {
    const top = rowOf(from);
    const left = columnOf(from);
    const missingRows = top + rows.length - 1 - sheet.rows;
    if (missingRows > 0) return `Result was not automatically expanded, please insert more rows (${missingRows}).`;
    const missingColumns = left + (rows[0]?.length ?? 1) - 1 - sheet.columns;
    if (missingColumns > 0) {
      return `Result was not automatically expanded, please insert more columns (${missingColumns}).`;
    }
    for (let down = 0; down < rows.length; down += 1) {
      for (let across = 0; across < (rows[0]?.length ?? 1); across += 1) {
        const key = cellKey(top + down, left + across);
        if (key === from) continue;
        const filledBy = sheet.spilled.get(key)?.from;
        const taken = filledBy === undefined ? this.isNativeSpill(sheet, key) : filledBy !== from;
        if (sheet.cells.get(key)?.content || taken) {
          return `Array result was not expanded because it would overwrite data in ${cellName(top + down, left + across)}.`;
        }
      }
    }
    return undefined;
  }

  #clearSpill(sheet: SheetState, from: number, except?: ReadonlySet<number>): void {
    for (const [key, spilled] of sheet.spilled) {
      if (spilled.from !== from || except?.has(key)) continue;
      sheet.spilled.delete(key);
      if (sheet.cells.get(key)?.content) continue;
      this.#hold();
      this.engine.setCellContents(engineAddress(sheet, key), null);
      this.#roomMade = true;
      this.#mark(sheet, key);
      for (const blocked of sheet.blocked.keys()) if (blocked !== from) this.#recheck.add(placeKey(sheet, blocked));
    }
  }

  /** A script's function that depends on NOW, RAND and their like never gets past loading on the host. */
  #findStuck(): void {
    this.#volatileDirty = false;
    const sources: { sheet: SheetState; key: number }[] = [];
    for (const sheet of this.sheets) {
      for (const [key, { content }] of sheet.cells) {
        if (content?.kind !== 'formula' || !/\b(NOW|TODAY|RAND\w*)\s*\(/i.test(content.formula)) continue;
        sources.push({ sheet, key });
      }
    }
    const reached = new Set<string>();
    const queue: unknown[] = sources.map(({ sheet, key }) => engineAddress(sheet, key));
    const stuck = new Set<string>();
    const names = new Set(this.#scripts.names.map((name) => name.toUpperCase()));
    while (queue.length) {
      const dependents = this.engine.getCellDependents(queue.pop() as EngineAddress);
      for (const dependent of dependents) {
        if ('start' in dependent) {
          const label = `${dependent.start.sheet}/${dependent.start.row}/${dependent.start.col}/${dependent.end.row}/${dependent.end.col}`;
          if (!reached.has(label)) {
            reached.add(label);
            queue.push(dependent);
          }
          continue;
        }
        const key = addressKey(dependent);
        if (reached.has(key)) continue;
        reached.add(key);
        queue.push(dependent);
        const place = this.#place(key);
        const content = place?.sheet.cells.get(place.key)?.content;
        if (content?.kind === 'formula' && functionsIn(content.formula).some((name) => names.has(name))) stuck.add(key);
      }
    }
    for (const key of [...stuck, ...this.#stuck]) {
      if (stuck.has(key) === this.#stuck.has(key)) continue;
      if (stuck.has(key)) this.#stuck.add(key);
      else this.#stuck.delete(key);
      const place = this.#place(key);
      if (place) this.#reenter(place.sheet, place.key);
    }
  }

  /** The host's own recalculation, each minute where that is switched on: what depends on NOW follows the clock. */
  recalculate(): void {
    this.settle();
    this.#ticks += 1;
    this.#record(this.engine.changeNamedExpression('StandInTicks', this.#ticks));
    this.settle();
  }

  // Rows and columns

  insertRows(sheet: SheetState, before: number, count: number): void {
    this.#restructure(sheet, 'row', before, count);
  }
  insertColumns(sheet: SheetState, before: number, count: number): void {
    this.#restructure(sheet, 'column', before, count);
  }
  deleteRows(sheet: SheetState, first: number, count: number): void {
    if (count >= sheet.rows) throw new HostException("You can't delete all the rows on the sheet.");
    this.#restructure(sheet, 'row', first, -count);
  }
  deleteColumns(sheet: SheetState, first: number, count: number): void {
    if (count >= sheet.columns) throw new HostException("You can't delete all the columns on the sheet.");
    this.#restructure(sheet, 'column', first, -count);
  }

  #restructure(sheet: SheetState, along: 'row' | 'column', at: number, by: number): void {
    this.settle();
    const before = this.#formulaTexts();
    this.#hold();
    const span: [number, number] = [at - 1, Math.abs(by)];
    if (along === 'row') {
      if (by > 0) this.engine.addRows(sheet.engine, span);
      else this.engine.removeRows(sheet.engine, span);
      sheet.rows += by;
    } else {
      if (by > 0) this.engine.addColumns(sheet.engine, span);
      else this.engine.removeColumns(sheet.engine, span);
      sheet.columns += by;
    }
    const { moved, movedKey, movedArea } = movedLines({ along, at, by });
    const orphans: number[] = [];
    this.moves += 1;
    sheet.cells = remapped(sheet.cells, movedKey);
    sheet.results = remapped(sheet.results, movedKey);
    sheet.blocked = remapped(sheet.blocked, movedKey);
    sheet.spilled = new Map(
      [...sheet.spilled].flatMap(([key, spilled]) => {
        const to = movedKey(key);
        const from = movedKey(spilled.from);
        if (to === undefined) return [];
        if (from === undefined) {
          orphans.push(to);
          return [];
        }
        return [[to, { ...spilled, from }] as const];
      }),
    );
    for (const orphan of orphans) this.engine.setCellContents(engineAddress(sheet, orphan), null);
    for (const store of [this.#memo, this.#waiting, this.#inner, this.#innerUsed] as Map<string, unknown>[]) {
      const entries = [...store];
      store.clear();
      for (const [place, kept] of entries) {
        const [engine, key] = place.split(':').map(Number);
        const to = engine === sheet.engine ? movedKey(key ?? 0) : key;
        if (to !== undefined) store.set(`${engine}:${to}`, kept);
      }
    }
    for (const places of [this.#stuck, this.#cramped]) {
      const kept = [...places];
      places.clear();
      for (const place of kept) {
        const [engine, key] = place.split(':').map(Number);
        const to = engine === sheet.engine ? movedKey(key ?? 0) : key;
        if (to !== undefined) places.add(`${engine}:${to}`);
      }
    }
    const movedAreas = (areas: readonly Area[]): Area[] => areas.flatMap((area) => movedArea(area) ?? []);
    sheet.merges = movedAreas(sheet.merges);
    sheet.rules = sheet.rules
      .map((rule) => ({ ...rule, areas: movedAreas(rule.areas) }))
      .filter((rule) => rule.areas.length > 0);
    sheet.protections = sheet.protections.flatMap((protection): ProtectionState[] => {
      const area = protection.area && movedArea(protection.area);
      if (protection.area && !area) return [];
      return [{ ...protection, area, unprotected: movedAreas(protection.unprotected) }];
    });
    for (let index = this.named.length - 1; index >= 0; index -= 1) {
      const named = this.named[index];
      if (!named || named.sheet !== sheet.id) continue;
      const area = movedArea(named.area);
      if (area) named.area = area;
      else this.named.splice(index, 1);
    }
    if (along === 'row') {
      sheet.rowHeights = remapped(sheet.rowHeights, moved);
      sheet.hiddenRows = new Set([...sheet.hiddenRows].flatMap((row) => moved(row) ?? []));
      if (at <= sheet.frozenRows) sheet.frozenRows = Math.max(0, sheet.frozenRows + by);
    } else {
      sheet.columnWidths = remapped(sheet.columnWidths, moved);
      sheet.hiddenColumns = new Set([...sheet.hiddenColumns].flatMap((column) => moved(column) ?? []));
      if (at <= sheet.frozenColumns) sheet.frozenColumns = Math.max(0, sheet.frozenColumns + by);
    }
    if (by > 0) this.#inheritFormats(sheet, along, at, by);
    this.#takeOverTexts(before, movedKey, sheet);
    for (const from of sheet.results.keys()) this.#layOut(sheet, from);
    this.restructure(sheet);
    this.settle();
  }

  /** New rows look like the row above them, new columns like the one to their left. */
  #inheritFormats(sheet: SheetState, along: 'row' | 'column', at: number, count: number): void {
    const model = at > 1 ? at - 1 : at + count;
    for (const [key, cell] of [...sheet.cells]) {
      const line = along === 'row' ? rowOf(key) : columnOf(key);
      if (line !== model || (!cell.format && !cell.validation)) continue;
      for (let offset = 0; offset < count; offset += 1) {
        const to = along === 'row' ? cellKey(at + offset, columnOf(key)) : cellKey(rowOf(key), at + offset);
        this.#keep(sheet, to, {
          ...(cell.format ? { format: cell.format } : {}),
          ...(cell.validation ? { validation: cell.validation } : {}),
        });
      }
    }
  }

  #formulaTexts(): Map<SheetState, Map<number, string | undefined>> {
    const texts = new Map<SheetState, Map<number, string | undefined>>();
    for (const sheet of this.sheets) {
      const cells = new Map<number, string | undefined>();
      for (const [key, { content }] of sheet.cells) {
        if (content?.kind === 'formula') cells.set(key, this.engine.getCellFormula(engineAddress(sheet, key)));
      }
      texts.set(sheet, cells);
    }
    return texts;
  }

  /** Formulas whose references the engine rewrote take its text; all others stay as they were written. */
  #takeOverTexts(
    before: Map<SheetState, Map<number, string | undefined>>,
    movedKey?: (key: number) => number | undefined,
    movedSheet?: SheetState,
  ): void {
    for (const [sheet, cells] of before) {
      if (!this.sheets.includes(sheet)) continue;
      for (const [key, text] of cells) {
        const to = sheet === movedSheet && movedKey ? movedKey(key) : key;
        if (to === undefined) continue;
        const after = this.engine.getCellFormula(engineAddress(sheet, to));
        if (after === undefined || after === text) continue;
        const cell = sheet.cells.get(to);
        if (cell?.content?.kind === 'formula') {
          this.#keep(sheet, to, { ...cell, content: { kind: 'formula', formula: reopenedFormula(after) } });
          this.#mark(sheet, to);
        }
      }
    }
  }

  /** Puts the rows of an area in another order, each with its looks; formulas keep pointing along their own row. */
  arrangeRows(sheet: SheetState, area: Area, order: readonly number[]): void {
    this.settle();
    const before = new Map<number, CellState>();
    for (let row = area.row; row < area.row + area.rows; row += 1) {
      for (let column = area.column; column < area.column + area.columns; column += 1) {
        const key = cellKey(row, column);
        const cell = sheet.cells.get(key);
        if (cell) before.set(key, cell);
      }
    }
    order.forEach((from, index) => {
      const to = area.row + index;
      if (from === to) return;
      for (let column = area.column; column < area.column + area.columns; column += 1) {
        const cell = before.get(cellKey(from, column)) ?? {};
        const { content, ...looks } = cell;
        this.decorate(sheet, to, column, ({ content: kept }) => ({ ...looks, ...(kept ? { content: kept } : {}) }));
        this.setContent(
          sheet,
          to,
          column,
          content?.kind === 'formula'
            ? { kind: 'formula', formula: shiftedFormula(content.formula, { rows: to - from, columns: 0 }) }
            : content,
        );
      }
    });
    this.settle();
  }

  // Names

  setNamed(name: string, sheet: SheetState, area: Area): void {
    this.removeNamed(name);
    this.named.push({ name, sheet: sheet.id, area });
    this.#hold();
    const absolute = areaName(area).replace(/([A-Z]+)(\d+)/g, '$$$1$$$2');
    this.engine.addNamedExpression(name, `='${sheet.name.replaceAll("'", "''")}'!${absolute}`);
  }

  removeNamed(name: string): void {
    const index = this.named.findIndex((named) => named.name.toLowerCase() === name.toLowerCase());
    if (index < 0) return;
    this.named.splice(index, 1);
    this.#hold();
    this.engine.removeNamedExpression(name);
  }

  /** Everything up to here is one change; the next differs from it by its number. */
  publish(): void {
    this.settle();
    this.version += 1;
  }

  /** Puts back cells as they were, without a call for a formula that did not change. */
  restoreCells(sheet: SheetState, cells: ReadonlyMap<number, CellState | undefined>): void {
    for (const [key, cell] of cells) {
      const now = sheet.cells.get(key) ?? {};
      const { content: _, ...looks } = cell ?? {};
      const { content } = now;
      this.#keep(sheet, key, content ? { ...looks, content } : looks);
      if (JSON.stringify(content) !== JSON.stringify(cell?.content)) {
        this.setContent(sheet, rowOf(key), columnOf(key), cell?.content);
      }
      this.#mark(sheet, key);
    }
    this.settle();
  }

  occupied(sheet: SheetState): number[] {
    const keys = new Set([...sheet.cells.keys(), ...sheet.spilled.keys()]);
    const { width, height } = this.engine.getSheetDimensions(sheet.engine);
    const anyNative = [...sheet.cells.values()].some(
      ({ content }) =>
        content?.kind === 'formula' &&
        /\b(ARRAYFORMULA|FILTER|SORT|UNIQUE|TRANSPOSE|SEQUENCE)\s*\(/i.test(content.formula),
    );
    if (anyNative || this.#inner.size) {
      for (let row = 1; row <= height; row += 1) {
        for (let column = 1; column <= width; column += 1) {
          const key = cellKey(row, column);
          if (!keys.has(key) && this.isNativeSpill(sheet, key)) keys.add(key);
        }
      }
    }
    return [...keys];
  }
}

const engineAddress = (sheet: SheetState, key: number): EngineAddress => ({
  sheet: sheet.engine,
  row: rowOf(key) - 1,
  col: columnOf(key) - 1,
});
const addressKey = (address: EngineAddress): string => `${address.sheet}:${cellKey(address.row + 1, address.col + 1)}`;
const placeKey = (sheet: SheetState, key: number): string => `${sheet.engine}:${key}`;

/** A text under a number format shows by the format's fourth part, if it has one. */
function textPart(format: string, text: string): string {
  return format.includes(';') ? formatNumber(format, text) : text;
}
