import { planPrepareSheet } from '../../workbook/planPrepareSheet.ts';
import { newSheetNames } from '../../workbook/sheetNames.ts';
import { applySheet } from '../applyWorkbook.ts';
import { planInUse } from '../build.ts';
import type { Outcome } from '../calls.ts';
import { withDocumentLock } from '../documentLock.ts';
import { lessonNow } from '../lessonNow.ts';
import { notePreparedPlan } from '../notePreparedPlan.ts';
import { done, problem } from '../outcome.ts';
import { ownSheets, sheetInUse } from '../ownSheets.ts';
import { openSpreadsheet } from '../spreadsheet.ts';
import { stampOf } from '../stampOf.ts';
import { hostWords } from '../words.ts';

/** Brings the Prepare sheet to the Plan as it is now, and shows it unless what is in view is to stay. */
export function writePrepareSheet(stay?: unknown): Outcome<null> {
  const lesson = lessonNow();
  if (!lesson.ok) return lesson;
  const { plan, activity } = lesson.value;
  const spreadsheet = openSpreadsheet();
  const role = { kind: 'prepare' } as const;
  const sheetNow = () => sheetInUse(ownSheets(spreadsheet), role)?.sheet;
  const locked = withDocumentLock(2000, () => {
    const taken = spreadsheet.getSheets().map((sheet) => sheet.getName());
    const { prepare } = newSheetNames([], taken);
    const planSheet = sheetInUse(ownSheets(spreadsheet), { kind: 'plan' })?.sheet;
    if (planSheet === undefined) return;
    const { setup, teams, givenNames, invented } = plan;
    const prepareSheet = planPrepareSheet(
      { setup, activity, teams, givenNames, invented },
      { prepare: sheetNow()?.getName() ?? prepare, plan: planSheet.getName() },
      plan.places,
    );
    const keptName = hostWords.keptName(prepareSheet.name, stampOf(spreadsheet));
    applySheet({ spreadsheet, plan: prepareSheet, keptName });
    notePreparedPlan({ spreadsheet, writtenFrom: plan, readPlan: () => planInUse(spreadsheet) });
    if (stay !== true) sheetNow()?.activate();
  });
  return locked.ran ? done(null) : problem({ ...hostWords.fileBusy, where: 'the Prepare sheet' });
}
