import type { CellValue } from '../measurement/cellValue.ts';
import { columnIn } from '../workbook/classCells.ts';
import { classColumns } from '../workbook/layout.ts';
import { readNote } from './buildNote.ts';
import type { BookReading, ReadWish, SheetRead } from './calls.ts';
import { cellSent } from './cellSent.ts';
import { decimalMarkOf } from './decimalMark.ts';
import { emptyFirstSheet } from './emptyFirstSheet.ts';
import { cellsRead, type FileInRun } from './fileInRun.ts';
import { markOf } from './markOf.ts';
import { isKept, type OwnSheet, ownSheets } from './ownSheets.ts';
import { type Sheet, settle } from './spreadsheet.ts';

/** The list of sheets, and the cells of those in use whose kind is asked for. No sheet that was kept is read. */
export function readBook(file: FileInRun, { kinds, ids = [], address = false }: ReadWish): BookReading {
  settle();
  const { spreadsheet, store, sheets } = file;
  const now = new Date();
  const timeZone = spreadsheet.getSpreadsheetTimeZone();
  const [today = '', clock = ''] = Utilities.formatDate(now, timeZone, 'yyyy-MM-dd HH:mm').split(' ');
  const read: SheetRead[] = [];
  for (const one of ownSheets(file)) {
    const isWanted = kinds.includes(one.tag.kind) && one.tag.state !== 'away';
    if (isWanted || ids.includes(one.id)) read.push(sheetRead(one));
  }
  return {
    fileName: spreadsheet.getName(),
    decimalMark: decimalMarkOf(file.locale()),
    timeZone,
    now: now.getTime(),
    today,
    clock,
    activeSheet: spreadsheet.getActiveSheet().getSheetId(),
    emptySheet: emptyFirstSheet(file)?.id ?? null,
    note: readNote(store),
    ...(address ? { address: spreadsheet.getUrl() } : {}),
    sheets: sheets.map((one) => {
      const kept = isKept(file, one);
      return { id: one.id, name: one.sheet.getName(), tag: kept ? null : (one.tag ?? null), kept };
    }),
    read,
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
