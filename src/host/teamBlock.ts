import { type BlockReading, readClassSheet } from '../workbook/readClassSheet.ts';
import { valuesOf } from './applyWorkbook.ts';
import type { Outcome } from './calls.ts';
import { classSheet } from './classSheet.ts';
import { done, problem } from './outcome.ts';
import type { Sheet, Spreadsheet } from './spreadsheet.ts';
import { hostWords } from './words.ts';

/** The block of a team in the sheet of its class, as it stands there now. */
export function teamBlock({
  spreadsheet,
  className,
  key,
}: {
  spreadsheet: Spreadsheet;
  className: unknown;
  key: unknown;
}): Outcome<{ readonly sheet: Sheet; readonly block: BlockReading }> {
  const found = classSheet(spreadsheet, className);
  if (!found.ok) return found;
  const block = readClassSheet(valuesOf(found.value))?.blocks.find((candidate) => candidate.key === key);
  if (block === undefined) return problem({ ...hostWords.teamUnknown, received: `“${String(key)}”` });
  return done({ sheet: found.value, block });
}
