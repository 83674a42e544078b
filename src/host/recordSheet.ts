import { planRecordSheet } from '../workbook/planRecordSheet.ts';
import { applySheet } from './applyWorkbook.ts';
import { ownSheets, sheetInUse } from './ownSheets.ts';
import type { Sheet, Spreadsheet } from './spreadsheet.ts';
import { stampOf } from './stampOf.ts';
import { hostWords } from './words.ts';

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
  const plan = planRecordSheet();
  applySheet({ spreadsheet, plan, keptName: hostWords.keptName(plan.name, stampOf(spreadsheet)) });
  return recordSheet(spreadsheet);
}
