import { readClassSheet } from '../../workbook/readClassSheet.ts';
import { valuesOf } from '../applyWorkbook.ts';
import type { Outcome } from '../calls.ts';
import { classSheet } from '../classSheet.ts';
import { done, problem } from '../outcome.ts';
import { openSpreadsheet } from '../spreadsheet.ts';
import { hostWords } from '../words.ts';

/** Shows a team's block in its class sheet, to whoever pressed the button. */
export function goToTeam(className: unknown, key: unknown): Outcome<null> {
  const found = classSheet(openSpreadsheet(), className);
  if (!found.ok) return found;
  const block = readClassSheet(valuesOf(found.value))?.blocks.find((candidate) => candidate.key === key);
  if (block === undefined) return problem({ ...hostWords.teamUnknown, received: `“${String(key)}”` });
  found.value.activate();
  found.value.getRange(block.headingRow, 1).activate();
  return done(null);
}
