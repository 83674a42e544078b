import type { Outcome, ShareView } from '../calls.ts';
import { entriesOfToday } from '../entriesOfToday.ts';
import { done } from '../outcome.ts';
import { ownSheets } from '../ownSheets.ts';
import { openSpreadsheet } from '../spreadsheet.ts';

/** Which file this is, and what stands in it that a copy to give out must not hold. */
export function readShare(): Outcome<ShareView> {
  const spreadsheet = openSpreadsheet();
  const own = ownSheets(spreadsheet).map(({ sheet }) => sheet.getSheetId());
  return done({
    fileName: spreadsheet.getName(),
    entriesToday: entriesOfToday(spreadsheet),
    otherSheets: spreadsheet
      .getSheets()
      .filter((sheet) => !own.includes(sheet.getSheetId()))
      .map((sheet) => sheet.getName()),
  });
}
