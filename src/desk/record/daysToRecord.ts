import { classFacts } from '../../lab/record/classFacts.ts';
import { rowFor } from '../../workbook/readRecordSheet.ts';
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
    return reading !== undefined && rowFor(reading, entry) !== undefined ? [] : [{ entry, base: undefined }];
  });
}
