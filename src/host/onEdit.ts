import type { CellValue } from '../measurement/cellValue.ts';
import { cellText } from '../workbook/cellText.ts';
import { countedEntry } from '../workbook/countedEntry.ts';
import {
  classColumns as at,
  classMarker,
  countedColumn,
  layoutVersion,
  pollColumns,
  pollMarker,
} from '../workbook/layout.ts';
import { notePollDay } from './notePollDay.ts';

type EditEvent = GoogleAppsScript.Events.SheetsOnEdit;
type Sheet = GoogleAppsScript.Spreadsheet.Sheet;

/** Where entries stood in sheets of earlier layouts: all columns behind the first were one further left. */
const earlierEntry = at.entry - 1;

/**
 * Simple trigger: counts a try in each edited row of a class sheet whose entry is new, and notes the time. It runs as
 * whoever types, so it may be refused; a count that is missed is missed in silence, and none is ever lowered.
 */
export function onEdit_(event: EditEvent): void {
  try {
    const first = event.range.getColumn();
    if (first === at.entry || first === earlierEntry) entered(event, first);
    else if (first >= pollColumns.className && first <= pollColumns.openLine) notePollDay(event);
  } catch {
    // A student who may not write here has typed all the same, and the checks do not need the count.
  }
}

/** What the sheet is tells one read of its marks: those of earlier classes, and of the poll, stand beside today's. */
function entered(event: EditEvent, first: number): void {
  const { range } = event;
  const sheet = range.getSheet();
  const [before, now, layout] = (sheet.getRange(1, at.key - 1, 1, 3).getValues()[0] ?? []).map(cellText);
  const shift = at.entry - first;
  if ((shift === 0 ? now : before) === classMarker) {
    // A newer layout may keep other things there. What covers the questions too is a sort or a moved row, not an entry.
    if ((shift === 0 && Number(layout) > layoutVersion) || range.getLastColumn() > at.who - shift) return;
    countRows({ sheet, firstRow: range.getRow(), rowCount: range.getNumRows(), shift });
  } else if (before === pollMarker) notePollDay(event);
}

/**
 * Reads the rows once more: what the event says may be older than what stands there. No lock is asked for and nothing is
 * flushed, since a class that types at once would wait for both and lose a quarter of its counts. Two runs in one row at
 * once may cost one count, so tries means at least so many.
 */
function countRows({
  sheet,
  firstRow,
  rowCount,
  shift,
}: {
  sheet: Sheet;
  firstRow: number;
  rowCount: number;
  shift: number;
}): void {
  const counted = countedColumn - shift;
  const rows: CellValue[][] = sheet.getRange(firstRow, 1, rowCount, counted).getValues();
  const textIn = (cells: readonly CellValue[], column: number) => cellText(cells[column - shift - 1]);
  const now = new Date();
  let run: { row: number; counts: (number | Date)[][]; entries: string[][] } | undefined;
  const write = () => {
    if (run === undefined) return;
    sheet.getRange(run.row, at.tries - shift, run.counts.length, 2).setValues(run.counts);
    sheet.getRange(run.row, counted, run.entries.length, 1).setValues(run.entries);
    run = undefined;
  };
  rows.forEach((cells, index) => {
    const entry = textIn(cells, at.entry);
    const tries = cells[at.tries - shift - 1];
    const isStep = textIn(cells, at.key) !== '' && textIn(cells, at.step) !== '';
    const isNew = entry !== '' && textIn(cells, countedColumn) !== countedEntry(entry);
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
