import { cellText } from '../../workbook/cellText.ts';
import { planColumns } from '../../workbook/layout.ts';
import { words } from '../../workbook/words.ts';
import type { Work } from '../file/ask.ts';
import { cellWish } from '../file/cellWish.ts';
import type { File } from '../file/look.ts';
import { cellsOf } from '../file/sheets.ts';
import { attempt, seenOf, writeCells } from '../file/writing.ts';
import { lessonOfTeam } from '../lesson/lessonOfTeam.ts';
import { planOf } from '../lesson/planInFile.ts';
import { done, type Outcome, problem } from '../outcome.ts';
import { deskWords } from '../words.ts';
import { planRow } from './planRow.ts';

/** Marks a team in the Plan as absent today, or takes the mark away. The day stands in the mark: tomorrow it counts no more. */
export const setAbsent = (file: File, key: unknown, absent: unknown): Work<Outcome<null>> =>
  attempt(file, ['plan'], function* (book) {
    const plan = planOf(lessonOfTeam(book, key), deskWords.teams.noLesson);
    if (!plan.ok) return plan;
    const { reading, sheet } = plan.value;
    const cells = cellsOf(sheet);
    const at = (row: number, column: number) => cellText(cells[row - 1]?.[column - 1]);
    const headingRow = reading.places.keys.row;
    const column = planColumns.firstGiven + reading.givenNames.length;
    // Numbers have headings as far as the first blank one, or the one about today: nothing else can stand here.
    const heading = at(headingRow, column);
    const row = planRow(reading, sheet, key);
    if (row === 0) return problem({ ...deskWords.teams.unknown, received: `“${String(key)}”` });
    const cell = (line: number, now: string) => cellWish(sheet, { row: line, column }, now);
    const wishes = heading === '' ? [cell(headingRow, words.plan.today)] : [];
    // Marks of days gone by count no more, and nobody needs to read them.
    for (const mark of reading.absent) {
      if (mark.day === '' || mark.day === book.today || mark.key === key) continue;
      const line = planRow(reading, sheet, mark.key);
      if (line > 0) wishes.push(cell(line, ''));
    }
    wishes.push(cell(row, absent === true ? `${words.plan.absent} ${book.today}` : ''));
    const written = yield* writeCells(file, { cells: wishes, seen: seenOf(sheet), kinds: ['plan'] });
    return written.ok ? done(null) : written;
  });
