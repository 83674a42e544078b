import type { CellValue } from '../measurement/cellValue.ts';
import { type FileStore, fileStore } from './fileStore.ts';
import type { SheetTag } from './ownSheets.ts';
import type { Sheet, SheetProtection, Spreadsheet } from './spreadsheet.ts';
import { valuesOf } from './valuesOf.ts';

/** A sheet as one run of the script knows it. */
export interface SheetInRun {
  readonly sheet: Sheet;
  readonly id: number;
  /** What it is; undefined for a sheet that is none of ours. */
  tag?: SheetTag | undefined;
  /** Where its tag stands, and the words that stand there. */
  entry?: GoogleAppsScript.Spreadsheet.DeveloperMetadata | undefined;
  words?: string | undefined;
  /** True where nothing stood in any cell of a sheet that is none of ours. */
  isBlank?: boolean;
  /** True where this run has put the sheet in: nobody has anything in it yet. */
  isNew?: true;
  /** Its cells as this run has read them, until it writes there itself. */
  cells?: readonly (readonly CellValue[])[] | undefined;
}

/**
 * The file as one run of the script sees it. Asking is what a run takes long for, so the list of sheets, what each is and
 * the notes of the script are asked for once; what the run changes it changes here as well.
 */
export interface FileInRun {
  readonly spreadsheet: Spreadsheet;
  readonly store: FileStore;
  /** In the order of the tabs. */
  readonly sheets: SheetInRun[];
  readonly locale: () => string;
  /** Of arguments in formulas that a script sets, where a cell has told it. */
  separator?: ',' | ';';
  /** The sheet that tells teacher and students apart, where the run has looked for it and there is one. */
  readonly desk: DeskSheet | undefined;
  /** Whether it was asked what each sheet is. */
  isKnown: boolean;
}

export interface DeskSheet {
  readonly sheet: Sheet;
  readonly id: number;
  readonly protections: readonly SheetProtection[];
}

export function fileInRun(spreadsheet: Spreadsheet, desk?: DeskSheet): FileInRun {
  let locale: string | undefined;
  return {
    spreadsheet,
    store: fileStore(),
    sheets: spreadsheet.getSheets().map((sheet) => ({ sheet, id: sheet.getSheetId() })),
    locale: () => {
      locale ??= spreadsheet.getSpreadsheetLocale();
      return locale;
    },
    desk,
    isKnown: false,
  };
}

/** The sheet with the number that it keeps however it is named or moved; undefined where it is gone, or none is asked for. */
export const sheetById = (file: FileInRun, id: number | null | undefined): SheetInRun | undefined =>
  file.sheets.find((one) => one.id === id);

/** Its cells as the run has read them last, or reads them now. */
export function cellsRead(one: SheetInRun): readonly (readonly CellValue[])[] {
  one.cells ??= valuesOf(one.sheet);
  return one.cells;
}
