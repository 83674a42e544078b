import type { CellWish } from '../../host/calls.ts';
import { classFacts } from '../../lab/record/classFacts.ts';
import { mergedWords } from '../../lab/record/mergedWords.ts';
import { nameIn } from '../../lab/record/nameIn.ts';
import {
  type RecordEntry,
  type RecordField,
  recordFields,
  rowName,
  withLesson,
  wordFields,
} from '../../lab/record/recordEntry.ts';
import { recordWords } from '../../lab/texts/record.ts';
import { planRecordSheet } from '../../workbook/planRecordSheet.ts';
import { type RecordReading, rowFor } from '../../workbook/readRecordSheet.ts';
import { ask, type Work } from '../file/ask.ts';
import type { Book, BookSheet } from '../file/book.ts';
import { cellWish } from '../file/cellWish.ts';
import { stampOf } from '../file/dayIn.ts';
import { type File, look, noted } from '../file/look.ts';
import { attempt, seenOf, writeCells } from '../file/writing.ts';
import { done, type Outcome, problem } from '../outcome.ts';
import { deskWords } from '../words.ts';
import type { ClassDayFound } from './classDays.ts';
import { namesInFile } from './namesInFile.ts';
import { readRows, type SentRow } from './readRows.ts';
import { recordInFile } from './recordInFile.ts';

const longest = 2000;
const kinds = ['plan', 'class', 'record'] as const;

/**
 * Writes one row for each class and day. A row that is there is rewritten where the sidebar has new words; what somebody
 * wrote in the sheet since it was read stays, beside the new words where both changed.
 */
export function* saveRecord(file: File, given: unknown): Work<Outcome<{ readonly saved: readonly RecordEntry[] }>> {
  const rows = readRows(given);
  if (!rows.ok) return rows;
  // Names may have come since the sidebar looked, and what people wrote in the Record meanwhile is to stay.
  const book = yield* look(file, kinds);
  if (!book.ok) return book;
  const refused = wordProblem(rows.value, namesInFile(book.value));
  if (refused !== undefined) return refused;
  return yield* writeRows(file, rows.value);
}

/** The same for rows whose words are our own: counts, in which no name can stand. */
export const writeRows = (
  file: File,
  rows: readonly SentRow[],
): Work<Outcome<{ readonly saved: readonly RecordEntry[] }>> =>
  attempt(file, kinds, function* (now) {
    const there = recordInFile(now) === undefined ? yield* makeRecord(file, now) : done(now);
    return there.ok ? yield* write(file, there.value, rows) : there;
  });

/** The first word that may not stand in a sheet that the school reads. */
function wordProblem(rows: readonly SentRow[], names: readonly string[]): Outcome<never> | undefined {
  const { record: say } = deskWords;
  for (const { entry } of rows) {
    for (const field of wordFields) {
      const where = `“${recordWords.labels[field]}” of ${entry.className}`;
      if (entry[field].length > longest)
        return problem({ ...say.tooLong, where, received: String(entry[field].length) }, `${rowName(entry)}.${field}`);
      const name = nameIn(entry[field], names);
      if (name !== undefined)
        return problem({ ...say.named, where, received: `“${name}”` }, `${rowName(entry)}.${field}`);
    }
  }
  return undefined;
}

/** The Record, made where there is none yet. One that is there is left as it is. */
function* makeRecord(file: File, book: Book): Work<Outcome<Book>> {
  const plan = planRecordSheet();
  const keptName = deskWords.keptName(plan.name, stampOf(book));
  const answer = yield* ask('applySheet', { plan, keptName, seen: [], read: { kinds: ['record'] } });
  if (!answer.ok) return answer;
  const made = noted(file, answer.value.reading, ['record']);
  // Making it has shown it: the teacher goes back to where they were, and it is put with their other sheets.
  const back = yield* ask('show', { sheetId: book.activeSheet, hide: ['record'] });
  if (!back.ok) return back;
  file.book = { ...made, activeSheet: book.activeSheet };
  return done(file.book);
}

function* write(
  file: File,
  book: Book,
  rows: readonly SentRow[],
): Work<Outcome<{ readonly saved: readonly RecordEntry[] }>> {
  const made = recordCells(book, rows);
  if (!made.ok) return made;
  const { sheet, cells, saved } = made.value;
  if (cells.length === 0) return done({ saved });
  const outcome = yield* writeCells(file, { cells, seen: seenOf(sheet), kinds: ['record'] });
  return outcome.ok ? done({ saved }) : outcome;
}

/** What changes in the Record where these rows are kept, and the rows as they stand then. */
function recordCells(
  book: Book,
  rows: readonly SentRow[],
): Outcome<{ readonly sheet: BookSheet; readonly cells: readonly CellWish[]; readonly saved: readonly RecordEntry[] }> {
  const record = recordInFile(book);
  if (record?.reading === undefined) return problem(deskWords.record.headings);
  const { sheet, reading } = record;
  const saved: RecordEntry[] = [];
  const cells: CellWish[] = [];
  let { freeRow } = reading;
  for (const { entry, base } of rows) {
    const there = rowFor(reading, entry);
    const written = {} as Record<RecordField, string>;
    for (const field of recordFields) {
      written[field] =
        there === undefined
          ? entry[field]
          : mergedWords({ base: base?.[field] ?? '', there: there.entry[field], typed: entry[field] });
    }
    const row = there?.row ?? freeRow;
    if (there === undefined) freeRow += 1;
    cells.push(...rowCells({ sheet, reading, row, entry: written, there: there?.entry }));
    saved.push(written);
  }
  if (cells.length > 0) cells.unshift(...headingCells(sheet, reading));
  return done({ sheet, cells, saved });
}

/** Headings that a sheet of an earlier version has not got. */
const headingCells = (sheet: BookSheet, { headingRow: row, columns, withoutHeading }: RecordReading): CellWish[] =>
  withoutHeading.map((field) => cellWish(sheet, { row, column: columns[field] }, recordWords.labels[field]));

/**
 * The Record with rows for these days: what somebody wrote about one stays, and what is open is added to it. The cells are
 * not written yet, so that they can go with others in one call.
 */
export function* noteDays(
  file: File,
  book: Book,
  days: readonly ClassDayFound[],
): Work<Outcome<{ readonly book: Book; readonly sheet: BookSheet; readonly cells: readonly CellWish[] }>> {
  const there = recordInFile(book) === undefined ? yield* makeRecord(file, book) : done(book);
  if (!there.ok) return there;
  const reading = recordInFile(there.value)?.reading;
  const made = recordCells(
    there.value,
    days.map((day): SentRow => {
      const { entry } = classFacts(day);
      const saved = reading && rowFor(reading, entry)?.entry;
      if (saved === undefined) return { entry, base: undefined };
      const next = mergedWords({ base: '', there: saved.next, typed: entry.next });
      return { entry: { ...withLesson(saved, entry), next }, base: saved };
    }),
  );
  if (!made.ok) return made;
  const { sheet, cells } = made.value;
  return done({ book: there.value, sheet, cells });
}

/** Of a row that is there only cells that change; a new one as a whole, in one piece, so that no stop leaves half of it. */
function rowCells({
  sheet,
  reading,
  row,
  entry,
  there,
}: {
  sheet: BookSheet;
  reading: RecordReading;
  row: number;
  entry: RecordEntry;
  there: RecordEntry | undefined;
}): readonly CellWish[] {
  return recordFields
    .filter((field) => entry[field] !== there?.[field])
    .map((field) => cellWish(sheet, { row, column: reading.columns[field] }, entry[field]))
    .sort((one, other) => one.column - other.column);
}
