import type { CellValue } from '../measurement/cellValue.ts';
import { countedEntry } from '../workbook/countedEntry.ts';
import { countedColumn } from '../workbook/layout.ts';
import { looks, plainLook, stateLooks, tabColors } from '../workbook/looks.ts';
import { areaName } from '../workbook/reference.ts';
import { takesComma } from '../workbook/takesComma.ts';
import type { Choice, SheetPlan } from '../workbook/workbook.ts';
import { carryEntries } from './carryEntries.ts';
import { clearWritten } from './clearWritten.ts';
import { cellsRead, type FileInRun, type SheetInRun } from './fileInRun.ts';
import { filledWith } from './filledWith.ts';
import { separatorIn } from './separatorIn.ts';
import {
  boxAround,
  choiceOf,
  isStateRule,
  type Sheet,
  settle,
  sheetProtections,
  stateRuleOf,
  type Validation,
  wrapOf,
} from './spreadsheet.ts';
import { valuesOf } from './valuesOf.ts';
import { hostWords } from './words.ts';
import { writeFormats } from './writeFormats.ts';
import { hasFormula, writePlanned } from './writePlanned.ts';
import { writeTexts } from './writeTexts.ts';

/** Entries for a sheet that is made: a column of texts, and what the trigger would have noted beside them. */
export interface FirstEntries {
  readonly row: number;
  readonly column: number;
  readonly texts: readonly string[];
  /** Left out where the trigger counts nothing. */
  readonly counts?: {
    readonly column: number;
    /** Tries and the time of the last one in milliseconds since 1970; null where there is no entry. */
    readonly rows: readonly (readonly [tries: number, time: number] | null)[];
  };
}

/**
 * Writes everything but what people type: formats first, words, looks, what people had typed elsewhere, checks last.
 * `stands` says what is there: `empty` where this run made the sheet, `begun` where an earlier run stopped in it,
 * `shorter` where it was built and only rows below are new.
 */
export function writeSheet({
  file,
  target,
  plan,
  stands,
  carried,
  firstEntries,
}: {
  file: FileInRun;
  target: SheetInRun;
  plan: SheetPlan;
  stands: 'empty' | 'begun' | 'shorter';
  carried?: { readonly from: readonly (readonly CellValue[])[]; readonly wanted: SheetPlan };
  firstEntries: readonly FirstEntries[];
}): void {
  const { sheet } = target;
  makeRoom(sheet, { rows: plan.rowCount, columns: plan.columnCount });
  const present = stands === 'empty' ? undefined : read(target, plan);
  target.cells = undefined;
  const firstRow = stands === 'shorter' ? firstNewRow(plan, present?.values ?? []) : 1;
  const { rowCount, columnCount } = plan;
  writeFormats(sheet, plan, { row: firstRow, column: 1, rows: rowCount - firstRow + 1, columns: columnCount });
  const separator = (present && separatorIn(present.formulas)) ?? argumentSeparator(file, sheet, plan);
  if (present !== undefined) clearWritten(sheet, plan, present);
  writePlanned({ sheet, plan, blocks: plan.blocks, present, separator, formattedFrom: firstRow });
  writeLooks(sheet, plan, firstRow);
  if (stands !== 'shorter') writeFrame(sheet, plan, stands === 'empty');
  writeHeights(sheet, plan, firstRow);
  writeChoices(
    sheet,
    plan.choices.filter(({ area }) => area.row >= firstRow),
  );
  if (stands === 'shorter') renewChoices(sheet, plan, firstRow);
  writeStateRules(sheet, plan, stands === 'empty');
  if (carried !== undefined) carryEntries({ sheet, plan: carried.wanted, from: carried.from });
  writeFirstEntries({ sheet, firstEntries });
  invite(sheet, plan);
  writePlanned({ sheet, plan, blocks: plan.checks, present, separator, formattedFrom: firstRow });
  protect(sheet, plan, stands);
}

/** Writes only what differs from what is there; false where nothing does. */
export function rewriteSheet(target: SheetInRun, plan: SheetPlan): boolean {
  const { sheet } = target;
  const { rowCount: rows, columnCount: columns } = plan;
  const cells = cellsRead(target);
  // What stands in the last row and column tells that they are there.
  const isWider = (cells.length < rows || (cells[0]?.length ?? 0) < columns) && makeRoom(sheet, { rows, columns });
  // Columns that have come since: those behind hidden ones are for the script as well.
  if (isWider) hideColumns(sheet, plan);
  const present = read(target, plan);
  const separator = separatorIn(present.formulas) ?? ',';
  clearWritten(sheet, plan, present);
  const wrote = writePlanned({ sheet, plan, blocks: [...plan.blocks, ...plan.checks], present, separator });
  if (wrote) target.cells = undefined;
  renewChoices(sheet, plan);
  return wrote;
}

const read = (target: SheetInRun, plan: SheetPlan) => ({
  values: cellsRead(target),
  formulas: target.sheet.getRange(1, 1, plan.rowCount, plan.columnCount).getFormulas(),
});

/** The row below the last one that bears a name of ours. */
function firstNewRow({ identity }: SheetPlan, cells: readonly (readonly CellValue[])[]): number {
  let row = cells.length;
  while (row > 0 && identity.columns.every((column) => (cells[row - 1]?.[column - 1] ?? '') === '')) row -= 1;
  return row + 1;
}

/**
 * Lists above a row that offer something else by now, such as the classes in the Poll; what the teacher made of other
 * cells stays. Of lists that are planned alike the last is written last: where that one is right, so are the others.
 */
function renewChoices(sheet: Sheet, plan: SheetPlan, before = plan.rowCount + 1): void {
  const alike = new Map<string, Choice[]>();
  for (const choice of plan.choices) {
    if (choice.area.row >= before) continue;
    const name = JSON.stringify([choice.options, choice.help]);
    alike.set(name, [...(alike.get(name) ?? []), choice]);
  }
  if (alike.size === 0) return;
  const present = sheet.getRange(1, 1, plan.rowCount, plan.columnCount).getDataValidations();
  const isOther = ({ area, options }: Choice): boolean => {
    const offered: unknown = present[area.row - 1]?.[area.column - 1]?.getCriteriaValues()[0];
    return Array.isArray(offered) && JSON.stringify(offered) !== JSON.stringify(options);
  };
  for (const choices of alike.values()) {
    const last = choices[choices.length - 1];
    if (last === undefined || !isOther(last)) continue;
    for (const { area, options, help } of choices.filter(isOther)) {
      sheet.getRange(area.row, area.column, area.rows, area.columns).setDataValidation(choiceOf(options, help));
    }
  }
}

/** Where nobody has written yet, a word says what the cell is for. */
function invite(sheet: Sheet, { invitation }: SheetPlan): void {
  if (invitation === undefined) return;
  const cells = valuesOf(sheet);
  const empty = invitation.places.filter(({ row, column }) => (cells[row - 1]?.[column - 1] ?? '') === '');
  if (empty.length > 0) sheet.getRangeList(empty.map(areaName)).setValue(invitation.text);
}

function hideColumns(sheet: Sheet, { hiddenColumns }: SheetPlan): void {
  if (hiddenColumns !== undefined) sheet.hideColumns(hiddenColumns.column, hiddenColumns.count);
}

/** A sheet is at least so large; nothing that stands there moves. True where it has columns more by now. */
export function makeRoom(sheet: Sheet, { rows, columns }: { rows: number; columns: number }): boolean {
  const presentRows = sheet.getMaxRows();
  if (presentRows < rows) sheet.insertRowsAfter(presentRows, rows - presentRows);
  const presentColumns = sheet.getMaxColumns();
  if (presentColumns < columns) sheet.insertColumnsAfter(presentColumns, columns - presentColumns);
  return presentColumns < columns;
}

/**
 * Which separator a formula set by a script takes here. Most English locales take the comma; elsewhere a cell that is ours
 * and not yet written tells, since the host does not document it.
 */
function argumentSeparator(file: FileInRun, sheet: Sheet, plan: SheetPlan): ',' | ';' {
  if (file.separator !== undefined) return file.separator;
  if (takesComma(file.locale()) || ![...plan.blocks, ...plan.checks].some(hasFormula)) return ',';
  const cell = sheet.getRange(1, 1);
  cell.setNumberFormat('General');
  cell.setValue('=SUM(1,2)');
  settle();
  const reads = cell.getValue() === 3;
  cell.setValue('');
  cell.setNumberFormat('@');
  file.separator = reads ? ',' : ';';
  return file.separator;
}

/** Colours, sizes and wrapping from a row on: rows above stay as the teacher has made them. */
function writeLooks(sheet: Sheet, plan: SheetPlan, firstRow: number): void {
  const { rowCount: rows, columnCount: columns } = plan;
  const each = filledWith({ rows, columns, plain: plainLook, areas: plan.looks, of: ({ look }) => looks[look] }).slice(
    firstRow - 1,
  );
  if (each.length === 0) return;
  const range = sheet.getRange(firstRow, 1, each.length, columns);
  const as = <T>(part: (look: typeof plainLook) => T): T[][] => each.map((row) => row.map(part));
  range.setBackgrounds(as(({ background }) => background));
  range.setFontColors(as(({ color }) => color));
  range.setFontWeights(as(({ bold }) => (bold ? 'bold' : 'normal')));
  range.setFontSizes(as(({ size }) => size));
  range.setWrapStrategies(as(wrapOf));
  const boxes = new Map<string, string[]>();
  for (const area of plan.looks) {
    const { border } = looks[area.look];
    const from = Math.max(area.row, firstRow);
    const rows = area.row + area.rows - from;
    if (border !== undefined && rows > 0 && area.columns > 0) {
      boxes.set(border, [...(boxes.get(border) ?? []), areaName({ ...area, row: from, rows })]);
    }
  }
  for (const [colour, areas] of boxes) boxAround(sheet.getRangeList(areas), colour);
  range.setHorizontalAlignments(as(({ align }) => align));
  range.setVerticalAlignment('top');
}

/** Widths, hidden columns, frozen lines and the colour of the tab. A sheet that was just put in has nothing frozen. */
function writeFrame(sheet: Sheet, plan: SheetPlan, isNew: boolean): void {
  for (const { from, count, size } of plan.columnWidths) sheet.setColumnWidths(from, count, size);
  hideColumns(sheet, plan);
  if (!isNew || plan.frozenRows > 0) sheet.setFrozenRows(plan.frozenRows);
  if (!isNew || plan.frozenColumns > 0) sheet.setFrozenColumns(plan.frozenColumns);
  sheet.setTabColor(tabColors[plan.role.kind]);
}

/** One call for each run of rows of one height, from a row on: those above stay as the teacher has made them. */
function writeHeights(sheet: Sheet, { rowHeights = [] }: SheetPlan, firstRow: number): void {
  for (const { from, count, size } of rowHeights) {
    const first = Math.max(from, firstRow);
    if (first < from + count) sheet.setRowHeightsForced(first, from + count - first, size);
  }
}

/** In one call for all lists: cells between them get none. */
function writeChoices(sheet: Sheet, choices: readonly Choice[]): void {
  if (choices.length === 0) return;
  const known = new Map<string, Validation>();
  const ruleOf = ({ options, help }: Choice): Validation => {
    const name = JSON.stringify([options, help]);
    const rule = known.get(name) ?? choiceOf(options, help);
    known.set(name, rule);
    return rule;
  };
  const areas = choices.map((choice) => ({ ...choice.area, choice }));
  const top = Math.min(...areas.map(({ row }) => row));
  const left = Math.min(...areas.map(({ column }) => column));
  const rules = filledWith<Validation | null, (typeof areas)[number]>({
    rows: Math.max(...areas.map(({ row, rows }) => row + rows - 1)),
    columns: Math.max(...areas.map(({ column, columns }) => column + columns - 1)),
    plain: null,
    areas,
    of: ({ choice }) => ruleOf(choice),
  })
    .slice(top - 1)
    .map((row) => row.slice(left - 1));
  sheet.getRange(top, left, rules.length, rules[0]?.length ?? 1).setDataValidations(rules);
}

/** Ours anew, whatever else the teacher has set stays. */
function writeStateRules(sheet: Sheet, plan: SheetPlan, isNew: boolean): void {
  const ours = plan.states.filter(({ areas }) => areas.length > 0);
  if (ours.length === 0) return;
  const others = (isNew ? [] : sheet.getConditionalFormatRules()).filter(
    (rule) => !ours.some(({ startsWith }) => isStateRule(rule, startsWith)),
  );
  const rules = ours.map(({ areas, startsWith, state }) =>
    stateRuleOf({
      startsWith,
      ...stateLooks[state],
      ranges: sheet.getRangeList(areas.map(areaName)).getRanges(),
    }),
  );
  sheet.setConditionalFormatRules([...others, ...rules]);
}

/** Nothing is written where anybody has typed something else; an interrupted build goes on with what is still blank. */
function writeFirstEntries({ sheet, firstEntries }: { sheet: Sheet; firstEntries: readonly FirstEntries[] }): void {
  if (firstEntries.length === 0) return;
  const cells = valuesOf(sheet);
  const at = (row: number, column: number) => cells[row - 1]?.[column - 1] ?? '';
  const blank = firstEntries.filter(({ row, column, texts }) =>
    texts.every((_, down) => at(row + down, column) === ''),
  );
  const others = firstEntries.some(
    (run) =>
      !blank.includes(run) &&
      run.texts.some((text, down) => ![text, ''].includes(String(at(run.row + down, run.column)))),
  );
  if (others) return;
  for (const { row, column, texts, counts } of blank) {
    writeTexts(
      sheet.getRange(row, column, texts.length, 1),
      texts.map((text) => [text]),
    );
    if (counts === undefined) continue;
    sheet
      .getRange(row, counts.column, counts.rows.length, 2)
      .setValues(counts.rows.map((noted) => (noted === null ? ['', ''] : [noted[0], new Date(noted[1])])));
    sheet
      .getRange(row, countedColumn, texts.length, 1)
      .setValues(texts.map((text) => [text === '' ? '' : countedEntry(text)]));
  }
}

/**
 * One warning-only protection for the sheet, found again by its description; a protection of the teacher's stays. One
 * without words on a sheet that is being made is ours, from a build that stopped before it was described.
 */
function protect(sheet: Sheet, plan: SheetPlan, stands: 'empty' | 'begun' | 'shorter'): void {
  const present = stands === 'empty' ? undefined : sheetProtections(sheet)[0];
  const description = present?.getDescription() ?? '';
  const isOurs = description === hostWords.protection || (stands === 'begun' && description === '');
  if (present !== undefined && !isOurs) return;
  const protection = present ?? sheet.protect();
  // One that was there already may have been made stricter.
  if (stands !== 'shorter' || present === undefined) {
    protection.setDescription(hostWords.protection);
    protection.setWarningOnly(true);
  }
  const open = [...plan.writable, ...plan.unprotected];
  if (open.length > 0) protection.setUnprotectedRanges(sheet.getRangeList(open.map(areaName)).getRanges());
}
