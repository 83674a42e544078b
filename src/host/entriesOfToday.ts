import { readClassSheet } from '../workbook/readClassSheet.ts';
import { valuesOf } from './applyWorkbook.ts';
import { dayOf } from './dayOf.ts';
import { ownSheets } from './ownSheets.ts';
import type { Spreadsheet } from './spreadsheet.ts';

/** Entries of today in every class sheet, kept ones included. One whose time nobody noted may be of today: it counts. */
export function entriesOfToday(spreadsheet: Spreadsheet): number {
  const day = dayOf(spreadsheet, Date.now());
  let count = 0;
  for (const { sheet, tag } of ownSheets(spreadsheet)) {
    if (tag.kind !== 'class') continue;
    for (const { steps } of readClassSheet(valuesOf(sheet))?.blocks ?? []) {
      count += steps.filter(
        ({ entry, lastEntry }) => entry !== '' && (lastEntry === undefined || dayOf(spreadsheet, lastEntry) === day),
      ).length;
    }
  }
  return count;
}
