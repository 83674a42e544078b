import type { CellValue } from '../measurement/cellValue.ts';
import { columnIn } from '../workbook/classCells.ts';
import { classColumns } from '../workbook/layout.ts';
import { readNote } from './buildNote.ts';
import type { BookReading, FileRead, ReadWish, SheetRead } from './calls.ts';
import { cellSent } from './cellSent.ts';
import { decimalMarkOf } from './decimalMark.ts';
import { cellsRead, type FileInRun } from './fileInRun.ts';
import { markOf } from './markOf.ts';
import { isKept, type OwnSheet, ownSheets } from './ownSheets.ts';
import type { Sheet } from './spreadsheet.ts';

/**
 * The list of sheets, and the cells of those in use whose kind is asked for. No sheet that was kept is read. What the run
 * has written must have arrived.
 */
export function readBook(file: FileInRun, { kinds, ids = [], address = false, brief = false }: ReadWish): BookReading {
  const { spreadsheet, store, sheets } = file;
  const read: SheetRead[] = [];
  for (const one of ownSheets(file)) {
    const isWanted = kinds.includes(one.tag.kind) && one.tag.state !== 'away';
    if (isWanted || ids.includes(one.id)) read.push(sheetRead(one));
  }
  const now = new Date();
  return {
    ...(brief ? {} : aboutFile(file, now)),
    now: now.getTime(),
    note: readNote(store),
    ...(address ? { address: spreadsheet.getUrl() } : {}),
    sheets: sheets.map((one) => {
      const kept = isKept(file, one);
      const name = brief && one.tag === undefined ? '' : one.sheet.getName();
      return { id: one.id, name, tag: kept ? null : (one.tag ?? null), kept };
    }),
    read,
  };
}

function aboutFile(file: FileInRun, now: Date): FileRead {
  const {
    spreadsheet,
    sheets: [first, ...others],
  } = file;
  const timeZone = spreadsheet.getSpreadsheetTimeZone();
  const [today = '', clock = ''] = Utilities.formatDate(now, timeZone, 'yyyy-MM-dd HH:mm').split(' ');
  return {
    fileName: spreadsheet.getName(),
    decimalMark: decimalMarkOf(file.locale()),
    timeZone,
    today,
    clock,
    activeSheet: spreadsheet.getActiveSheet().getSheetId(),
    // It is told by what is in it and not by its name, which differs from language to language.
    emptySheet: first?.isBlank === true && others.length === 0 ? first.id : null,
  };
}

/**
 * The Plan is handed on as the run has compared it, where the run wrote nothing there: whoever types there meanwhile is
 * seen by the next call, which compares again. All others are read as they stand now.
 */
function sheetRead(one: OwnSheet): SheetRead {
  const { sheet, id, tag } = one;
  if (tag.kind !== 'plan') one.cells = undefined;
  const cells = cellsRead(one);
  return {
    id,
    cells: cells.map((line) => line.map(cellSent)),
    formulaEntries: tag.kind === 'class' && cells.length > 0 ? formulaEntries(sheet, cells) : [],
    mark: markOf(tag, cells),
  };
}

function formulaEntries(sheet: Sheet, cells: readonly (readonly CellValue[])[]): number[] {
  const formulas = sheet.getRange(1, columnIn(cells, classColumns.entry), cells.length, 1).getFormulas();
  return formulas.flatMap(([formula], index) => (formula === undefined || formula === '' ? [] : [index + 1]));
}
