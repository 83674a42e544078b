import { classFacts } from '../../lab/record/classFacts.ts';
import { type RecordEntry, type RecordField, recordFields } from '../../lab/record/recordEntry.ts';
import { type RecordReading, rowFor } from '../../workbook/readRecordSheet.ts';
import { classesInFile } from '../classes/classesInFile.ts';
import type { Book } from '../file/book.ts';
import { dayIn } from '../file/dayIn.ts';
import { classDays } from './classDays.ts';
import type { SentRow } from './readRows.ts';
import { recordInFile } from './recordInFile.ts';

/** Rows for the Record of every day on which a class of a lesson typed and that has no row yet: counts, and no names. */
export function daysToRecord(book: Book, id: string): readonly SentRow[] {
  const found = classesInFile(book).find((one) => one.id === id);
  const steps = (found?.reading?.blocks ?? []).flatMap((block) => block.steps);
  const days = steps.flatMap(({ lastEntry }) => (lastEntry === undefined ? [] : [dayIn(book, lastEntry)]));
  const reading = recordInFile(book)?.reading;
  return [...new Set(days)].sort().flatMap((day): readonly SentRow[] => {
    const ofDay = classDays({ ...book, today: day }).find(({ className }) => className === found?.name);
    if (ofDay === undefined) return [];
    const { entry } = classFacts(ofDay);
    const there = reading && rowFor(reading, entry)?.entry;
    return there !== undefined && !isCutShort(there, { entry, columns: reading?.columns })
      ? []
      : [{ entry, base: undefined }];
  });
}

/** Whether a row is one of ours whose writing stopped: from left to right, what it has is what it was to have. */
function isCutShort(
  there: RecordEntry,
  { entry, columns }: { readonly entry: RecordEntry; readonly columns: RecordReading['columns'] | undefined },
): boolean {
  const place = (field: RecordField): number => columns?.[field] ?? 0;
  const fields = [...recordFields].sort((one, other) => place(one) - place(other));
  const first = fields.findIndex((field) => there[field] !== entry[field]);
  return first >= 0 && fields.slice(first).every((field) => there[field] === '');
}
