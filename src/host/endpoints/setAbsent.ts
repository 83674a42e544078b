import { cellText } from '../../workbook/cellText.ts';
import { planColumns } from '../../workbook/layout.ts';
import { readLesson } from '../../workbook/readLesson.ts';
import { words } from '../../workbook/words.ts';
import { valuesOf } from '../applyWorkbook.ts';
import type { Outcome } from '../calls.ts';
import { dayOf } from '../dayOf.ts';
import { done, problem, problemOf } from '../outcome.ts';
import { ownSheets, sheetInUse } from '../ownSheets.ts';
import { openSpreadsheet } from '../spreadsheet.ts';
import { hostWords } from '../words.ts';
import { writeTexts } from '../writeTexts.ts';

/** Marks a team in the Plan as absent today, or takes the mark away. The day stands in the mark: tomorrow it counts no more. */
export function setAbsent(key: unknown, absent: unknown): Outcome<null> {
  const spreadsheet = openSpreadsheet();
  const sheet = sheetInUse(ownSheets(spreadsheet), { kind: 'plan' })?.sheet;
  if (sheet === undefined) return problem(hostWords.teams.noLesson);
  const cells = valuesOf(sheet);
  const reading = readLesson(cells);
  if (!reading.ok) return problemOf(reading.error);
  const headingRow = reading.value.places.keys.row;
  const column = planColumns.firstGiven + reading.value.givenNames.length;
  const heading = cellText(cells[headingRow - 1]?.[column - 1]);
  if (heading !== '' && heading !== words.plan.today)
    return problem({ ...hostWords.teams.columnTaken, received: `“${heading}”` });
  const index = cells.findIndex((line, row) => row >= headingRow && cellText(line[planColumns.key - 1]) === key);
  if (index < 0) return problem({ ...hostWords.teams.unknown, received: `“${String(key)}”` });
  if (heading === '') writeTexts(sheet.getRange(headingRow, column), [[words.plan.today]]);
  const today = dayOf(spreadsheet, Date.now());
  // Marks of days gone by count no more, and nobody needs to read them.
  for (const mark of reading.value.absent) {
    if (mark.day === '' || mark.day === today) continue;
    const row = cells.findIndex((line, at) => at >= headingRow && cellText(line[planColumns.key - 1]) === mark.key);
    if (row >= 0) sheet.getRange(row + 1, column).setValue('');
  }
  const cell = sheet.getRange(index + 1, column);
  cell.setNumberFormat('@');
  writeTexts(cell, [[absent === true ? `${words.plan.absent} ${today}` : '']]);
  return done(null);
}
