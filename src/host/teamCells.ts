import { classColumns as at } from '../workbook/layout.ts';
import { readClassSheet } from '../workbook/readClassSheet.ts';
import { valuesOf } from './applyWorkbook.ts';
import type { Outcome } from './calls.ts';
import { classSheet } from './classSheet.ts';
import { done, problem } from './outcome.ts';
import type { Sheet, Spreadsheet } from './spreadsheet.ts';
import { hostWords } from './words.ts';
import { writeTexts } from './writeTexts.ts';

type Range = GoogleAppsScript.Spreadsheet.Range;

/** The cell of a team that says who is in it: in the heading row of its block, under nothing that is worked out. */
export function memberCell({
  spreadsheet,
  className,
  key,
}: {
  spreadsheet: Spreadsheet;
  className: unknown;
  key: unknown;
}): Outcome<{ readonly cell: Range; readonly who: string; readonly team: string }> {
  const found = classSheet(spreadsheet, className);
  if (!found.ok) return found;
  const block = readClassSheet(valuesOf(found.value))?.blocks.find((candidate) => candidate.key === key);
  if (block === undefined) return problem({ ...hostWords.teamUnknown, received: `“${String(key)}”` });
  return done({ cell: memberCellOf(found.value, block.headingRow), who: block.who, team: block.team });
}

export const memberCellOf = (sheet: Sheet, headingRow: number): Range => sheet.getRange(headingRow, at.who);

export function writeMembers(cell: Range, text: string): void {
  cell.setNumberFormat('@');
  writeTexts(cell, [[text]]);
}
