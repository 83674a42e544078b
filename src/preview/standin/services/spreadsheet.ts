import { readArea, splitSheetName } from '../address.ts';
import { refuseLockedSheet } from '../guards.ts';
import { HostException } from '../hostError.ts';
import { aNumber, aText, constantValue, HostObject, own, part } from '../hostObject.ts';
import { recalculationIntervals } from './constants.ts';
import { addMetadata, FinderStandIn, type HostMetadata, metadataOf } from './metadata.ts';
import { insideSheet, RangeStandIn } from './range.ts';
import type { ScriptRun } from './scriptRun.ts';
import { SheetStandIn } from './sheet.ts';

type HostSpreadsheet = GoogleAppsScript.Spreadsheet.Spreadsheet;
type HostSheet = GoogleAppsScript.Spreadsheet.Sheet;
type HostRange = GoogleAppsScript.Spreadsheet.Range;
type HostNamedRange = GoogleAppsScript.Spreadsheet.NamedRange;

type SpreadsheetPart = Pick<
  HostSpreadsheet,
  | 'getId'
  | 'getName'
  | 'rename'
  | 'getUrl'
  | 'getSheets'
  | 'getNumSheets'
  | 'getSheetByName'
  | 'getSheetById'
  | 'deleteSheet'
  | 'getActiveSheet'
  | 'getActiveRange'
  | 'setActiveRange'
  | 'getActiveCell'
  | 'getSpreadsheetLocale'
  | 'getSpreadsheetTimeZone'
  | 'getRecalculationInterval'
  | 'setRecalculationInterval'
  | 'getDeveloperMetadata'
  | 'createDeveloperMetadataFinder'
  | 'moveActiveSheet'
  | 'getRange'
  | 'getRangeByName'
  | 'setNamedRange'
  | 'removeNamedRange'
  | 'getNamedRanges'
>;

export class SpreadsheetStandIn extends HostObject implements SpreadsheetPart {
  readonly kind_ = 'Spreadsheet';
  readonly #run: ScriptRun;
  constructor(run: ScriptRun) {
    super();
    this.#run = run;
  }
  #self(): HostSpreadsheet {
    return part<HostSpreadsheet>(this);
  }
  #sheet(state: SheetStandIn['sheet_']): HostSheet {
    return part<HostSheet>(new SheetStandIn(this.#run, state));
  }

  getId(): string {
    return this.#run.fileId;
  }
  getName(): string {
    return this.#run.book.name;
  }
  rename(newName: string): void {
    this.#run.book.name = aText(newName, 'Spreadsheet.rename');
  }
  getUrl(): string {
    return this.#run.address();
  }
  getSheets(): HostSheet[] {
    return this.#run.book.sheets.map((state) => this.#sheet(state));
  }
  getNumSheets(): number {
    return this.#run.book.sheets.length;
  }
  getSheetByName(name: string): HostSheet | null {
    const state = this.#run.book.sheetNamed(aText(name, 'Spreadsheet.getSheetByName'));
    return state ? this.#sheet(state) : null;
  }
  getSheetById(id: number): HostSheet | null {
    const state = this.#run.book.sheets.find((sheet) => sheet.id === id);
    return state ? this.#sheet(state) : null;
  }
  insertSheet(nameOrIndex?: string | number, index?: number): HostSheet {
    const name = typeof nameOrIndex === 'string' ? nameOrIndex : undefined;
    const place = typeof nameOrIndex === 'number' ? nameOrIndex : index;
    const { sheets } = this.#run.book;
    if (name !== undefined && (name.trim() === '' || name.length > 100))
      throw new HostException(`Invalid argument: ${name}`);
    if (place !== undefined && (!Number.isInteger(place) || place < 0 || place > sheets.length)) {
      throw new HostException(`Invalid argument: ${place}`);
    }
    const active = sheets.findIndex((sheet) => sheet.id === this.#run.selections[this.#run.execution.seat].sheet);
    const made = this.#run.book.addSheet(name, place ?? (active < 0 ? sheets.length : active + 1));
    const standIn = new SheetStandIn(this.#run, made);
    standIn.activate();
    return part<HostSheet>(standIn);
  }
  deleteSheet(sheet: HostSheet): void {
    const state = own(sheet, SheetStandIn, 'Spreadsheet.deleteSheet').sheet_;
    refuseLockedSheet(state, this.#run.execution.seat);
    this.#run.book.removeSheet(state);
    for (const selection of Object.values(this.#run.selections)) {
      if (selection.sheet !== state.id) continue;
      const next = this.#run.book.sheets.find(({ hidden }) => !hidden);
      Object.assign(selection, { sheet: next?.id ?? 0, row: 1, column: 1, rows: 1, columns: 1 });
    }
  }
  getActiveSheet(): HostSheet {
    const { callingCell, selections, execution, book } = this.#run;
    return this.#sheet(book.sheet(callingCell?.sheet ?? selections[execution.seat].sheet));
  }
  setActiveSheet(sheet: HostSheet): HostSheet {
    return own(sheet, SheetStandIn, 'Spreadsheet.setActiveSheet').activate();
  }
  getActiveRange(): HostRange {
    const { callingCell, selections, execution, book } = this.#run;
    if (callingCell) {
      const { sheet, row, column } = callingCell;
      return part<HostRange>(new RangeStandIn(this.#run, book.sheet(sheet), { row, column, rows: 1, columns: 1 }));
    }
    const { sheet, ...area } = selections[execution.seat];
    return part<HostRange>(new RangeStandIn(this.#run, book.sheet(sheet), area));
  }
  getActiveCell(): HostRange {
    return (this.getActiveRange() as unknown as RangeStandIn).offset(0, 0, 1, 1);
  }
  setActiveRange(range: HostRange): HostRange {
    return own(range, RangeStandIn, 'Spreadsheet.setActiveRange').activate();
  }
  getSpreadsheetLocale(): string {
    return this.#run.book.locale.name;
  }
  getSpreadsheetTimeZone(): string {
    return this.#run.book.timeZone;
  }
  getRecalculationInterval(): GoogleAppsScript.Spreadsheet.RecalculationInterval {
    return recalculationIntervals[
      this.#run.book.interval
    ] as unknown as GoogleAppsScript.Spreadsheet.RecalculationInterval;
  }
  setRecalculationInterval(interval: GoogleAppsScript.Spreadsheet.RecalculationInterval): HostSpreadsheet {
    this.#run.book.interval = constantValue(interval, recalculationIntervals, 'Spreadsheet.setRecalculationInterval');
    return this.#self();
  }
  addDeveloperMetadata(key: string, valueOrVisibility?: unknown, visibility?: unknown): HostSpreadsheet {
    addMetadata(this.#run.book.metadata, key, valueOrVisibility, visibility);
    return this.#self();
  }
  getDeveloperMetadata(): HostMetadata[] {
    return metadataOf({ list: this.#run.book.metadata, sheet: () => null });
  }
  createDeveloperMetadataFinder(): GoogleAppsScript.Spreadsheet.DeveloperMetadataFinder {
    const finder = new FinderStandIn(() => [
      { list: this.#run.book.metadata, sheet: () => null },
      ...this.#run.book.sheets.map((state) => ({ list: state.metadata, sheet: () => this.#sheet(state) })),
    ]);
    return part<GoogleAppsScript.Spreadsheet.DeveloperMetadataFinder>(finder);
  }
  toast(message: string, title = ''): void {
    this.#run.toast(aText(message, 'Spreadsheet.toast'), aText(title, 'Spreadsheet.toast'));
  }
  moveActiveSheet(pos: number): void {
    const place = aNumber(pos, 'Spreadsheet.moveActiveSheet');
    const { book, selections, execution } = this.#run;
    if (place < 1 || place > book.sheets.length) throw new HostException(`Invalid argument: ${place}`);
    book.moveSheet(book.sheet(selections[execution.seat].sheet), place - 1);
  }

  #named(name: string): RangeStandIn | undefined {
    const { sheet, rest } = splitSheetName(name);
    const { book, selections, execution } = this.#run;
    const state = sheet === undefined ? book.sheet(selections[execution.seat].sheet) : book.sheetNamed(sheet);
    const area = state && readArea(rest, state);
    if (state && area) return new RangeStandIn(this.#run, state, insideSheet(state, area));
    const named = book.named.find((range) => range.name.toLowerCase() === name.toLowerCase());
    return named && new RangeStandIn(this.#run, book.sheet(named.sheet), named.area);
  }
  getRange(a1Notation: string): HostRange {
    const found = this.#named(aText(a1Notation, 'Spreadsheet.getRange'));
    if (!found) throw new HostException('Range not found');
    return part<HostRange>(found);
  }
  getRangeByName(name: string): HostRange | null {
    const found = this.#named(aText(name, 'Spreadsheet.getRangeByName'));
    return found ? part<HostRange>(found) : null;
  }
  setNamedRange(name: string, range: HostRange): void {
    const { sheet_, area_ } = own(range, RangeStandIn, 'Spreadsheet.setNamedRange');
    if (!/^[A-Za-z_][A-Za-z0-9_]*$/.test(name) || /^[A-Za-z]{1,3}\d+$/.test(name)) {
      throw new HostException('The name of the range is not valid.');
    }
    this.#run.book.setNamed(name, sheet_, area_);
  }
  removeNamedRange(name: string): void {
    this.#run.book.removeNamed(name);
  }
  getNamedRanges(): HostNamedRange[] {
    return this.#run.book.named.map(({ name }) => part<HostNamedRange>(new NamedRangeStandIn(this.#run, name)));
  }
}

class NamedRangeStandIn extends HostObject implements Pick<HostNamedRange, 'getName' | 'getRange' | 'remove'> {
  readonly kind_ = 'NamedRange';
  readonly #run: ScriptRun;
  readonly #name: string;
  constructor(run: ScriptRun, name: string) {
    super();
    this.#run = run;
    this.#name = name;
  }
  getName(): string {
    return this.#name;
  }
  getRange(): HostRange {
    const named = this.#run.book.named.find(({ name }) => name === this.#name);
    if (!named) throw new HostException('The named range no longer exists.');
    return part<HostRange>(new RangeStandIn(this.#run, this.#run.book.sheet(named.sheet), named.area));
  }
  remove(): void {
    this.#run.book.removeNamed(this.#name);
  }
}
