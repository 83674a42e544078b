import { planPrepareSheet } from '../../workbook/planPrepareSheet.ts';
import { newSheetNames } from '../../workbook/sheetNames.ts';
import { applySheet } from '../applyWorkbook.ts';
import { readMemo } from '../buildMemo.ts';
import type { Outcome } from '../calls.ts';
import { withDocumentLock } from '../documentLock.ts';
import { lessonNow } from '../lessonNow.ts';
import { done, problem } from '../outcome.ts';
import { ownSheets, sheetInUse } from '../ownSheets.ts';
import { noBuild } from '../recordSheet.ts';
import { openSpreadsheet } from '../spreadsheet.ts';
import { hostWords } from '../words.ts';

/** Brings the Prepare sheet to the Plan as it is now, and shows it. */
export function writePrepareSheet(): Outcome<null> {
  const lesson = lessonNow();
  if (!lesson.ok) return lesson;
  const { plan, activity } = lesson.value;
  const spreadsheet = openSpreadsheet();
  const role = { kind: 'prepare' } as const;
  const sheetNow = () => sheetInUse(ownSheets(spreadsheet), role)?.sheet;
  const locked = withDocumentLock(2000, () => {
    const taken = spreadsheet.getSheets().map((sheet) => sheet.getName());
    const { prepare } = newSheetNames([], taken);
    const { setup, teams, givenNames, invented } = plan;
    applySheet({
      spreadsheet,
      plan: planPrepareSheet(
        { setup, activity, teams, givenNames, invented },
        { prepare: sheetNow()?.getName() ?? prepare },
      ),
      memo: readMemo() ?? noBuild(),
    });
    sheetNow()?.activate();
  });
  return locked.ran ? done(null) : problem({ ...hostWords.fileBusy, where: 'the Prepare sheet' });
}
