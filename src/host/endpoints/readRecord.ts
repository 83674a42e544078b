import { classFacts } from '../../lab/record/classFacts.ts';
import { cellText } from '../../workbook/cellText.ts';
import { classColumns } from '../../workbook/layout.ts';
import { type RecordReading, readRecordSheet, rowFor } from '../../workbook/readRecordSheet.ts';
import { valuesOf } from '../applyWorkbook.ts';
import type { Outcome, RecordView } from '../calls.ts';
import { classDays } from '../classDays.ts';
import { dayOf } from '../dayOf.ts';
import { done } from '../outcome.ts';
import { ownSheets } from '../ownSheets.ts';
import { recordSheet } from '../recordSheet.ts';
import { openSpreadsheet, type Spreadsheet } from '../spreadsheet.ts';

/** Today's entries, as the class sheets tell them now and as the Record has them. Nothing is written. */
export function readRecord(): Outcome<RecordView> {
  const spreadsheet = openSpreadsheet();
  const day = dayOf(spreadsheet, Date.now());
  const reading = recordReading(spreadsheet);
  const classes = classDays(spreadsheet, day).map((found) => {
    const { entry, names } = classFacts(found);
    const saved = reading === undefined ? undefined : rowFor(reading, entry)?.entry;
    return {
      proposal: entry,
      names,
      hasEntriesToday: found.hasEntriesToday,
      ...(saved === undefined ? {} : { saved }),
    };
  });
  return done({ day, classes });
}

/** Classes that have entries of today and no row of today. Reads little, since it is asked again and again. */
export function recordDue(): Outcome<{ readonly due: readonly string[] }> {
  const spreadsheet = openSpreadsheet();
  const day = dayOf(spreadsheet, Date.now());
  const rows = recordReading(spreadsheet)?.rows ?? [];
  const written = rows.filter(({ entry }) => entry.day === day).map(({ entry }) => entry.className);
  const due: string[] = [];
  for (const { sheet, tag } of ownSheets(spreadsheet)) {
    const name = tag.className ?? '';
    if (tag.kind !== 'class' || tag.state !== 'built' || written.includes(name)) continue;
    const times = sheet.getRange(1, classColumns.lastEntry, Math.max(1, sheet.getLastRow()), 1).getValues();
    const title = cellText(sheet.getRange(1, 1).getValue());
    const isToday = (cell: unknown) =>
      Object.prototype.toString.call(cell) === '[object Date]' && dayOf(spreadsheet, (cell as Date).getTime()) === day;
    if (times.some(([cell]) => isToday(cell)) && !written.includes(title)) due.push(name);
  }
  return done({ due });
}

function recordReading(spreadsheet: Spreadsheet): RecordReading | undefined {
  const sheet = recordSheet(spreadsheet);
  return sheet === undefined ? undefined : readRecordSheet(valuesOf(sheet));
}
