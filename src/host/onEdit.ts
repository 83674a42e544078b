import type { CellValue } from '../measurement/cellValue.ts';
import { cellText } from '../workbook/cellText.ts';
import { classColumns as at, classMarker, countedColumn, pollColumns } from '../workbook/layout.ts';
import { countedEntry } from './countedEntry.ts';
import { notePollDay } from './notePollDay.ts';

type EditEvent = GoogleAppsScript.Events.SheetsOnEdit;
type Sheet = GoogleAppsScript.Spreadsheet.Sheet;

/**
 * Simple trigger: counts a try in each edited row of a class sheet whose entry is new, and notes the time. It runs as
 * whoever types, so it may be refused; a count that is missed is missed in silence, and none is ever lowered.
 */
export function onEdit_(event: EditEvent): void {
  try {
    // An edit begins in the entries of a class or to the right of them, where answers to the poll stand: never in both.
    const first = event.range.getColumn();
    if (first === at.entry) countTries(event);
    else if (first >= pollColumns.className && first <= pollColumns.openLine) notePollDay(event);
  } catch {
    // A student who may not write here has typed all the same, and the checks do not need the count.
  }
}

function countTries({ range }: EditEvent): void {
  const last = range.getLastColumn();
  // What covers the questions as well is a sort or a moved row, not an entry.
  if (last > at.who) return;
  const sheet = range.getSheet();
  if (cellText(sheet.getRange(1, at.key).getValue()) !== classMarker) return;
  const firstRow = range.getRow();
  const rowCount = range.getNumRows();
  countRows({ sheet, firstRow, rowCount });
}

/**
 * Reads the rows once more: what the event says may be older than what stands there. No lock is asked for and nothing is
 * flushed, since a class that types at once would wait for both and lose a quarter of its counts. Two runs in one row at
 * once may cost one count, so tries means at least so many.
 */
function countRows({ sheet, firstRow, rowCount }: { sheet: Sheet; firstRow: number; rowCount: number }): void {
  const rows: CellValue[][] = sheet.getRange(firstRow, 1, rowCount, countedColumn).getValues();
  const now = new Date();
  let run: { row: number; counts: (number | Date)[][]; entries: string[][] } | undefined;
  const write = () => {
    if (run === undefined) return;
    sheet.getRange(run.row, at.tries, run.counts.length, 2).setValues(run.counts);
    sheet.getRange(run.row, countedColumn, run.entries.length, 1).setValues(run.entries);
    run = undefined;
  };
  rows.forEach((cells, index) => {
    const entry = cellText(cells[at.entry - 1]);
    const tries = cells[at.tries - 1];
    const isStep = cellText(cells[at.key - 1]) !== '' && cellText(cells[at.step - 1]) !== '';
    const isNew = entry !== '' && cellText(cells[countedColumn - 1]) !== countedEntry(entry);
    const isCount = typeof tries === 'number' || cellText(tries) === '';
    if (!isStep || !isNew || !isCount) {
      write();
      return;
    }
    run = run ?? { row: firstRow + index, counts: [], entries: [] };
    run.counts.push([(typeof tries === 'number' ? tries : 0) + 1, now]);
    run.entries.push([countedEntry(entry)]);
  });
  write();
}
