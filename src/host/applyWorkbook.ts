import type { CellValue } from '../measurement/cellValue.ts';
import { carriedEntries } from '../workbook/carriedEntries.ts';
import { withSeparator } from '../workbook/formula.ts';
import { countedColumn, layoutVersion } from '../workbook/layout.ts';
import { layoutFits } from '../workbook/layoutFits.ts';
import { looks, plainLook, stateLooks, tabColors } from '../workbook/looks.ts';
import { areaName } from '../workbook/reference.ts';
import { freeName } from '../workbook/sheetNames.ts';
import { teamsAlone } from '../workbook/teamsAlone.ts';
import type { Block, CellContent, Choice, SheetPlan, SheetRole } from '../workbook/workbook.ts';
import { countedEntry } from './countedEntry.ts';
import { moveBehindAll } from './moveBehindAll.ts';
import { type OwnSheet, ownSheets, type SheetTag, sheetInUse, sheetLeaving, tagOf, writeTag } from './ownSheets.ts';
import { sheetById } from './sheetById.ts';
import {
  choiceOf,
  isStateRule,
  type Sheet,
  type Spreadsheet,
  settle,
  sheetProtections,
  stateRuleOf,
} from './spreadsheet.ts';
import { hostWords } from './words.ts';
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

export interface ApplyRequest {
  readonly spreadsheet: Spreadsheet;
  /** Its name is the one wanted for a sheet that has to be made. */
  readonly plan: SheetPlan;
  /** Dated name for the old sheet, where it has to be replaced. */
  readonly keptName: string;
  /** True: the sheet that is there is kept as it is, even if its layout would fit. */
  readonly replace?: boolean;
  /** Typed once into a sheet that is new and holds no other entries; for the sample only. */
  readonly firstEntries?: readonly FirstEntries[];
}

/** Which sheet stands for the plan now. */
export interface Applied {
  readonly sheetId: number;
  readonly name: string;
  /** True where this run made the sheet: it is then in view. */
  readonly made: boolean;
  /** Number of the old sheet that was replaced. */
  readonly keptId?: number;
}

/**
 * Brings one sheet to its plan, and may be run again after it stopped at any point: the same request finishes it. Where
 * the layout that is there fits, only planned cells are written; where it does not, the old sheet is kept under a dated
 * name and a new one takes what people had typed. Cells that people write in are never written otherwise and never
 * cleared.
 */
export function applySheet({ spreadsheet, plan, keptName, replace = false, firstEntries = [] }: ApplyRequest): Applied {
  const role = plan.role;
  let own = ownSheets(spreadsheet);
  let old = sheetLeaving(own, role);
  const present = sheetInUse(own, role);
  if (present !== undefined && old === undefined) {
    const fit = layoutFits(plan, valuesOf(present.sheet));
    const unfinished = present.tag.state === 'building';
    if (fit === 'other' || isOfAnother(present.tag, plan) || (replace && !unfinished)) {
      old = leave({ spreadsheet, old: present, keptName });
      own = ownSheets(spreadsheet);
    } else if (fit === 'same' && !unfinished) {
      writeTag(present.sheet, present.tag);
      rewrite(present.sheet, plan);
      return applied(present.sheet, false);
    }
  } else if (old !== undefined) {
    old = leave({ spreadsheet, old, keptName: old.tag.keptName ?? keptName });
    // A build may have stopped after the new sheet stood and before the old one was put behind the others.
    if (present?.tag.state === 'built') {
      keep(spreadsheet, old);
      return applySheet({ spreadsheet, plan, keptName, replace, firstEntries });
    }
  }
  const found = sheetInUse(own, role);
  const isNew = found?.tag.state !== 'built';
  const { sheet, tag, made } =
    found === undefined ? newSheet({ spreadsheet, own, plan, old }) : { ...found, made: false };
  writeTag(sheet, { ...tag, state: 'building' });
  writeWhole({ spreadsheet, sheet, plan, tag, isNew, firstEntries: isNew ? firstEntries : [] });
  // From here on the sheet stands by itself: an entry that a team clears must not come back from the old sheet.
  const { from: _, ...done } = tag;
  writeTag(sheet, { ...done, ...activityOf(plan), layout: layoutVersion, state: 'built' });
  if (old === undefined) return applied(sheet, made);
  keep(spreadsheet, old);
  return { ...applied(sheet, made), keptId: old.sheet.getSheetId() };
}

const applied = (sheet: Sheet, made: boolean): Applied => ({
  sheetId: sheet.getSheetId(),
  name: sheet.getName(),
  made,
});

const activityOf = (of: { readonly activity?: string } | undefined) =>
  of?.activity === undefined ? {} : { activity: of.activity };

/** Whether a sheet was built for another activity than it is wanted for. */
const isOfAnother = (tag: SheetTag | undefined, { activity }: SheetPlan): boolean =>
  tag?.activity !== undefined && activity !== undefined && tag.activity !== activity;

/** Keeps a sheet whose class is no longer in the plan, under a dated name. A sheet that is not ours stays as it is. */
export function putAside({
  spreadsheet,
  sheetId,
  keptName,
}: {
  readonly spreadsheet: Spreadsheet;
  readonly sheetId: number;
  readonly keptName: string;
}): void {
  const present = ownSheets(spreadsheet).find(({ sheet }) => sheet.getSheetId() === sheetId);
  if (present === undefined || present.tag.state === 'kept') return;
  const name = present.tag.keptName ?? keptName;
  keep(spreadsheet, leave({ spreadsheet, old: present, keptName: name }));
}

/** Every cell in use, from A1 on. */
export const valuesOf = (sheet: Sheet): CellValue[][] => sheet.getDataRange().getValues();

/** Marks a sheet as leaving before its name changes, so that whoever goes on after a stop finds it by its tag. */
function leave({
  spreadsheet,
  old: { sheet, tag },
  keptName,
}: {
  spreadsheet: Spreadsheet;
  old: OwnSheet;
  keptName: string;
}): OwnSheet {
  const others = spreadsheet.getSheets().filter((other) => other.getSheetId() !== sheet.getSheetId());
  const name = freeName(
    keptName,
    others.map((other) => other.getName()),
  );
  const { from: _, ...rest } = tag;
  const leaving: SheetTag = { ...rest, state: 'leaving', keptName: name, name: tag.name ?? sheet.getName() };
  writeTag(sheet, leaving);
  if (sheet.getName() !== name) sheet.setName(name);
  sheet.setTabColor(tabColors.kept);
  return { sheet, tag: leaving };
}

/** The old sheet leaves its place once the new one has taken it: until then it says where that is. */
function keep(spreadsheet: Spreadsheet, { sheet, tag }: OwnSheet): void {
  moveBehindAll(spreadsheet, sheet);
  const { keptName: _, name: __, ...rest } = tag;
  writeTag(sheet, { ...rest, state: 'kept' });
}

/** The sheet to write into: one that a stopped run left untagged and empty, or a new one. */
function newSheet({
  spreadsheet,
  own,
  plan,
  old,
}: {
  spreadsheet: Spreadsheet;
  own: readonly OwnSheet[];
  plan: SheetPlan;
  old: OwnSheet | undefined;
}): { readonly sheet: Sheet; readonly tag: SheetTag; readonly made: boolean } {
  const { role } = plan;
  const wanted = old?.tag.name ?? plan.name;
  const orphan = spreadsheet.getSheetByName(wanted);
  const isOrphan =
    orphan !== null &&
    !own.some(({ sheet }) => sheet.getSheetId() === orphan.getSheetId()) &&
    orphan.getLastRow() === 0;
  let sheet = isOrphan ? orphan : undefined;
  if (sheet === undefined) {
    const taken = spreadsheet.getSheets().map((other) => other.getName());
    sheet = spreadsheet.insertSheet(freeName(wanted, taken), placeFor({ spreadsheet, own, role, old }));
  }
  const tag: SheetTag = {
    kind: role.kind,
    ...(role.className === undefined ? {} : { className: role.className }),
    ...activityOf(plan),
    layout: layoutVersion,
    state: 'building',
    ...(old === undefined ? {} : { from: old.sheet.getSheetId() }),
  };
  writeTag(sheet, tag);
  return { sheet, tag, made: !isOrphan };
}

/**
 * Tabs stand in the order Plan, classes, Progress, Help; a new sheet in place of an old one takes its place.
 * Kept sheets stay behind all others.
 */
function placeFor({
  spreadsheet,
  own,
  role,
  old,
}: {
  spreadsheet: Spreadsheet;
  own: readonly OwnSheet[];
  role: SheetRole;
  old: OwnSheet | undefined;
}): number {
  if (old !== undefined) return old.sheet.getIndex() - 1;
  const behind = own.find(
    ({ tag }) =>
      tag.state !== 'kept' &&
      ((role.kind === 'plan' && tag.kind !== 'plan') ||
        (role.kind === 'class' && (tag.kind === 'progress' || tag.kind === 'help')) ||
        (role.kind === 'progress' && tag.kind === 'help') ||
        (role.kind === 'poll' && (tag.kind === 'record' || tag.kind === 'help'))),
  );
  if (behind !== undefined) return behind.sheet.getIndex() - 1;
  const sheets = spreadsheet.getSheets();
  const kept = own.filter(({ tag }) => tag.state === 'kept').map(({ sheet }) => sheet.getSheetId());
  let place = sheets.length;
  while (place > 0 && kept.includes(sheets[place - 1]?.getSheetId() ?? Number.NaN)) place -= 1;
  return place;
}

/** Writes everything but what people type: formats first, words, looks, what people had typed elsewhere, checks last. */
function writeWhole({
  spreadsheet,
  sheet,
  plan,
  tag,
  isNew,
  firstEntries,
}: {
  spreadsheet: Spreadsheet;
  sheet: Sheet;
  plan: SheetPlan;
  tag: SheetTag;
  isNew: boolean;
  firstEntries: readonly FirstEntries[];
}): void {
  const { rowCount: rows, columnCount: columns } = plan;
  makeRoom(sheet, { rows, columns });
  const whole = sheet.getRange(1, 1, rows, columns);
  whole.setNumberFormats(formatsOf(plan));
  const separator = argumentSeparator(spreadsheet, sheet, plan);
  for (const block of plan.blocks) writeBlock({ sheet, block, separator });
  writeLooks(sheet, plan);
  writeChoices(sheet, plan);
  writeStateRules(sheet, plan);
  if (tag.from !== undefined) carryEntries({ spreadsheet, sheet, plan, from: tag.from });
  writeFirstEntries({ sheet, firstEntries });
  invite(sheet, plan);
  for (const block of plan.checks) writeBlock({ sheet, block, separator });
  protect(sheet, plan, isNew);
}

/** Writes only the blocks that differ from what is there. */
function rewrite(sheet: Sheet, plan: SheetPlan): void {
  const range = sheet.getRange(1, 1, plan.rowCount, plan.columnCount);
  const values = range.getValues();
  const formulas = range.getFormulas();
  let separator: ',' | ';' = ',';
  const usesSemicolons = formulas.some((row) =>
    row.some((formula) => /;/.test(formula.replace(/"[^"]*"|'[^']*'/g, ''))),
  );
  if (usesSemicolons) separator = ';';
  const sheetId = sheet.getSheetId();
  const stands = ({ row, column, cells }: Block): boolean =>
    cells.every((contents, down) =>
      contents.every((content, right) => {
        const value = values[row - 1 + down]?.[column - 1 + right];
        const formula = formulas[row - 1 + down]?.[column - 1 + right] ?? '';
        switch (content.kind) {
          case 'formula':
            return formula === withSeparator(content.formula, separator);
          case 'text':
            return formula === '' && value === content.text;
          case 'number':
            return formula === '' && value === content.value;
          case 'sheet id':
            return formula === '' && value === sheetId;
          default:
            return formula === '' && value === '';
        }
      }),
    );
  for (const block of [...plan.blocks, ...plan.checks]) {
    if (stands(block)) continue;
    writeFormats({ sheet, plan, block });
    writeBlock({ sheet, block, separator });
  }
  renewChoices(sheet, plan);
}

/** The formats of a block's cells: a formula in a cell that was text until now would stay its own words. */
function writeFormats({ sheet, plan, block }: { sheet: Sheet; plan: SheetPlan; block: Block }): void {
  const { row, column, cells } = block;
  const width = cells[0]?.length ?? 0;
  if (width === 0 || !cells.some((line) => line.some(({ kind }) => kind === 'formula'))) return;
  const formats = formatsOf(plan);
  sheet
    .getRange(row, column, cells.length, width)
    .setNumberFormats(cells.map((_, down) => formats[row - 1 + down]?.slice(column - 1, column - 1 + width) ?? []));
}

const formatsOf = ({ rowCount: rows, columnCount: columns, formats }: SheetPlan): string[][] =>
  filledWith({ rows, columns, plain: '@' as string, areas: formats, of: ({ format }) => format });

/** Lists that offer something else by now, such as the classes in the Poll; what the teacher made of other cells stays. */
function renewChoices(sheet: Sheet, plan: SheetPlan): void {
  if (plan.choices.length === 0) return;
  const present = sheet.getRange(1, 1, plan.rowCount, plan.columnCount).getDataValidations();
  const changed = plan.choices.filter(({ area, options }) => {
    const rule = present[area.row - 1]?.[area.column - 1];
    const offered: unknown = rule?.getCriteriaValues()[0];
    return Array.isArray(offered) && JSON.stringify(offered) !== JSON.stringify(options);
  });
  writeChoices(sheet, { ...plan, choices: changed });
}

/** Where nobody has written yet, a word says what the cell is for. */
function invite(sheet: Sheet, { invitation }: SheetPlan): void {
  if (invitation === undefined) return;
  const cells = valuesOf(sheet);
  const empty = invitation.places.filter(({ row, column }) => (cells[row - 1]?.[column - 1] ?? '') === '');
  if (empty.length > 0) sheet.getRangeList(empty.map(areaName)).setValue(invitation.text);
}

function makeRoom(sheet: Sheet, { rows, columns }: { rows: number; columns: number }): void {
  const presentRows = sheet.getMaxRows();
  if (presentRows < rows) sheet.insertRowsAfter(presentRows, rows - presentRows);
  const presentColumns = sheet.getMaxColumns();
  if (presentColumns < columns) sheet.insertColumnsAfter(presentColumns, columns - presentColumns);
}

function writeBlock({ sheet, block, separator }: { sheet: Sheet; block: Block; separator: ',' | ';' }): void {
  const { row, column, cells } = block;
  const width = cells[0]?.length ?? 0;
  if (width === 0) return;
  const range = sheet.getRange(row, column, cells.length, width);
  const values = cells.map((contents) => contents.map((content) => inputOf({ content, sheet, separator })));
  writeTexts(range, values, (down, right) => cells[down]?.[right]?.kind === 'formula');
}

function inputOf({
  content,
  sheet,
  separator,
}: {
  content: CellContent;
  sheet: Sheet;
  separator: ',' | ';';
}): string | number {
  switch (content.kind) {
    case 'text':
      return content.text;
    case 'number':
      return content.value;
    case 'formula':
      return withSeparator(content.formula, separator);
    case 'sheet id':
      return sheet.getSheetId();
    default:
      return '';
  }
}

/**
 * Which separator a formula set by a script takes here. English locales take the comma; elsewhere a cell that is ours
 * and not yet written tells, since the host does not document it.
 */
function argumentSeparator(spreadsheet: Spreadsheet, sheet: Sheet, plan: SheetPlan): ',' | ';' {
  if (/^en/i.test(spreadsheet.getSpreadsheetLocale()) || !hasFormula(plan)) return ',';
  const cell = sheet.getRange(1, 1);
  cell.setNumberFormat('General');
  cell.setValue('=SUM(1,2)');
  settle();
  const reads = cell.getValue() === 3;
  cell.setValue('');
  cell.setNumberFormat('@');
  return reads ? ',' : ';';
}

const hasFormula = ({ blocks, checks }: SheetPlan): boolean =>
  [...blocks, ...checks].some(({ cells }) => cells.some((row) => row.some(({ kind }) => kind === 'formula')));

/** A rectangle filled with `plain`, and over it what each area asks for, later areas on top. */
function filledWith<T, A extends { row: number; column: number; rows: number; columns: number }>({
  rows,
  columns,
  plain,
  areas,
  of,
}: {
  rows: number;
  columns: number;
  plain: T;
  areas: readonly A[];
  of: (area: A) => T;
}): T[][] {
  const filled = Array.from({ length: rows }, () => Array.from({ length: columns }, () => plain));
  for (const area of areas) {
    const value = of(area);
    for (let row = area.row; row < area.row + area.rows && row <= rows; row += 1) {
      for (let column = area.column; column < area.column + area.columns && column <= columns; column += 1) {
        const line = filled[row - 1];
        if (line !== undefined) line[column - 1] = value;
      }
    }
  }
  return filled;
}

function writeLooks(sheet: Sheet, plan: SheetPlan): void {
  const { rowCount: rows, columnCount: columns } = plan;
  const whole = sheet.getRange(1, 1, rows, columns);
  const each = filledWith({ rows, columns, plain: plainLook, areas: plan.looks, of: ({ look }) => looks[look] });
  const as = <T>(read: (look: typeof plainLook) => T): T[][] => each.map((row) => row.map(read));
  whole.setBackgrounds(as(({ background }) => background));
  whole.setFontColors(as(({ color }) => color));
  whole.setFontWeights(as(({ bold }) => (bold ? 'bold' : 'normal')));
  whole.setFontSizes(as(({ size }) => size));
  whole.setWraps(as(({ wrap }) => wrap));
  for (const { look, row, column, rows: high, columns: wide } of plan.looks) {
    if (looks[look].clip !== true) continue;
    sheet.getRange(row, column, high, wide).setWrapStrategy(SpreadsheetApp.WrapStrategy.CLIP);
  }
  whole.setHorizontalAlignments(as(({ align }) => align));
  whole.setVerticalAlignment('top');
  let from = 0;
  plan.columnWidths.forEach((width, index) => {
    if (plan.columnWidths[index + 1] === width) return;
    sheet.setColumnWidths(from + 1, index - from + 1, width);
    from = index + 1;
  });
  if (plan.hiddenColumns !== undefined) sheet.hideColumns(plan.hiddenColumns.column, plan.hiddenColumns.count);
  sheet.setFrozenRows(plan.frozenRows);
  sheet.setFrozenColumns(plan.frozenColumns);
  sheet.setTabColor(tabColors[plan.role.kind]);
}

function writeChoices(sheet: Sheet, plan: SheetPlan): void {
  const written = new Set<Choice>();
  for (const choice of plan.choices) {
    if (written.has(choice)) continue;
    const { area, options, help } = choice;
    const rule = choiceOf(options, help);
    const beside = plan.choices.find((other) => standsBeside(other, choice));
    if (beside === undefined) {
      sheet.getRange(area.row, area.column, area.rows, area.columns).setDataValidation(rule);
      continue;
    }
    // Neighbours go in one call: a class of twelve teams has twelve of them.
    written.add(beside);
    const both = [rule, choiceOf(beside.options, beside.help)];
    sheet
      .getRange(area.row, area.column, area.rows, 2)
      .setDataValidations(Array.from({ length: area.rows }, () => both));
  }
}

/** Is this choice one column, right beside another as high as itself? */
const standsBeside = ({ area }: Choice, { area: left }: Choice): boolean =>
  area.row === left.row &&
  area.rows === left.rows &&
  area.columns === 1 &&
  left.columns === 1 &&
  area.column === left.column + 1;

/** Ours anew, whatever else the teacher has set stays. */
function writeStateRules(sheet: Sheet, plan: SheetPlan): void {
  const ours = plan.states.filter(({ areas }) => areas.length > 0);
  if (ours.length === 0) return;
  const others = sheet
    .getConditionalFormatRules()
    .filter((rule) => !ours.some(({ startsWith }) => isStateRule(rule, startsWith)));
  const rules = ours.map(({ areas, startsWith, state }) =>
    stateRuleOf({
      startsWith,
      ...stateLooks[state],
      ranges: sheet.getRangeList(areas.map(areaName)).getRanges(),
    }),
  );
  sheet.setConditionalFormatRules([...others, ...rules]);
}

function carryEntries({
  spreadsheet,
  sheet,
  plan,
  from,
}: {
  spreadsheet: Spreadsheet;
  sheet: Sheet;
  plan: SheetPlan;
  from: number;
}): void {
  const old = sheetById(spreadsheet, from);
  if (old === undefined) return;
  const wanted = isOfAnother(tagOf(old), plan) ? teamsAlone(plan) : plan;
  const runs = carriedEntries({ plan: wanted, from: valuesOf(old), to: valuesOf(sheet) });
  const lastRow = Math.max(plan.rowCount, ...runs.map(({ row, values }) => row + values.length - 1));
  makeRoom(sheet, { rows: lastRow, columns: plan.columnCount });
  for (const { row, column, values } of runs) {
    const cells = sheet.getRange(row, column, values.length, 1);
    // Rows that people added lie below those whose format was set.
    if (row > plan.rowCount) cells.setNumberFormat('@');
    writeTexts(
      cells,
      values.map((value) => [value]),
    );
  }
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
function protect(sheet: Sheet, plan: SheetPlan, isNew: boolean): void {
  const present = sheetProtections(sheet)[0];
  const description = present?.getDescription() ?? '';
  if (present !== undefined && description !== hostWords.protection && !(isNew && description === '')) return;
  const protection = present ?? sheet.protect();
  protection.setDescription(hostWords.protection);
  protection.setWarningOnly(true);
  const open = [...plan.writable, ...plan.unprotected];
  if (open.length > 0) protection.setUnprotectedRanges(sheet.getRangeList(open.map(areaName)).getRanges());
}
