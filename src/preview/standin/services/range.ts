import { type Area, areaName, cellKey, cellName, columnOf, covers, overlaps, rowOf } from '../address.ts';
import { loading, type Value } from '../book/engine.ts';
import type { Book } from '../book.ts';
import { changedFormat, type FormatChange } from '../changedFormat.ts';
import { colour } from '../colour.ts';
import { localFormula } from '../formulaText.ts';
import { refuseLocked } from '../guards.ts';
import { HostError, HostException } from '../hostError.ts';
import { aNumber, aText, constantValue, HostObject, own, part } from '../hostObject.ts';
import { dateOf, serialOf } from '../serial.ts';
import type { CellState, SheetState } from '../sheetState.ts';
import { type Content, isPlainText, readTyped } from '../typed.ts';
import { borderStyles, wrapStrategies } from './constants.ts';
import { ProtectionStandIn, protectRange } from './protection.ts';
import { ValidationStandIn } from './rules.ts';
import type { ScriptRun } from './scriptRun.ts';
import { SheetStandIn } from './sheet.ts';

type HostRange = GoogleAppsScript.Spreadsheet.Range;
type HostSheet = GoogleAppsScript.Spreadsheet.Sheet;
type HostValidation = GoogleAppsScript.Spreadsheet.DataValidation;
type HostProtection = GoogleAppsScript.Spreadsheet.Protection;

type RangePart = Pick<
  HostRange,
  | 'getRow'
  | 'getColumn'
  | 'getNumRows'
  | 'getNumColumns'
  | 'getLastRow'
  | 'getLastColumn'
  | 'getHeight'
  | 'getWidth'
  | 'getSheet'
  | 'getA1Notation'
  | 'offset'
  | 'getCell'
  | 'getValue'
  | 'getValues'
  | 'getDisplayValue'
  | 'getDisplayValues'
  | 'getFormula'
  | 'getFormulas'
  | 'setValue'
  | 'setValues'
  | 'setFormula'
  | 'setFormulas'
  | 'getNote'
  | 'getNotes'
  | 'setNote'
  | 'setNotes'
  | 'clearNote'
  | 'getNumberFormat'
  | 'getNumberFormats'
  | 'setNumberFormat'
  | 'setNumberFormats'
  | 'getBackground'
  | 'getBackgrounds'
  | 'setBackground'
  | 'setBackgrounds'
  | 'setFontColor'
  | 'setFontColors'
  | 'setFontWeight'
  | 'setFontWeights'
  | 'setFontStyle'
  | 'setFontStyles'
  | 'setFontLine'
  | 'setFontSize'
  | 'setFontSizes'
  | 'setFontFamily'
  | 'setWrap'
  | 'setWraps'
  | 'setWrapStrategy'
  | 'setWrapStrategies'
  | 'setVerticalAlignment'
  | 'setHorizontalAlignment'
  | 'setHorizontalAlignments'
  | 'setBorder'
  | 'setDataValidation'
  | 'setDataValidations'
  | 'getDataValidation'
  | 'getDataValidations'
  | 'clearDataValidations'
  | 'insertCheckboxes'
  | 'clearContent'
  | 'clear'
  | 'clearFormat'
  | 'merge'
  | 'breakApart'
  | 'isPartOfMerge'
  | 'activate'
  | 'protect'
  | 'isBlank'
>;

export class RangeStandIn extends HostObject implements RangePart {
  readonly kind_ = 'Range';
  readonly area_: Area;
  readonly sheet_: SheetState;
  readonly #run: ScriptRun;

  constructor(run: ScriptRun, sheet: SheetState, area: Area) {
    super();
    this.#run = run;
    this.sheet_ = sheet;
    this.area_ = area;
  }

  get #book(): Book {
    return this.#run.book;
  }
  #self(): HostRange {
    return part<HostRange>(this);
  }

  getRow(): number {
    return this.area_.row;
  }
  getColumn(): number {
    return this.area_.column;
  }
  getNumRows(): number {
    return this.area_.rows;
  }
  getNumColumns(): number {
    return this.area_.columns;
  }
  getHeight(): number {
    return this.area_.rows;
  }
  getWidth(): number {
    return this.area_.columns;
  }
  getLastRow(): number {
    return this.area_.row + this.area_.rows - 1;
  }
  getLastColumn(): number {
    return this.area_.column + this.area_.columns - 1;
  }
  getSheet(): HostSheet {
    return part<HostSheet>(new SheetStandIn(this.#run, this.sheet_));
  }
  getA1Notation(): string {
    return areaName(this.area_);
  }
  offset(
    rowOffset: number,
    columnOffset: number,
    numRows = this.area_.rows,
    numColumns = this.area_.columns,
  ): HostRange {
    const area = {
      row: this.area_.row + aNumber(rowOffset, 'Range.offset'),
      column: this.area_.column + aNumber(columnOffset, 'Range.offset'),
      rows: aNumber(numRows, 'Range.offset'),
      columns: aNumber(numColumns, 'Range.offset'),
    };
    return part<HostRange>(new RangeStandIn(this.#run, this.sheet_, insideSheet(this.sheet_, area)));
  }
  getCell(row: number, column: number): HostRange {
    if (row < 1 || row > this.area_.rows || column < 1 || column > this.area_.columns) {
      throw new HostException('Cell reference out of range.');
    }
    return this.offset(row - 1, column - 1, 1, 1);
  }

  // Reading

  #grid<T>(read: (row: number, column: number) => T): T[][] {
    const { row, column, rows, columns } = this.area_;
    const grid: T[][] = [];
    for (let down = 0; down < rows; down += 1) {
      const line: T[] = [];
      for (let across = 0; across < columns; across += 1) line.push(read(row + down, column + across));
      grid.push(line);
    }
    return grid;
  }
  #first<T>(read: (row: number, column: number) => T): T {
    return read(this.area_.row, this.area_.column);
  }
  readonly #value = (row: number, column: number): unknown => {
    const value: Value = this.#book.value(this.sheet_, row, column);
    if (value === loading) return 'Loading...';
    if (value instanceof HostError) return value.code;
    if (typeof value === 'number' && this.#book.isDate(this.sheet_, row, column)) return dateOf(value);
    return value;
  };
  readonly #display = (row: number, column: number): string => this.#book.display(this.sheet_, row, column);
  readonly #formula = (row: number, column: number): string => {
    const { content } = this.#book.cell(this.sheet_, row, column);
    if (content?.kind !== 'formula') return '';
    const text = localFormula(content.formula, this.#book.locale.decimalComma);
    return this.#run.troubles.quotesDropped ? text.replace(/'([A-Za-z]\w*)'!/g, '$1!') : text;
  };
  readonly #state = (row: number, column: number): CellState => this.#book.cell(this.sheet_, row, column);

  getValue(): unknown {
    return this.#first(this.#value);
  }
  getValues(): unknown[][] {
    return this.#grid(this.#value);
  }
  getDisplayValue(): string {
    return this.#first(this.#display);
  }
  getDisplayValues(): string[][] {
    return this.#grid(this.#display);
  }
  getFormula(): string {
    return this.#first(this.#formula);
  }
  getFormulas(): string[][] {
    return this.#grid(this.#formula);
  }
  getNote(): string {
    return this.#first((row, column) => this.#state(row, column).note ?? '');
  }
  getNotes(): string[][] {
    return this.#grid((row, column) => this.#state(row, column).note ?? '');
  }
  getNumberFormat(): string {
    return this.#first((row, column) => this.#hostFormat(row, column));
  }
  getNumberFormats(): string[][] {
    return this.#grid((row, column) => this.#hostFormat(row, column));
  }
  #hostFormat(row: number, column: number): string {
    this.#book.settle();
    const format = this.#book.numberFormat(this.sheet_, row, column);
    return format === 'General' ? '0.###############' : format;
  }
  getBackground(): string {
    return this.#first((row, column) => this.#state(row, column).format?.background ?? '#ffffff');
  }
  getBackgrounds(): string[][] {
    return this.#grid((row, column) => this.#state(row, column).format?.background ?? '#ffffff');
  }
  isBlank(): boolean {
    return this.#grid((row, column) => {
      const filled = this.sheet_.spilled.get(cellKey(row, column));
      return !this.#state(row, column).content && (filled === undefined || filled.value === '');
    }).every((row) => row.every(Boolean));
  }
  getDataValidation(): HostValidation | null {
    return this.#first(this.#validation);
  }
  getDataValidations(): (HostValidation | null)[][] {
    return this.#grid(this.#validation);
  }
  readonly #validation = (row: number, column: number): HostValidation | null => {
    const { validation } = this.#state(row, column);
    return validation ? part<HostValidation>(new ValidationStandIn(validation)) : null;
  };

  // Writing

  #mayEdit(): void {
    refuseLocked(this.sheet_, this.area_, this.#run.execution.seat);
  }

  /** A block of values must have the shape of its range. */
  #block<T>(values: unknown, method: string): T[][] {
    if (!Array.isArray(values) || !values.every(Array.isArray)) {
      throw new HostException(`The parameters don't match the method signature for SpreadsheetApp.Range.${method}.`);
    }
    const { rows, columns } = this.area_;
    if (values.length !== rows) {
      throw new HostException(
        `The number of rows in the data does not match the number of rows in the range. The data has ${values.length} but the range has ${rows}.`,
      );
    }
    const uneven = (values as unknown[][]).find((row) => row.length !== columns);
    if (uneven) {
      throw new HostException(
        `The number of columns in the data does not match the number of columns in the range. The data has ${uneven.length} but the range has ${columns}.`,
      );
    }
    return values as T[][];
  }

  #eachCell(change: (row: number, column: number, down: number, across: number) => void): HostRange {
    this.#mayEdit();
    const { held } = this.#run.execution;
    if (held) {
      held.push(() => this.#changeEach(change));
      return this.#self();
    }
    return this.#changeEach(change);
  }
  #changeEach(change: (row: number, column: number, down: number, across: number) => void): HostRange {
    const { row, column, rows, columns } = this.area_;
    for (let down = 0; down < rows; down += 1) {
      for (let across = 0; across < columns; across += 1) change(row + down, column + across, down, across);
    }
    return this.#self();
  }

  #write(row: number, column: number, value: unknown): void {
    const numberFormat = this.#state(row, column).format?.numberFormat;
    let content: Content | undefined;
    if (value === null || value === undefined || value === '') content = undefined;
    else if (typeof value === 'number') {
      if (!Number.isFinite(value)) throw new HostException(`Stand-in: ${value} is not a value for a cell.`);
      content = isPlainText(numberFormat) ? { kind: 'text', text: String(value) } : { kind: 'number', value };
    } else if (typeof value === 'boolean') {
      content = isPlainText(numberFormat)
        ? { kind: 'text', text: value ? 'TRUE' : 'FALSE' }
        : { kind: 'boolean', value };
    } else if (value instanceof Date) {
      content = { kind: 'number', value: serialOf(value) };
      if (numberFormat === undefined || numberFormat === 'General') {
        this.#format(row, column, { numberFormat: 'yyyy-mm-dd h:mm:ss' });
      }
    } else if (typeof value === 'string') {
      if (value.length > 50_000) {
        throw new HostException('Your input contains more than the maximum of 50000 characters in a single cell.');
      }
      const { locale } = this.#book;
      if (isPlainText(numberFormat) && value.startsWith('=') && !locale.plainTextKeepsApostrophe) {
        throw new HostException(
          `Stand-in: what the host makes of a text beginning with = in a plain-text cell is not known. Write it with an apostrophe before it, or give the cell another format first (${cellName(row, column)}).`,
        );
      }
      const reading = readTyped(value, { numberFormat, locale });
      content = reading.content;
      if (reading.numberFormat !== undefined) this.#format(row, column, { numberFormat: reading.numberFormat });
    } else {
      throw new HostException(
        "The parameters (Object) don't match the method signature for SpreadsheetApp.Range.setValue.",
      );
    }
    this.#book.setContent(this.sheet_, row, column, content);
  }

  #writeFormula(row: number, column: number, formula: unknown): void {
    if (formula === null || formula === '') {
      this.#book.setContent(this.sheet_, row, column, undefined);
      return;
    }
    const text = aText(formula, 'SpreadsheetApp.Range.setFormula');
    this.#write(row, column, text.startsWith('=') ? text : `=${text}`);
  }

  setValue(value: unknown): HostRange {
    return this.#eachCell((row, column) => this.#write(row, column, value));
  }
  setValues(values: unknown[][]): HostRange {
    const block = this.#block<unknown>(values, 'setValues');
    return this.#eachCell((row, column, down, across) => this.#write(row, column, block[down]?.[across]));
  }
  setFormula(formula: string): HostRange {
    return this.#eachCell((row, column) => this.#writeFormula(row, column, formula));
  }
  setFormulas(formulas: string[][]): HostRange {
    const block = this.#block<string>(formulas, 'setFormulas');
    return this.#eachCell((row, column, down, across) => this.#writeFormula(row, column, block[down]?.[across]));
  }

  #format(row: number, column: number, change: FormatChange): void {
    this.#book.reformat(this.sheet_, row, column, (before) => changedFormat(before, change));
  }
  #formatAll(format: FormatChange): HostRange {
    return this.#eachCell((row, column) => this.#format(row, column, format));
  }
  #formatBlock(values: unknown, method: string, format: (value: unknown) => FormatChange): HostRange {
    // A block says the same thing of most of its cells, so that each look is worked out once.
    const changes = new Map<unknown, FormatChange>();
    const block = this.#block<unknown>(values, method).map((row) =>
      row.map((value) => {
        const known = changes.get(value);
        if (known) return known;
        const change = format(value);
        changes.set(value, change);
        return change;
      }),
    );
    return this.#eachCell((row, column, down, across) => this.#format(row, column, block[down]?.[across] ?? {}));
  }

  setNote(note: string | null): HostRange {
    return this.#eachCell((row, column) => this.#note(row, column, note));
  }
  setNotes(notes: (string | null)[][]): HostRange {
    const block = this.#block<string | null>(notes, 'setNotes');
    return this.#eachCell((row, column, down, across) => this.#note(row, column, block[down]?.[across] ?? null));
  }
  clearNote(): HostRange {
    return this.setNote(null);
  }
  #note(row: number, column: number, note: string | null): void {
    const text = note === null || note === undefined ? '' : aText(note, 'SpreadsheetApp.Range.setNote');
    this.#book.decorate(this.sheet_, row, column, ({ note: _, ...rest }) => (text ? { ...rest, note: text } : rest));
  }
  setNumberFormat(numberFormat: string): HostRange {
    return this.#formatAll({ numberFormat: aText(numberFormat, 'SpreadsheetApp.Range.setNumberFormat') });
  }
  setNumberFormats(numberFormats: string[][]): HostRange {
    return this.#formatBlock(numberFormats, 'setNumberFormats', (numberFormat) => ({ numberFormat }));
  }
  setBackground(color: string | null): HostRange {
    return this.#formatAll({ background: colour(color) });
  }
  setBackgrounds(colors: (string | null)[][]): HostRange {
    return this.#formatBlock(colors, 'setBackgrounds', (color) => ({ background: colour(color) }));
  }
  setFontColor(color: string | null): HostRange {
    return this.#formatAll({ color: colour(color) });
  }
  setFontColors(colors: unknown[][]): HostRange {
    return this.#formatBlock(colors, 'setFontColors', (color) => ({ color: colour(color) }));
  }
  setFontWeight(fontWeight: 'bold' | 'normal' | null): HostRange {
    return this.#formatAll({ weight: oneOf(fontWeight, ['bold', 'normal'], 'setFontWeight') });
  }
  setFontWeights(fontWeights: ('bold' | 'normal' | null)[][]): HostRange {
    return this.#formatBlock(fontWeights, 'setFontWeights', (weight) => ({
      weight: oneOf(weight, ['bold', 'normal'], 'setFontWeights'),
    }));
  }
  setFontStyle(fontStyle: 'italic' | 'normal' | null): HostRange {
    return this.#formatAll({ style: oneOf(fontStyle, ['italic', 'normal'], 'setFontStyle') });
  }
  setFontStyles(fontStyles: ('italic' | 'normal' | null)[][]): HostRange {
    return this.#formatBlock(fontStyles, 'setFontStyles', (style) => ({
      style: oneOf(style, ['italic', 'normal'], 'setFontStyles'),
    }));
  }
  setFontLine(fontLine: 'underline' | 'line-through' | 'none' | null): HostRange {
    return this.#formatAll({ line: oneOf(fontLine, ['underline', 'line-through', 'none'], 'setFontLine') });
  }
  setFontSize(size: number): HostRange {
    return this.#formatAll({ size: aNumber(size, 'SpreadsheetApp.Range.setFontSize') });
  }
  setFontSizes(sizes: number[][]): HostRange {
    return this.#formatBlock(sizes, 'setFontSizes', (size) => ({
      size: aNumber(size, 'SpreadsheetApp.Range.setFontSizes'),
    }));
  }
  setFontFamily(fontFamily: string | null): HostRange {
    return this.#formatAll({ family: fontFamily });
  }
  setWrap(isWrapEnabled: boolean): HostRange {
    return this.#formatAll({ wrap: isWrapEnabled ? 'WRAP' : 'OVERFLOW' });
  }
  setWraps(isWrapEnabled: boolean[][]): HostRange {
    return this.#formatBlock(isWrapEnabled, 'setWraps', (wrap) => ({ wrap: wrap ? 'WRAP' : 'OVERFLOW' }));
  }
  setWrapStrategy(strategy: GoogleAppsScript.Spreadsheet.WrapStrategy): HostRange {
    return this.#formatAll({ wrap: constantValue(strategy, wrapStrategies, 'SpreadsheetApp.Range.setWrapStrategy') });
  }
  setWrapStrategies(strategies: GoogleAppsScript.Spreadsheet.WrapStrategy[][]): HostRange {
    return this.#formatBlock(strategies, 'setWrapStrategies', (strategy) => ({
      wrap: constantValue(strategy, wrapStrategies, 'SpreadsheetApp.Range.setWrapStrategies'),
    }));
  }
  setVerticalAlignment(alignment: 'top' | 'middle' | 'bottom' | null): HostRange {
    return this.#formatAll({ vertical: oneOf(alignment, ['top', 'middle', 'bottom'], 'setVerticalAlignment') });
  }
  setHorizontalAlignment(alignment: 'left' | 'center' | 'normal' | 'right' | null): HostRange {
    return this.#formatAll({ horizontal: horizontal(alignment) });
  }
  setHorizontalAlignments(alignments: ('left' | 'center' | 'normal' | 'right' | null)[][]): HostRange {
    return this.#formatBlock(alignments, 'setHorizontalAlignments', (alignment) => ({
      horizontal: horizontal(alignment),
    }));
  }
  setBorder(
    top: boolean | null,
    left: boolean | null,
    bottom: boolean | null,
    right: boolean | null,
    vertical: boolean | null,
    horizontalLines: boolean | null,
    color?: string | null,
    style?: GoogleAppsScript.Spreadsheet.BorderStyle | null,
  ): HostRange {
    const kind = style ? constantValue(style, borderStyles, 'SpreadsheetApp.Range.setBorder') : 'SOLID';
    const line = `${kind} ${colour(color ?? null) ?? '#000000'}`;
    const { rows, columns } = this.area_;
    return this.#eachCell((row, column, down, across) => {
      const now = new Map(
        (this.#state(row, column).format?.border ?? '').split('; ').flatMap((side): [string, string][] => {
          const [name = '', ...rest] = side.split(' ');
          return name ? [[name, rest.join(' ')]] : [];
        }),
      );
      const sides: [string, boolean | null][] = [
        ['top', down === 0 ? top : horizontalLines],
        ['left', across === 0 ? left : vertical],
        ['bottom', down === rows - 1 ? bottom : horizontalLines],
        ['right', across === columns - 1 ? right : vertical],
      ];
      for (const [side, on] of sides) {
        if (on === true) now.set(side, line);
        else if (on === false) now.delete(side);
      }
      const border = [...now].map(([side, look]) => `${side} ${look}`).join('; ');
      this.#format(row, column, { border: border || undefined });
    });
  }

  setDataValidation(rule: HostValidation | null): HostRange {
    return this.#eachCell((row, column) => this.#validate(row, column, rule));
  }
  setDataValidations(rules: (HostValidation | null)[][]): HostRange {
    const block = this.#block<HostValidation | null>(rules, 'setDataValidations');
    return this.#eachCell((row, column, down, across) => this.#validate(row, column, block[down]?.[across] ?? null));
  }
  clearDataValidations(): HostRange {
    return this.setDataValidation(null);
  }
  #validate(row: number, column: number, rule: HostValidation | null): void {
    const validation =
      rule === null ? undefined : own(rule, ValidationStandIn, 'SpreadsheetApp.Range.setDataValidation').validation_;
    this.#book.decorate(this.sheet_, row, column, ({ validation: _, ...rest }) =>
      validation ? { ...rest, validation } : rest,
    );
  }
  insertCheckboxes(): HostRange {
    return this.#eachCell((row, column) => {
      this.#book.decorate(this.sheet_, row, column, (cell) => ({
        ...cell,
        validation: { kind: 'checkbox', allowInvalid: false },
      }));
      if (!this.#state(row, column).content) {
        this.#book.setContent(this.sheet_, row, column, { kind: 'boolean', value: false });
      }
    });
  }

  #present(): [number, CellState][] {
    return [...this.sheet_.cells].filter(([key]) => covers(this.area_, rowOf(key), columnOf(key)));
  }
  clearContent(): HostRange {
    this.#mayEdit();
    for (const [key] of this.#present()) this.#book.setContent(this.sheet_, rowOf(key), columnOf(key), undefined);
    return this.#self();
  }
  clearFormat(): HostRange {
    this.#mayEdit();
    for (const [key] of this.#present()) {
      this.#book.decorate(this.sheet_, rowOf(key), columnOf(key), ({ format: _, ...rest }) => rest);
    }
    return this.#self();
  }
  clear(options?: Partial<Parameters<HostRange['clear']>[0]>): HostRange {
    const only = options && Object.values(options).some(Boolean) ? options : undefined;
    if (!only || only.contentsOnly) this.clearContent();
    if (!only || only.formatOnly) this.clearFormat();
    if (only?.commentsOnly) this.clearNote();
    if (only?.validationsOnly) this.clearDataValidations();
    return this.#self();
  }

  merge(): HostRange {
    this.#mayEdit();
    const { row, column, rows, columns } = this.area_;
    for (const merge of this.sheet_.merges) {
      if (!overlaps(merge, this.area_)) continue;
      const inside =
        covers(this.area_, merge.row, merge.column) &&
        covers(this.area_, merge.row + merge.rows - 1, merge.column + merge.columns - 1);
      if (!inside) throw new HostException('You must select all cells in a merged range to merge or unmerge them.');
    }
    for (const [key] of this.#present()) {
      if (key !== cellKey(row, column)) this.#book.setContent(this.sheet_, rowOf(key), columnOf(key), undefined);
    }
    this.sheet_.merges = this.sheet_.merges.filter((merge) => !overlaps(merge, this.area_));
    if (rows > 1 || columns > 1) this.sheet_.merges.push(this.area_);
    this.#book.restructure(this.sheet_);
    return this.#self();
  }
  breakApart(): HostRange {
    this.#mayEdit();
    this.sheet_.merges = this.sheet_.merges.filter((merge) => !overlaps(merge, this.area_));
    this.#book.restructure(this.sheet_);
    return this.#self();
  }
  isPartOfMerge(): boolean {
    return this.sheet_.merges.some((merge) => overlaps(merge, this.area_));
  }
  activate(): HostRange {
    Object.assign(this.#run.selections[this.#run.execution.seat], { sheet: this.sheet_.id, ...this.area_ });
    this.#run.activated(this.#run.execution.seat);
    return this.#self();
  }
  protect(): HostProtection {
    return part<HostProtection>(
      new ProtectionStandIn(this.#run, this.sheet_, protectRange(this.#run, this.sheet_, this.area_)),
    );
  }
}

/** Refuses an area that reaches out of its sheet. */
export function insideSheet(sheet: SheetState, area: Area): Area {
  const { row, column, rows, columns } = area;
  if (![row, column, rows, columns].every(Number.isInteger)) {
    throw new HostException(
      "The parameters (number) don't match the method signature for SpreadsheetApp.Sheet.getRange.",
    );
  }
  if (row < 1) throw new HostException('The starting row of the range is too small.');
  if (column < 1) throw new HostException('The starting column of the range is too small.');
  if (rows < 1) throw new HostException('The number of rows in the range must be at least 1.');
  if (columns < 1) throw new HostException('The number of columns in the range must be at least 1.');
  if (row + rows - 1 > sheet.rows || column + columns - 1 > sheet.columns) {
    throw new HostException('The coordinates of the range are outside the dimensions of the sheet.');
  }
  return area;
}

function oneOf(value: unknown, allowed: readonly string[], method: string): string | undefined {
  if (value === null) return undefined;
  if (typeof value === 'string' && allowed.includes(value)) return value;
  throw new HostException(`Invalid argument for SpreadsheetApp.Range.${method}: ${String(value)}`);
}

function horizontal(value: unknown): string | undefined {
  const read = oneOf(value, ['left', 'center', 'right', 'normal'], 'setHorizontalAlignment');
  return read === 'normal' ? undefined : read;
}
