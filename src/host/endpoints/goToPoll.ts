import type { Outcome } from '../calls.ts';
import { done, problem } from '../outcome.ts';
import { ownSheets, sheetInUse } from '../ownSheets.ts';
import { openSpreadsheet } from '../spreadsheet.ts';
import { hostWords } from '../words.ts';

/** Shows the Poll sheet to whoever pressed the button. */
export function goToPoll(): Outcome<null> {
  const sheet = sheetInUse(ownSheets(openSpreadsheet()), { kind: 'poll' })?.sheet;
  if (sheet === undefined) return problem(hostWords.noPoll);
  sheet.activate();
  return done(null);
}
