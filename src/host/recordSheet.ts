import { planRecordSheet } from '../workbook/planRecordSheet.ts';
import { applySheet } from './applyWorkbook.ts';
import { type BuildMemo, readMemo } from './buildMemo.ts';
import { ownSheets, sheetInUse } from './ownSheets.ts';
import type { Sheet, Spreadsheet } from './spreadsheet.ts';

const role = { kind: 'record' } as const;

/** The Record, if there is one that was finished. */
export function recordSheet(spreadsheet: Spreadsheet): Sheet | undefined {
  const found = sheetInUse(ownSheets(spreadsheet), role);
  return found?.tag.state === 'built' ? found.sheet : undefined;
}

/** The Record, made where there is none yet. One that is there is left as it is. */
export function recordSheetMade(spreadsheet: Spreadsheet): Sheet | undefined {
  const present = recordSheet(spreadsheet);
  if (present !== undefined) return present;
  applySheet({ spreadsheet, plan: planRecordSheet(), memo: readMemo() ?? noBuild() });
  return recordSheet(spreadsheet);
}

/** The notes of a file in which nothing is being built. */
export const noBuild = (): BuildMemo => ({
  tasks: [],
  done: 0,
  stamp: '',
  sample: false,
  names: {},
  replacements: {},
});
