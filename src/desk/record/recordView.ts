import { classFacts } from '../../lab/record/classFacts.ts';
import { closedRow } from '../../lab/texts/feedback.ts';
import { minutesAfterClass } from '../../workbook/classNow.ts';
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
    const isClosed = found.teams.some(({ steps }) => steps.some(({ check }) => check === closedRow.check));
    return {
      // Rows of a class that is closed say no more what is hard in them: what was noted at the bell is all there is.
      proposal: isClosed && saved !== undefined ? { ...entry, hard: saved.hard, next: saved.next } : entry,
      names,
      hasEntriesToday: found.hasEntriesToday,
      ...(saved === undefined ? {} : { saved }),
    };
  });
  return done({ day: book.today, classes });
}

/**
 * Classes that have entries of today, are over (before that their teacher has other things to do), and have no row of today
 * for that lesson; and in how many minutes the next of them joins, where one is still at work.
 */
export function recordDue(book: Book): Outcome<RecordDueView> {
  const reading = recordInFile(book)?.reading;
  const open = lessonDays(book).flatMap((found) => {
    const { className, hasEntriesToday, lastEntryToday } = found;
    if (!hasEntriesToday || (reading !== undefined && rowFor(reading, found) !== undefined)) return [];
    // Of entries without a time nobody can say how long ago the last one was: early is better than never.
    const sinceLast = (book.now - lastEntryToday) / 60_000;
    return [{ className, minutesLeft: minutesAfterClass - sinceLast }];
  });
  const atWork = open.filter(({ minutesLeft }) => minutesLeft > 0).map(({ minutesLeft }) => minutesLeft);
  return done({
    due: open.filter(({ minutesLeft }) => minutesLeft <= 0).map(({ className }) => className),
    ...(atWork.length === 0 ? {} : { nextInMinutes: Math.ceil(Math.min(...atWork)) }),
  });
}
