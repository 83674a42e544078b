import {
  DetailedCellError,
  ErrorType,
  ExportedCellChange,
  type ExportedChange,
  HyperFormula,
  type RawCellContent,
} from 'hyperformula';
import { isDateFormat } from 'numfmt';
import { cellKey } from '../address.ts';
import {
  type CallOutcome,
  type EngineAddress,
  type EngineCall,
  engineLanguage,
  enginePlugins,
  refusedFormula,
} from '../enginePlugins.ts';
import { engineFormula, hasOpenRange, openEndFor } from '../formulaText.ts';
import { type HostError, hostError } from '../hostError.ts';
import type { LineChange } from '../movedLines.ts';
import { dateOf, serialOf } from '../serial.ts';
import type { SheetState, SpilledValue } from '../sheetState.ts';
import type { Content } from '../typed.ts';
import type { ChangeLog } from './changeLog.ts';
import { failureWords, keepFailuresInTheirCells, tooMuch } from './failures.ts';
import { addressKey, type CellPlace, engineAddress, movePlaces, placeKey, readPlaceKey } from './places.ts';
import { isWholeCall } from './wholeCall.ts';

/** What a cell shows to a script: as the host types it, with the loading state apart. */
export type Value = number | string | boolean | HostError | typeof loading;
export const loading: unique symbol = Symbol('loading');

/** The formula engine behind the workbook: what is put in, what comes out, and which cells look different for it. */
export class Engine {
  readonly formulas: HyperFormula;
  readonly #names: readonly string[];
  readonly #log: ChangeLog;
  readonly #bySheet = new Map<number, SheetState>();
  /** Sizes of script calls inside larger formulas: as last seen, and as the formula was entered with. */
  readonly #inner = new Map<string, { rows: number; columns: number }>();
  readonly #innerUsed = new Map<string, string>();
  #sizesSeen = false;
  /** The engine's own array formulas that found no room; the engine does not try again by itself. */
  readonly #cramped = new Set<string>();
  /** What HYPERLINK gave last, by the cell of its formula. */
  readonly #links = new Map<string, { readonly address: string; readonly label: string }>();
  #entering = false;
  #ticks = 0;
  #openEnd = openEndFor(0);

  constructor(options: {
    readonly names: readonly string[];
    readonly log: ChangeLog;
    readonly clock: () => Date;
    readonly call: (call: EngineCall) => CallOutcome;
  }) {
    this.#names = options.names;
    this.#log = options.log;
    const plugins = enginePlugins(options.names, {
      call: options.call,
      isDate: (address) => this.#isDateCell(address),
      innerSize: (cell) => this.#inner.get(addressKey(cell)),
      enteringWholeCall: () => this.#entering,
      now: () => serialOf(options.clock()),
      linked: (cell, link) => this.#links.set(addressKey(cell), link),
    });
    this.formulas = HyperFormula.buildEmpty({
      licenseKey: 'gpl-v3',
      language: engineLanguage(options.names),
      functionPlugins: [...HyperFormula.getAllFunctionPlugins(), ...plugins],
      smartRounding: false,
      undoLimit: 0,
      dateFormats: ['YYYY-MM-DD', 'DD/MM/YYYY'],
      maxRows: 100_000,
    });
    keepFailuresInTheirCells(this.formulas);
    for (const constant of ['TRUE', 'FALSE']) this.formulas.addNamedExpression(constant, `=${constant}()`);
    this.formulas.addNamedExpression('StandInTicks', 0);
  }

  // Sheets

  /** Adds an empty sheet and returns the engine's number for it. */
  addSheet(name: string): number {
    this.hold();
    this.formulas.addSheet(name);
    return this.formulas.getSheetId(name) ?? 0;
  }
  attach(sheet: SheetState): void {
    this.#bySheet.set(sheet.engine, sheet);
  }
  removeSheet(sheet: SheetState): void {
    this.hold();
    this.formulas.removeSheet(sheet.engine);
    this.#bySheet.delete(sheet.engine);
  }
  renameSheet(sheet: SheetState, name: string): void {
    this.hold();
    this.formulas.renameSheet(sheet.engine, name);
  }
  place(key: string): CellPlace | undefined {
    const { engine, key: cell } = readPlaceKey(key);
    const sheet = this.#bySheet.get(engine);
    return sheet && { sheet, key: cell };
  }
  sheetAt(engine: number): SheetState | undefined {
    return this.#bySheet.get(engine);
  }

  /** How far ranges that are open at their end reach. */
  get openEnd(): number {
    return this.#openEnd;
  }
  /** Where a sheet has grown past what open ranges reach, formulas with such ranges are entered again. */
  reachRows(): void {
    const sheets = [...this.#bySheet.values()];
    const wanted = openEndFor(Math.max(0, ...sheets.map(({ rows }) => rows)));
    if (wanted <= this.#openEnd) return;
    this.#openEnd = wanted;
    for (const sheet of sheets) {
      for (const [key, { content }] of sheet.cells) {
        if (content?.kind === 'formula' && hasOpenRange(content.formula)) this.reenter(sheet, key);
      }
    }
  }

  // Entering

  enter(sheet: SheetState, key: number, content: Content | undefined): void {
    this.hold();
    this.#entering = content?.kind === 'formula' && isWholeCall(content.formula, this.#names);
    if (content?.kind === 'formula' && !this.#entering) {
      const size = this.#inner.get(placeKey(sheet, key));
      this.#innerUsed.set(placeKey(sheet, key), size ? `${size.rows}x${size.columns}` : '1x1');
    }
    const address = engineAddress(sheet, key);
    try {
      this.#record(this.formulas.setCellContents(address, this.#raw(sheet, key, content)));
    } catch (error) {
      if (content?.kind !== 'formula') throw error;
      this.formulas.setCellContents(address, refusedFormula(failureWords(error)));
    } finally {
      this.#entering = false;
    }
  }
  /** Enters a cell's formula again, so that it is worked out anew. */
  reenter(sheet: SheetState, key: number): void {
    const content = sheet.cells.get(key)?.content;
    if (content?.kind === 'formula') this.enter(sheet, key, content);
  }
  reenterCramped(): void {
    for (const key of [...this.#cramped]) {
      const place = this.place(key);
      if (place) this.reenter(place.sheet, place.key);
    }
  }
  /** Puts a value that another cell's formula gave, or takes it away again. */
  fill(sheet: SheetState, key: number, value: SpilledValue | undefined): void {
    this.hold();
    const raw = typeof value === 'string' ? `'${value}` : (value ?? null);
    this.formulas.setCellContents(engineAddress(sheet, key), raw);
  }
  forget(sheet: SheetState, key: number): void {
    this.#inner.delete(placeKey(sheet, key));
    this.#innerUsed.delete(placeKey(sheet, key));
    this.#links.delete(placeKey(sheet, key));
  }
  noteInnerSize(key: string, rows: readonly (readonly SpilledValue[])[]): void {
    this.#inner.set(key, { rows: rows.length, columns: rows[0]?.length ?? 1 });
    this.#sizesSeen = true;
  }
  /** The size of an array is fixed as its formula is entered: those whose calls gave another size are entered again. */
  reenterOutgrown(): void {
    if (!this.#sizesSeen) return;
    this.#sizesSeen = false;
    for (const [key, size] of this.#inner) {
      const wanted = `${size.rows}x${size.columns}`;
      if (this.#innerUsed.get(key) === wanted) continue;
      const place = this.place(key);
      if (!place) continue;
      this.#innerUsed.set(key, wanted);
      this.reenter(place.sheet, place.key);
    }
  }
  get hasInnerCalls(): boolean {
    return this.#inner.size > 0;
  }
  /** Inserts or deletes rows or columns; formulas that point there follow. */
  moveLines(sheet: SheetState, { along, at, by }: LineChange): void {
    this.hold();
    const span: [number, number] = [at - 1, Math.abs(by)];
    if (along === 'row') {
      if (by > 0) this.formulas.addRows(sheet.engine, span);
      else this.formulas.removeRows(sheet.engine, span);
    } else if (by > 0) this.formulas.addColumns(sheet.engine, span);
    else this.formulas.removeColumns(sheet.engine, span);
  }
  moved(sheet: SheetState, movedKey: (key: number) => number | undefined): void {
    for (const store of [this.#inner, this.#innerUsed, this.#links, this.#cramped]) movePlaces(store, sheet, movedKey);
  }

  #raw(sheet: SheetState, key: number, content: Content | undefined): RawCellContent {
    if (!content) return null;
    if (content.kind === 'formula') {
      const words = tooMuch(content.formula);
      return words === undefined ? engineFormula(content.formula, this.#openEnd) : refusedFormula(words);
    }
    if (content.kind === 'text') return `'${content.text}`;
    if (content.kind === 'boolean') return content.value;
    const numberFormat = sheet.cells.get(key)?.format?.numberFormat;
    return numberFormat && isDateFormat(numberFormat) ? dateOf(content.value) : content.value;
  }

  // Working out

  hold(): void {
    if (!this.formulas.isEvaluationSuspended()) this.formulas.suspendEvaluation();
  }
  get held(): boolean {
    return this.formulas.isEvaluationSuspended();
  }
  resume(): void {
    if (this.held) this.#record(this.formulas.resumeEvaluation());
  }
  /** What depends on NOW is worked out again. */
  tick(): void {
    this.#ticks += 1;
    this.#record(this.formulas.changeNamedExpression('StandInTicks', this.#ticks));
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
      this.#log.mark(sheet, key);
    }
  }

  // Reading

  value(sheet: SheetState, row: number, column: number): Value {
    const raw: unknown = this.formulas.getCellValue({ sheet: sheet.engine, row: row - 1, col: column - 1 });
    if (raw === null || raw === undefined) return '';
    if (raw instanceof DetailedCellError) return hostError(raw) ?? loading;
    return raw as number | string | boolean;
  }
  /** The number format that a formula's result asks for. */
  formatOfResult(sheet: SheetState, row: number, column: number): string {
    switch (this.formulas.getCellValueDetailedType({ sheet: sheet.engine, row: row - 1, col: column - 1 })) {
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
  /** Where the link of a cell leads, if HYPERLINK gave what the cell shows. */
  link(sheet: SheetState, row: number, column: number): string | undefined {
    const link = this.#links.get(placeKey(sheet, cellKey(row, column)));
    return link && this.value(sheet, row, column) === link.label ? link.address : undefined;
  }
  formulaAt(sheet: SheetState, key: number): string | undefined {
    return this.formulas.getCellFormula(engineAddress(sheet, key));
  }
  /** Is the cell filled by an array formula of the engine's own? */
  isNativeSpill(sheet: SheetState, key: number): boolean {
    if (sheet.cells.get(key)?.content || sheet.spilled.has(key)) return false;
    return this.formulas.isCellPartOfArray(engineAddress(sheet, key));
  }

  #isDateCell(address: EngineAddress): boolean | undefined {
    const sheet = this.#bySheet.get(address.sheet);
    const own = sheet?.cells.get(cellKey(address.row + 1, address.col + 1))?.format?.numberFormat;
    return own === undefined || own === 'General' ? undefined : isDateFormat(own);
  }
}
