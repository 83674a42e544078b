import { freeName } from '../workbook/freeName.ts';
import type { Sheet, Spreadsheet } from './spreadsheet.ts';

/**
 * The name wanted, or with a number behind it, that no other sheet has, or only one that `takes` it; asked name by name,
 * since sheets are many.
 */
export function freeSheetName(spreadsheet: Spreadsheet, wanted: string, takes: (other: Sheet) => boolean): string {
  const taken: string[] = [];
  for (;;) {
    const name = freeName(wanted, taken);
    const other = spreadsheet.getSheetByName(name);
    if (other === null || takes(other)) return name;
    taken.push(name);
  }
}
