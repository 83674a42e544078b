import type { SheetRole } from '../../workbook/workbook.ts';
import type { Work } from '../file/ask.ts';
import type { Book } from '../file/book.ts';
import { type File, look } from '../file/look.ts';
import { writeAllCells } from '../file/writing.ts';
import { done, type Outcome } from '../outcome.ts';
import { daysToRecord } from '../record/daysToRecord.ts';
import { writeRows } from '../record/saveRecord.ts';
import { lessonBook } from './lessonsInFile.ts';
import { peopleIn } from './peopleIn.ts';

/**
 * What is done with a class sheet before it is put away: its days go to the Record, as far as they are not there, and then
 * people and times out of it, where that was asked. It may be done twice. Hands back the file as it is then.
 */
export function* readyToRest(
  file: File,
  {
    sheetId,
    role: { className = '', lesson = '' },
    takesPeople,
  }: { readonly sheetId: number; readonly role: SheetRole; readonly takesPeople: boolean },
): Work<Outcome<Book>> {
  // Entries and times of this moment, not of when the build began.
  const read = yield* look(file, ['plan', 'poll', 'record'], [sheetId]);
  if (!read.ok) return read;
  const rows = daysToRecord(lessonBook(read.value, lesson), className);
  if (rows.length > 0) {
    const written = yield* writeRows(file, rows);
    if (!written.ok) return written;
  }
  const cells = takesPeople ? peopleIn(lessonBook(read.value, lesson), className) : [];
  const taken = yield* writeAllCells(file, cells, { seen: [], kinds: ['plan'] });
  if (!taken.ok) return taken;
  return cells.length === 0 ? done(file.book ?? read.value) : yield* look(file, ['plan'], [sheetId]);
}
