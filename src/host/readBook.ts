import type { CellValue } from '../measurement/cellValue.ts';
import { classColumns } from '../workbook/layout.ts';
import { readNote } from './buildNote.ts';
import type { BookReading, ReadWish, SheetRead } from './calls.ts';
import { cellSent } from './cellSent.ts';
import { decimalMarkOf } from './decimalMark.ts';
import { emptyFirstSheet } from './emptyFirstSheet.ts';
import type { FileInRun } from './fileInRun.ts';
import { markOf } from './markOf.ts';
import { isKept, ownSheets, type SheetTag } from './ownSheets.ts';
import { type Sheet, settle } from './spreadsheet.ts';
import { valuesOf } from './valuesOf.ts';

/** The list of sheets, and the cells of those in use whose kind is asked for. No sheet that was kept is read. */
export function readBook(file: FileInRun, { kinds, ids = [] }: ReadWish): BookReading {
  settle();
  const { spreadsheet, store, sheets } = file;
  const now = new Date();
  const timeZone = spreadsheet.getSpreadsheetTimeZone();
  const [today = '', clock = ''] = Utilities.formatDate(now, timeZone, 'yyyy-MM-dd HH:mm').split(' ');
  const read: SheetRead[] = [];
  for (const { sheet, id, tag } of ownSheets(file)) {
    if (kinds.includes(tag.kind) || ids.includes(id)) read.push(sheetRead({ sheet, id, tag }));
  }
  return {
    fileName: spreadsheet.getName(),
    decimalMark: decimalMarkOf(spreadsheet.getSpreadsheetLocale()),
    timeZone,
    now: now.getTime(),
    today,
    clock,
    activeSheet: spreadsheet.getActiveSheet().getSheetId(),
    emptySheet: emptyFirstSheet(file)?.id ?? null,
    note: readNote(store),
    sheets: sheets.map((one) => {
      const kept = isKept(file, one);
      return { id: one.id, name: one.sheet.getName(), tag: kept ? null : (one.tag ?? null), kept };
    }),
    read,
  };
}

function sheetRead({ sheet, id, tag }: { sheet: Sheet; id: number; tag: SheetTag }): SheetRead {
  const cells: readonly (readonly CellValue[])[] = valuesOf(sheet);
  return {
    id,
    cells: cells.map((line) => line.map(cellSent)),
    formulaEntries: tag.kind === 'class' && cells.length > 0 ? formulaEntries(sheet, cells.length) : [],
    mark: markOf(tag.kind, cells),
  };
}

function formulaEntries(sheet: Sheet, rows: number): number[] {
  const formulas = sheet.getRange(1, classColumns.entry, rows, 1).getFormulas();
  return formulas.flatMap(([formula], index) => (formula === undefined || formula === '' ? [] : [index + 1]));
}
