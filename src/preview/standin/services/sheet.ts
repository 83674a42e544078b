import { columnOf, readArea, rowOf, splitSheetName } from '../address.ts';
import { colour } from '../colour.ts';
import { refuseLocked, refuseLockedSheet } from '../guards.ts';
import { HostException } from '../hostError.ts';
import { aNumber, aText, constantValue, HostObject, own, part } from '../hostObject.ts';
import type { ProtectionState, SheetState } from '../sheetState.ts';
import { protectionTypes } from './constants.ts';
import { addMetadata, type HostMetadata, metadataOf } from './metadata.ts';
import { ProtectionStandIn, protectSheet } from './protection.ts';
import { insideSheet, RangeStandIn } from './range.ts';
import { RuleStandIn, rulesOf } from './rules.ts';
import type { ScriptRun } from './scriptRun.ts';
import { SpreadsheetStandIn } from './spreadsheet.ts';

type HostSheet = GoogleAppsScript.Spreadsheet.Sheet;
type HostRange = GoogleAppsScript.Spreadsheet.Range;
type HostProtection = GoogleAppsScript.Spreadsheet.Protection;
type HostRule = GoogleAppsScript.Spreadsheet.ConditionalFormatRule;
type HostSpreadsheet = GoogleAppsScript.Spreadsheet.Spreadsheet;

type SheetPart = Pick<
  HostSheet,
  | 'getName'
  | 'setName'
  | 'getSheetId'
  | 'getIndex'
  | 'getParent'
  | 'getDataRange'
  | 'getLastRow'
  | 'getLastColumn'
  | 'getMaxRows'
  | 'getMaxColumns'
  | 'insertRowsAfter'
  | 'insertRowsBefore'
  | 'insertRowAfter'
  | 'insertRowBefore'
  | 'insertColumnsAfter'
  | 'insertColumnsBefore'
  | 'deleteRow'
  | 'deleteRows'
  | 'deleteColumn'
  | 'deleteColumns'
  | 'setFrozenRows'
  | 'setFrozenColumns'
  | 'getFrozenRows'
  | 'getFrozenColumns'
  | 'setColumnWidth'
  | 'setColumnWidths'
  | 'getColumnWidth'
  | 'setRowHeight'
  | 'setRowHeights'
  | 'setRowHeightsForced'
  | 'hideSheet'
  | 'showSheet'
  | 'isSheetHidden'
  | 'getConditionalFormatRules'
  | 'setConditionalFormatRules'
  | 'clearConditionalFormatRules'
  | 'protect'
  | 'getProtections'
  | 'activate'
  | 'setTabColor'
  | 'setHiddenGridlines'
  | 'clear'
  | 'clearContents'
  | 'clearFormats'
  | 'getDeveloperMetadata'
  | 'getRangeList'
  | 'getFormUrl'
  | 'getCharts'
  | 'getImages'
  | 'getDrawings'
  | 'copyTo'
>;

export class SheetStandIn extends HostObject implements SheetPart {
  readonly kind_ = 'Sheet';
  readonly sheet_: SheetState;
  readonly #run: ScriptRun;

  constructor(run: ScriptRun, sheet: SheetState) {
    super();
    this.#run = run;
    this.sheet_ = sheet;
  }
  #self(): HostSheet {
    return part<HostSheet>(this);
  }
  #mayChange(): void {
    refuseLockedSheet(this.sheet_, this.#run.execution.seat);
  }
  #changed(): HostSheet {
    this.#run.book.restructure(this.sheet_);
    return this.#self();
  }

  getName(): string {
    return this.#live().name;
  }
  #live(): SheetState {
    if (!this.#run.book.sheets.includes(this.sheet_)) {
      throw new HostException(`Sheet ${this.sheet_.id} not found`);
    }
    return this.sheet_;
  }
  setName(name: string): HostSheet {
    this.#mayChange();
    const text = aText(name, 'Sheet.setName');
    if (text.trim() === '' || text.length > 100) throw new HostException(`Invalid argument: ${text}`);
    this.#run.book.renameSheet(this.#live(), text);
    return this.#changed();
  }
  getSheetId(): GoogleAppsScript.Integer {
    return this.sheet_.id;
  }
  getIndex(): GoogleAppsScript.Integer {
    return this.#run.book.sheets.indexOf(this.sheet_) + 1;
  }
  getParent(): HostSpreadsheet {
    return part<HostSpreadsheet>(new SpreadsheetStandIn(this.#run));
  }

  getRange(rowOrName: number | string, column?: number, numRows = 1, numColumns = 1): HostRange {
    this.#live();
    if (typeof rowOrName === 'string') {
      const { sheet, rest } = splitSheetName(rowOrName);
      const area = readArea(rest, this.sheet_);
      const elsewhere = sheet !== undefined && sheet.toLowerCase() !== this.sheet_.name.toLowerCase();
      if (!area || elsewhere) throw new HostException('Range not found');
      return part<HostRange>(new RangeStandIn(this.#run, this.sheet_, insideSheet(this.sheet_, area)));
    }
    const method = 'SpreadsheetApp.Sheet.getRange';
    const area = {
      row: aNumber(rowOrName, method),
      column: aNumber(column, method),
      rows: aNumber(numRows, method),
      columns: aNumber(numColumns, method),
    };
    return part<HostRange>(new RangeStandIn(this.#run, this.sheet_, insideSheet(this.sheet_, area)));
  }
  getRangeList(a1Notations: string[]): GoogleAppsScript.Spreadsheet.RangeList {
    const ranges = a1Notations.map((name) => own(this.getRange(name), RangeStandIn, 'Sheet.getRangeList'));
    return part<GoogleAppsScript.Spreadsheet.RangeList>(new RangeListStandIn(ranges));
  }
  getDataRange(): HostRange {
    const rows = Math.max(1, this.getLastRow());
    return this.getRange(1, 1, rows, Math.max(1, this.getLastColumn()));
  }
  getLastRow(): number {
    return this.#run.book.lastRow(this.#live());
  }
  getLastColumn(): number {
    return this.#run.book.lastColumn(this.#live());
  }
  getMaxRows(): number {
    return this.#live().rows;
  }
  getMaxColumns(): number {
    return this.#live().columns;
  }

  #insert(along: 'Rows' | 'Columns', before: number, count: number): void {
    this.#mayChange();
    const there = along === 'Rows' ? this.sheet_.rows : this.sheet_.columns;
    if (before < 1 || before > there + 1) throw new HostException('Those rows or columns are out of bounds.');
    if (aNumber(count, `Sheet.insert${along}`) < 1) throw new HostException('The number to insert must be at least 1.');
    this.#run.book[`insert${along}`](this.sheet_, before, count);
  }
  insertRowsAfter(afterPosition: number, howMany: number): HostSheet {
    this.#insert('Rows', aNumber(afterPosition, 'Sheet.insertRowsAfter') + 1, howMany);
    return this.#self();
  }
  insertRowsBefore(beforePosition: number, howMany: number): HostSheet {
    this.#insert('Rows', aNumber(beforePosition, 'Sheet.insertRowsBefore'), howMany);
    return this.#self();
  }
  insertRowAfter(afterPosition: number): HostSheet {
    return this.insertRowsAfter(afterPosition, 1);
  }
  insertRowBefore(beforePosition: number): HostSheet {
    return this.insertRowsBefore(beforePosition, 1);
  }
  insertColumnsAfter(afterPosition: number, howMany: number): HostSheet {
    this.#insert('Columns', aNumber(afterPosition, 'Sheet.insertColumnsAfter') + 1, howMany);
    return this.#self();
  }
  insertColumnsBefore(beforePosition: number, howMany: number): HostSheet {
    this.#insert('Columns', aNumber(beforePosition, 'Sheet.insertColumnsBefore'), howMany);
    return this.#self();
  }
  #delete(along: 'Rows' | 'Columns', first: number, count: number): void {
    this.#mayChange();
    const there = along === 'Rows' ? this.sheet_.rows : this.sheet_.columns;
    if (first < 1 || count < 1 || first + count - 1 > there) {
      throw new HostException('Those rows or columns are out of bounds.');
    }
    this.#run.book[`delete${along}`](this.sheet_, first, count);
  }
  deleteRows(rowPosition: number, howMany: number): void {
    this.#delete('Rows', aNumber(rowPosition, 'Sheet.deleteRows'), aNumber(howMany, 'Sheet.deleteRows'));
  }
  deleteRow(rowPosition: number): HostSheet {
    this.deleteRows(rowPosition, 1);
    return this.#self();
  }
  deleteColumns(columnPosition: number, howMany: number): void {
    this.#delete('Columns', aNumber(columnPosition, 'Sheet.deleteColumns'), aNumber(howMany, 'Sheet.deleteColumns'));
  }
  deleteColumn(columnPosition: number): HostSheet {
    this.deleteColumns(columnPosition, 1);
    return this.#self();
  }

  setFrozenRows(rows: number): void {
    if (aNumber(rows, 'Sheet.setFrozenRows') >= this.sheet_.rows || rows < 0) {
      throw new HostException("You can't freeze all visible rows on the sheet.");
    }
    this.sheet_.frozenRows = rows;
    this.#changed();
  }
  setFrozenColumns(columns: number): void {
    if (aNumber(columns, 'Sheet.setFrozenColumns') >= this.sheet_.columns || columns < 0) {
      throw new HostException("You can't freeze all visible columns on the sheet.");
    }
    this.sheet_.frozenColumns = columns;
    this.#changed();
  }
  getFrozenRows(): number {
    return this.sheet_.frozenRows;
  }
  getFrozenColumns(): number {
    return this.sheet_.frozenColumns;
  }
  setColumnWidth(columnPosition: number, width: number): HostSheet {
    return this.setColumnWidths(columnPosition, 1, width);
  }
  setColumnWidths(startColumn: number, numColumns: number, width: number): HostSheet {
    this.#lines(startColumn, numColumns, this.sheet_.columns);
    for (let offset = 0; offset < numColumns; offset += 1) {
      this.sheet_.columnWidths.set(startColumn + offset, aNumber(width, 'Sheet.setColumnWidths'));
    }
    return this.#changed();
  }
  getColumnWidth(columnPosition: number): number {
    return this.sheet_.columnWidths.get(columnPosition) ?? 100;
  }
  setRowHeight(rowPosition: number, height: number): HostSheet {
    return this.setRowHeights(rowPosition, 1, height);
  }
  setRowHeights(startRow: number, numRows: number, height: number): HostSheet {
    return this.#heights(startRow, numRows, aNumber(height, 'Sheet.setRowHeights'), false);
  }
  setRowHeightsForced(startRow: number, numRows: number, height: number): HostSheet {
    return this.#heights(startRow, numRows, aNumber(height, 'Sheet.setRowHeightsForced'), true);
  }
  /** Rows of a forced height do not grow with what is in them. */
  #heights(startRow: number, numRows: number, height: number, forced: boolean): HostSheet {
    this.#lines(startRow, numRows, this.sheet_.rows);
    for (let row = startRow; row < startRow + numRows; row += 1) {
      this.sheet_.rowHeights.set(row, height);
      if (forced) this.sheet_.forcedRows.add(row);
      else this.sheet_.forcedRows.delete(row);
    }
    return this.#changed();
  }
  #lines(first: number, count: number, there: number): void {
    if (!Number.isInteger(first) || !Number.isInteger(count) || first < 1 || count < 1 || first + count - 1 > there) {
      throw new HostException('Those rows or columns are out of bounds.');
    }
  }
  #hide(lines: Set<number>, first: number, count: number, there: number, hidden: boolean): void {
    this.#lines(first, count, there);
    for (let line = first; line < first + count; line += 1) {
      if (hidden) lines.add(line);
      else lines.delete(line);
    }
    if (lines.size >= there) throw new HostException("You can't hide all the rows or columns of a sheet.");
    this.#changed();
  }
  hideColumns(columnIndex: number, numColumns = 1): void {
    this.#hide(this.sheet_.hiddenColumns, columnIndex, numColumns, this.sheet_.columns, true);
  }
  showColumns(columnIndex: number, numColumns = 1): void {
    this.#hide(this.sheet_.hiddenColumns, columnIndex, numColumns, this.sheet_.columns, false);
  }
  hideRows(rowIndex: number, numRows = 1): void {
    this.#hide(this.sheet_.hiddenRows, rowIndex, numRows, this.sheet_.rows, true);
  }
  showRows(rowIndex: number, numRows = 1): void {
    this.#hide(this.sheet_.hiddenRows, rowIndex, numRows, this.sheet_.rows, false);
  }
  hideSheet(): HostSheet {
    if (!this.#run.book.sheets.some((other) => other !== this.sheet_ && !other.hidden)) {
      throw new HostException("You can't hide all the sheets in a document.");
    }
    this.sheet_.hidden = true;
    // Whoever had it in view is shown another sheet.
    const next = this.#run.book.sheets.find(({ hidden }) => !hidden);
    for (const selection of Object.values(this.#run.selections)) {
      if (selection.sheet !== this.sheet_.id || next === undefined) continue;
      Object.assign(selection, { sheet: next.id, row: 1, column: 1, rows: 1, columns: 1 });
    }
    return this.#changed();
  }
  showSheet(): HostSheet {
    this.sheet_.hidden = false;
    return this.#changed();
  }
  isSheetHidden(): boolean {
    return this.sheet_.hidden;
  }

  getConditionalFormatRules(): HostRule[] {
    return rulesOf(this.#run, this.sheet_.id).map((rule) => part<HostRule>(rule));
  }
  setConditionalFormatRules(rules: HostRule[]): void {
    if (!Array.isArray(rules)) {
      throw new HostException("The parameters don't match the method signature for Sheet.setConditionalFormatRules.");
    }
    this.sheet_.rules = rules.map((rule) => {
      const given = own(rule, RuleStandIn, 'Sheet.setConditionalFormatRules');
      if (given.ranges_.some((range) => range.sheet_ !== this.sheet_)) {
        throw new HostException('Conditional format rule ranges must be on the sheet they are set on.');
      }
      return given.rule_;
    });
    this.#changed();
  }
  clearConditionalFormatRules(): void {
    this.setConditionalFormatRules([]);
  }

  protect(): HostProtection {
    return part<HostProtection>(new ProtectionStandIn(this.#run, this.sheet_, protectSheet(this.#run, this.sheet_)));
  }
  getProtections(type: GoogleAppsScript.Spreadsheet.ProtectionType): HostProtection[] {
    const kind: ProtectionState['kind'] = constantValue(type, protectionTypes, 'Sheet.getProtections');
    return this.sheet_.protections
      .filter((protection) => protection.kind === kind)
      .map((state) => part<HostProtection>(new ProtectionStandIn(this.#run, this.sheet_, state)));
  }

  // None of these can be made here, so a sheet has none.
  getFormUrl(): string {
    // The host gives null where there is none, which its typings leave out.
    return null as unknown as string;
  }
  getCharts(): GoogleAppsScript.Spreadsheet.EmbeddedChart[] {
    return [];
  }
  getImages(): GoogleAppsScript.Spreadsheet.OverGridImage[] {
    return [];
  }
  getDrawings(): GoogleAppsScript.Spreadsheet.Drawing[] {
    return [];
  }

  activate(): HostSheet {
    if (this.sheet_.hidden) this.showSheet();
    Object.assign(this.#run.selections[this.#run.execution.seat], {
      sheet: this.sheet_.id,
      row: 1,
      column: 1,
      rows: 1,
      columns: 1,
    });
    this.#run.activated(this.#run.execution.seat);
    return this.#self();
  }
  setTabColor(color: string | null): HostSheet {
    this.sheet_.tabColor = colour(color);
    return this.#changed();
  }
  setHiddenGridlines(hideGridlines: boolean): HostSheet {
    this.sheet_.gridlinesHidden = hideGridlines;
    return this.#changed();
  }

  #whole(): RangeStandIn {
    const area = { row: 1, column: 1, rows: this.sheet_.rows, columns: this.sheet_.columns };
    refuseLocked(this.sheet_, area, this.#run.execution.seat);
    return new RangeStandIn(this.#run, this.sheet_, area);
  }
  clear(options?: { contentsOnly?: boolean | undefined; formatOnly?: boolean | undefined }): HostSheet {
    this.#whole().clear(options);
    if (!options?.contentsOnly) this.sheet_.rules = [];
    return this.#changed();
  }
  clearContents(): HostSheet {
    this.#whole().clearContent();
    return this.#self();
  }
  clearFormats(): HostSheet {
    this.#whole().clearFormat();
    this.sheet_.rules = [];
    return this.#changed();
  }

  /** Into this workbook only: no other can be opened here. Cells come along, and marks unless the host loses them. */
  copyTo(spreadsheet: HostSpreadsheet): HostSheet {
    own(spreadsheet, SpreadsheetStandIn, 'Sheet.copyTo');
    const { book, troubles } = this.#run;
    const source = this.#live();
    let name = `Copy of ${source.name}`;
    for (let number = 2; book.sheetNamed(name); number += 1) name = `Copy of ${source.name} ${number}`;
    const made = book.addSheet(name);
    Object.assign(made, { rows: source.rows, columns: source.columns });
    for (const [key, { content, ...looks }] of [...source.cells]) {
      book.decorate(made, rowOf(key), columnOf(key), () => looks);
      if (content) book.setContent(made, rowOf(key), columnOf(key), content);
    }
    if (!troubles.tagsLostInCopies) made.metadata.push(...source.metadata.map((entry) => ({ ...entry })));
    return part<HostSheet>(new SheetStandIn(this.#run, made));
  }

  addDeveloperMetadata(key: string, valueOrVisibility?: unknown, visibility?: unknown): HostSheet {
    addMetadata(this.sheet_.metadata, key, valueOrVisibility, visibility);
    return this.#self();
  }
  getDeveloperMetadata(): HostMetadata[] {
    return metadataOf({ list: this.sheet_.metadata, sheet: () => this.#self() });
  }
}

type RangeListPart = Pick<
  GoogleAppsScript.Spreadsheet.RangeList,
  | 'getRanges'
  | 'setValue'
  | 'setBackground'
  | 'setFontColor'
  | 'setFontWeight'
  | 'setFontStyle'
  | 'setFontSize'
  | 'setFontFamily'
  | 'setNumberFormat'
  | 'setNote'
  | 'setWrap'
  | 'setWrapStrategy'
  | 'setHorizontalAlignment'
  | 'setVerticalAlignment'
  | 'setBorder'
  | 'clearContent'
  | 'clearFormat'
>;
type HostRangeList = GoogleAppsScript.Spreadsheet.RangeList;

class RangeListStandIn extends HostObject implements RangeListPart {
  readonly kind_ = 'RangeList';
  readonly #ranges: readonly RangeStandIn[];
  constructor(ranges: readonly RangeStandIn[]) {
    super();
    this.#ranges = ranges;
  }
  getRanges(): HostRange[] {
    return this.#ranges.map((range) => part<HostRange>(range));
  }
  #each(change: (range: RangeStandIn) => unknown): HostRangeList {
    for (const range of this.#ranges) change(range);
    return part<HostRangeList>(this);
  }
  setValue(value: unknown): HostRangeList {
    return this.#each((range) => range.setValue(value as string));
  }
  setBackground(color: string | null): HostRangeList {
    return this.#each((range) => range.setBackground(color));
  }
  setFontColor(color: string | null): HostRangeList {
    return this.#each((range) => range.setFontColor(color));
  }
  setFontWeight(fontWeight: string | null): HostRangeList {
    return this.#each((range) => range.setFontWeight(fontWeight as 'bold' | 'normal' | null));
  }
  setFontStyle(fontStyle: string | null): HostRangeList {
    return this.#each((range) => range.setFontStyle(fontStyle as 'italic' | 'normal' | null));
  }
  setFontSize(size: number): HostRangeList {
    return this.#each((range) => range.setFontSize(size));
  }
  setFontFamily(fontFamily: string | null): HostRangeList {
    return this.#each((range) => range.setFontFamily(fontFamily));
  }
  setNumberFormat(numberFormat: string): HostRangeList {
    return this.#each((range) => range.setNumberFormat(numberFormat));
  }
  setNote(note: string | null): HostRangeList {
    return this.#each((range) => range.setNote(note));
  }
  setWrap(isWrapEnabled: boolean): HostRangeList {
    return this.#each((range) => range.setWrap(isWrapEnabled));
  }
  setWrapStrategy(strategy: GoogleAppsScript.Spreadsheet.WrapStrategy): HostRangeList {
    return this.#each((range) => range.setWrapStrategy(strategy));
  }
  setHorizontalAlignment(alignment: string | null): HostRangeList {
    return this.#each((range) => range.setHorizontalAlignment(alignment as 'left' | null));
  }
  setVerticalAlignment(alignment: string | null): HostRangeList {
    return this.#each((range) => range.setVerticalAlignment(alignment as 'top' | null));
  }
  setBorder(...border: Parameters<RangeStandIn['setBorder']>): HostRangeList {
    return this.#each((range) => range.setBorder(...border));
  }
  clearContent(): HostRangeList {
    return this.#each((range) => range.clearContent());
  }
  clearFormat(): HostRangeList {
    return this.#each((range) => range.clearFormat());
  }
}
