import { prepareCells } from '../workbook/layout.ts';
import type { SheetRole } from '../workbook/workbook.ts';
import type { Seen } from './calls.ts';
import type { FileInRun } from './fileInRun.ts';
import { markOf } from './markOf.ts';
import { ownSheets, sheetInUse } from './ownSheets.ts';
import { settle } from './spreadsheet.ts';
import { valuesOf } from './valuesOf.ts';
import { writeTexts } from './writeTexts.ts';

/**
 * Notes in the Prepare sheet which Plan its list was written from, as the sheet itself joins it, so that both texts are
 * made by the same hand. Where the Plan changed while the list was being written the note is left out: the list then says
 * that it is out of date.
 */
export function notePreparedPlan({
  file,
  role,
  seen,
}: {
  file: FileInRun;
  role: SheetRole;
  /** The Plan as the page saw it when it made the list. */
  seen: readonly Seen[];
}): void {
  const sheet = sheetInUse(ownSheets(file), role)?.sheet;
  const plan = sheetInUse(ownSheets(file), { ...role, kind: 'plan' });
  if (sheet === undefined || plan === undefined) return;
  settle();
  const { planNow, planThen } = prepareCells;
  const [joined = '', then = ''] = sheet
    .getRange(planNow.row, planNow.column, planThen.row - planNow.row + 1, 1)
    .getValues()
    .map(([cell]) => String(cell));
  plan.cells = valuesOf(plan.sheet);
  const mark = markOf(plan.tag, plan.cells);
  const note = seen.some((one) => one.id === plan.id && one.mark === mark) ? joined : '';
  if (then !== note) writeTexts(sheet.getRange(planThen.row, planThen.column), [[note]]);
}
