import { readArea, splitSheetName } from '../address.ts';
import { refuseLockedSheet } from '../guards.ts';
import { HostException } from '../hostError.ts';
import { aNumber, aText, constantValue, HostObject, own, part } from '../hostObject.ts';
import { recalculationIntervals } from './constants.ts';
import type { Desk } from './desk.ts';
import { addMetadata, FinderStandIn, type HostMetadata, metadataOf } from './metadata.ts';
import { insideSheet, RangeStandIn } from './range.ts';
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
  readonly #desk: Desk;
  constructor(desk: Desk) {
    super();
    this.#desk = desk;
  }
  #self(): HostSpreadsheet {
    return part<HostSpreadsheet>(this);
  }
  #sheet(state: SheetStandIn['sheet_']): HostSheet {
    return part<HostSheet>(new SheetStandIn(this.#desk, state));
  }

  getId(): string {
    return this.#desk.fileId;
  }
  getName(): string {
    return this.#desk.book.name;
  }
  rename(newName: string): void {
    this.#desk.book.name = aText(newName, 'Spreadsheet.rename');
  }
  getUrl(): string {
    return this.#desk.address();
  }
  getSheets(): HostSheet[] {
    return this.#desk.book.sheets.map((state) => this.#sheet(state));
  }
  getNumSheets(): number {
    return this.#desk.book.sheets.length;
  }
  getSheetByName(name: string): HostSheet | null {
    const state = this.#desk.book.sheetNamed(aText(name, 'Spreadsheet.getSheetByName'));
    return state ? this.#sheet(state) : null;
  }
  getSheetById(id: number): HostSheet | null {
    const state = this.#desk.book.sheets.find((sheet) => sheet.id === id);
    return state ? this.#sheet(state) : null;
  }
  insertSheet(nameOrIndex?: string | number, index?: number): HostSheet {
    const name = typeof nameOrIndex === 'string' ? nameOrIndex : undefined;
    const place = typeof nameOrIndex === 'number' ? nameOrIndex : index;
    const { sheets } = this.#desk.book;
    if (name !== undefined && (name.trim() === '' || name.length > 100))
      throw new HostException(`Invalid argument: ${name}`);
    if (place !== undefined && (!Number.isInteger(place) || place < 0 || place > sheets.length)) {
      throw new HostException(`Invalid argument: ${place}`);
    }
    const active = sheets.findIndex((sheet) => sheet.id === this.#desk.selections[this.#desk.execution.seat].sheet);
    const made = this.#desk.book.addSheet(name, place ?? (active < 0 ? sheets.length : active + 1));
    const standIn = new SheetStandIn(this.#desk, made);
    standIn.activate();
    return part<HostSheet>(standIn);
  }
  deleteSheet(sheet: HostSheet): void {
    const state = own(sheet, SheetStandIn, 'Spreadsheet.deleteSheet').sheet_;
    refuseLockedSheet(state, this.#desk.execution.seat);
    this.#desk.book.removeSheet(state);
    for (const selection of Object.values(this.#desk.selections)) {
      if (selection.sheet !== state.id) continue;
      const next = this.#desk.book.sheets.find(({ hidden }) => !hidden);
      Object.assign(selection, { sheet: next?.id ?? 0, row: 1, column: 1, rows: 1, columns: 1 });
    }
  }
  getActiveSheet(): HostSheet {
    const { callingCell, selections, execution, book } = this.#desk;
    return this.#sheet(book.sheet(callingCell?.sheet ?? selections[execution.seat].sheet));
  }
  setActiveSheet(sheet: HostSheet): HostSheet {
    return own(sheet, SheetStandIn, 'Spreadsheet.setActiveSheet').activate();
  }
  getActiveRange(): HostRange {
    const { callingCell, selections, execution, book } = this.#desk;
    if (callingCell) {
      const { sheet, row, column } = callingCell;
      return part<HostRange>(new RangeStandIn(this.#desk, book.sheet(sheet), { row, column, rows: 1, columns: 1 }));
    }
    const { sheet, ...area } = selections[execution.seat];
    return part<HostRange>(new RangeStandIn(this.#desk, book.sheet(sheet), area));
  }
  getActiveCell(): HostRange {
    return (this.getActiveRange() as unknown as RangeStandIn).offset(0, 0, 1, 1);
  }
  setActiveRange(range: HostRange): HostRange {
    return own(range, RangeStandIn, 'Spreadsheet.setActiveRange').activate();
  }
  getSpreadsheetLocale(): string {
    return this.#desk.book.locale.name;
  }
  getSpreadsheetTimeZone(): string {
    return this.#desk.book.timeZone;
  }
  getRecalculationInterval(): GoogleAppsScript.Spreadsheet.RecalculationInterval {
    return recalculationIntervals[
      this.#desk.book.interval
    ] as unknown as GoogleAppsScript.Spreadsheet.RecalculationInterval;
  }
  setRecalculationInterval(interval: GoogleAppsScript.Spreadsheet.RecalculationInterval): HostSpreadsheet {
    this.#desk.book.interval = constantValue(interval, recalculationIntervals, 'Spreadsheet.setRecalculationInterval');
    return this.#self();
  }
  addDeveloperMetadata(key: string, valueOrVisibility?: unknown, visibility?: unknown): HostSpreadsheet {
    addMetadata(this.#desk.book.metadata, key, valueOrVisibility, visibility);
    return this.#self();
  }
  getDeveloperMetadata(): HostMetadata[] {
    return metadataOf({ list: this.#desk.book.metadata, sheet: () => null });
  }
  createDeveloperMetadataFinder(): GoogleAppsScript.Spreadsheet.DeveloperMetadataFinder {
    const finder = new FinderStandIn(() => [
      { list: this.#desk.book.metadata, sheet: () => null },
      ...this.#desk.book.sheets.map((state) => ({ list: state.metadata, sheet: () => this.#sheet(state) })),
    ]);
    return part<GoogleAppsScript.Spreadsheet.DeveloperMetadataFinder>(finder);
  }
  toast(message: string, title = ''): void {
    this.#desk.toast(aText(message, 'Spreadsheet.toast'), aText(title, 'Spreadsheet.toast'));
  }
  moveActiveSheet(pos: number): void {
    const place = aNumber(pos, 'Spreadsheet.moveActiveSheet');
    const { book, selections, execution } = this.#desk;
    if (place < 1 || place > book.sheets.length) throw new HostException(`Invalid argument: ${place}`);
    book.moveSheet(book.sheet(selections[execution.seat].sheet), place - 1);
  }

  #named(name: string): RangeStandIn | undefined {
    const { sheet, rest } = splitSheetName(name);
    const { book, selections, execution } = this.#desk;
    const state = sheet === undefined ? book.sheet(selections[execution.seat].sheet) : book.sheetNamed(sheet);
    const area = state && readArea(rest, state);
    if (state && area) return new RangeStandIn(this.#desk, state, insideSheet(state, area));
    const named = book.named.find((range) => range.name.toLowerCase() === name.toLowerCase());
    return named && new RangeStandIn(this.#desk, book.sheet(named.sheet), named.area);
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
    this.#desk.book.setNamed(name, sheet_, area_);
  }
  removeNamedRange(name: string): void {
    this.#desk.book.removeNamed(name);
  }
  getNamedRanges(): HostNamedRange[] {
    return this.#desk.book.named.map(({ name }) => part<HostNamedRange>(new NamedRangeStandIn(this.#desk, name)));
  }
}

class NamedRangeStandIn extends HostObject implements Pick<HostNamedRange, 'getName' | 'getRange' | 'remove'> {
  readonly kind_ = 'NamedRange';
  readonly #desk: Desk;
  readonly #name: string;
  constructor(desk: Desk, name: string) {
    super();
    this.#desk = desk;
    this.#name = name;
  }
  getName(): string {
    return this.#name;
  }
  getRange(): HostRange {
    const named = this.#desk.book.named.find(({ name }) => name === this.#name);
    if (!named) throw new HostException('The named range no longer exists.');
    return part<HostRange>(new RangeStandIn(this.#desk, this.#desk.book.sheet(named.sheet), named.area));
  }
  remove(): void {
    this.#desk.book.removeNamed(this.#name);
  }
}
