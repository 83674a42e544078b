import { readClassSheet } from '../workbook/readClassSheet.ts';
import { valuesOf } from './applyWorkbook.ts';
import { planInUse } from './build.ts';
import type { Outcome } from './calls.ts';
import { done, problem } from './outcome.ts';
import { ownSheets, sheetInUse } from './ownSheets.ts';
import type { Sheet, Spreadsheet } from './spreadsheet.ts';
import { hostWords } from './words.ts';

/** The sheet of a class: by the name it was built with or, where the Plan has another name by now, by its teams' keys. */
export function classSheet(spreadsheet: Spreadsheet, className: unknown): Outcome<Sheet> {
  if (typeof className !== 'string') return problem({ ...hostWords.classUnknown, received: typeof className });
  const own = ownSheets(spreadsheet);
  const byName = sheetInUse(own, { kind: 'class', className });
  if (byName !== undefined) return done(byName.sheet);
  const keys = (planInUse(spreadsheet)?.teams ?? [])
    .filter((team) => team.className === className)
    .map(({ key }) => key);
  const byKeys = own.find(
    ({ sheet, tag }) =>
      tag.kind === 'class' &&
      tag.state !== 'kept' &&
      readClassSheet(valuesOf(sheet))?.blocks.some(({ key }) => keys.includes(key)),
  );
  if (byKeys !== undefined) return done(byKeys.sheet);
  return problem({ ...hostWords.classUnknown, received: `“${className}”` });
}
