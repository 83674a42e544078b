import type { CellValue } from '../measurement/cellValue.ts';
import { columnIn } from '../workbook/classCells.ts';
import { classColumns } from '../workbook/layout.ts';
import { readNote } from './buildNote.ts';
import type { BookReading, ReadWish, SheetRead } from './calls.ts';
import { cellSent } from './cellSent.ts';
import { decimalMarkOf } from './decimalMark.ts';
import { emptyFirstSheet } from './emptyFirstSheet.ts';
import { markOf } from './markOf.ts';
import { keptIds, ownSheets, type SheetTag } from './ownSheets.ts';
import { type Sheet, type Spreadsheet, settle } from './spreadsheet.ts';
import { valuesOf } from './valuesOf.ts';

/** The list of sheets, and the cells of those in use whose kind is asked for. No sheet that was kept is read. */
export function readBook(spreadsheet: Spreadsheet, { kinds, ids = [] }: ReadWish): BookReading {
  settle();
  const own = new Map(ownSheets(spreadsheet).map(({ sheet, tag }) => [sheet.getSheetId(), tag]));
  const kept = keptIds();
  const sheets = spreadsheet.getSheets().map((sheet) => ({ sheet, id: sheet.getSheetId() }));
  const now = new Date();
  const timeZone = spreadsheet.getSpreadsheetTimeZone();
  const [today = '', clock = ''] = Utilities.formatDate(now, timeZone, 'yyyy-MM-dd HH:mm').split(' ');
  const read: SheetRead[] = [];
  for (const { sheet, id } of sheets) {
    const tag = own.get(id);
    if (tag === undefined || tag.state === 'kept' || !(kinds.includes(tag.kind) || ids.includes(id))) continue;
    read.push(sheetRead({ sheet, id, tag }));
  }
  return {
    fileName: spreadsheet.getName(),
    decimalMark: decimalMarkOf(spreadsheet.getSpreadsheetLocale()),
    timeZone,
    now: now.getTime(),
    today,
    clock,
    activeSheet: spreadsheet.getActiveSheet().getSheetId(),
    emptySheet: emptyFirstSheet(spreadsheet)?.getSheetId() ?? null,
    note: readNote(),
    sheets: sheets.map(({ sheet, id }) => {
      const tag = own.get(id);
      const isKept = kept.includes(id) || tag?.state === 'kept';
      return { id, name: sheet.getName(), tag: isKept ? null : (tag ?? null), kept: isKept };
    }),
    read,
  };
}

function sheetRead({ sheet, id, tag }: { sheet: Sheet; id: number; tag: SheetTag }): SheetRead {
  const cells: readonly (readonly CellValue[])[] = valuesOf(sheet);
  return {
    id,
    cells: cells.map((line) => line.map(cellSent)),
    formulaEntries: tag.kind === 'class' && cells.length > 0 ? formulaEntries(sheet, cells) : [],
    mark: markOf(tag.kind, cells),
  };
}

function formulaEntries(sheet: Sheet, cells: readonly (readonly CellValue[])[]): number[] {
  const formulas = sheet.getRange(1, columnIn(cells, classColumns.entry), cells.length, 1).getFormulas();
  return formulas.flatMap(([formula], index) => (formula === undefined || formula === '' ? [] : [index + 1]));
}
