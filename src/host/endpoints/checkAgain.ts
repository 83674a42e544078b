import { classColumns } from '../../workbook/layout.ts';
import { readClassSheet } from '../../workbook/readClassSheet.ts';
import { valuesOf } from '../applyWorkbook.ts';
import type { Outcome } from '../calls.ts';
import { withDocumentLock } from '../documentLock.ts';
import { done } from '../outcome.ts';
import { ownSheets } from '../ownSheets.ts';
import { openSpreadsheet, settle } from '../spreadsheet.ts';

/** Enters again only the checks that failed or never finished; those that stand cost the host nothing. */
export function checkAgain(): Outcome<{ readonly renewed: number }> {
  const locked = withDocumentLock(2000, () => {
    let renewed = 0;
    for (const { sheet, tag } of ownSheets(openSpreadsheet())) {
      if (tag.kind !== 'class' || tag.state === 'kept') continue;
      for (const { known, headingRow } of readClassSheet(valuesOf(sheet))?.blocks ?? []) {
        if (known) continue;
        const cell = sheet.getRange(headingRow, classColumns.check);
        const formula = cell.getFormula();
        if (formula === '') continue;
        // The same formula set over itself is not worked out again.
        cell.setValue('');
        settle();
        cell.setFormula(formula);
        renewed += 1;
      }
    }
    return renewed;
  });
  return done({ renewed: locked.ran ? locked.value : 0 });
}
