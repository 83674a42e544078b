import { classFacts } from '../../lab/record/classFacts.ts';
import { rowFor } from '../../workbook/readRecordSheet.ts';
import type { Book } from '../file/book.ts';
import { lessonsInUse } from '../lesson/lessonsInFile.ts';
import { planInFile } from '../lesson/planInFile.ts';
import { done, type Outcome } from '../outcome.ts';
import type { RecordDueView, RecordView } from '../views.ts';
import { lessonDays } from './lessonDays.ts';
import { recordInFile } from './recordInFile.ts';

/** Today's entries, as the class sheets tell them and as the Record has them. */
export function recordView(book: Book): Outcome<RecordView> {
  for (const { book: limited } of lessonsInUse(book)) {
    const plan = planInFile(limited);
    if (plan.state === 'unreadable') return { ok: false, problem: plan.problem };
  }
  const reading = recordInFile(book)?.reading;
  const classes = lessonDays(book).map((found) => {
    const { entry, names } = classFacts(found);
    const saved = reading === undefined ? undefined : rowFor(reading, entry)?.entry;
    return {
      proposal: entry,
      names,
      hasEntriesToday: found.hasEntriesToday,
      ...(saved === undefined ? {} : { saved }),
    };
  });
  return done({ day: book.today, classes });
}

/** A class whose last entry is so long ago has gone: before that its teacher has other things to do. */
const minutesAfterClass = 20;

/**
 * Classes that have entries of today, have gone, and have no row of today; and in how many minutes the next of them
 * joins, where one is still at work.
 */
export function recordDue(book: Book): Outcome<RecordDueView> {
  const rows = recordInFile(book)?.reading?.rows ?? [];
  const written = rows.filter(({ entry }) => entry.day === book.today).map(({ entry }) => entry.className);
  const open = lessonDays(book).flatMap(({ className, lastEntryToday }) =>
    lastEntryToday === undefined || written.includes(className)
      ? []
      : [{ className, minutesLeft: minutesAfterClass - (book.now - lastEntryToday) / 60_000 }],
  );
  const atWork = open.filter(({ minutesLeft }) => minutesLeft > 0).map(({ minutesLeft }) => minutesLeft);
  return done({
    due: open.filter(({ minutesLeft }) => minutesLeft <= 0).map(({ className }) => className),
    ...(atWork.length === 0 ? {} : { nextInMinutes: Math.ceil(Math.min(...atWork)) }),
  });
}
