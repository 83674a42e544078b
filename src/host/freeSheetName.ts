import { freeName } from '../workbook/freeName.ts';
import type { Spreadsheet } from './spreadsheet.ts';

/** The name wanted, or with a number behind it, that no other sheet has; asked name by name, since sheets are many. */
export function freeSheetName(spreadsheet: Spreadsheet, wanted: string, ownId?: number): string {
  const taken: string[] = [];
  for (;;) {
    const name = freeName(wanted, taken);
    const other = spreadsheet.getSheetByName(name);
    if (other === null || (ownId !== undefined && other.getSheetId() === ownId)) return name;
    taken.push(name);
  }
}
