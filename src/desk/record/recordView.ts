import { classFacts } from '../../lab/record/classFacts.ts';
import { rowFor } from '../../workbook/readRecordSheet.ts';
import type { Book } from '../file/book.ts';
import { planInFile } from '../lesson/planInFile.ts';
import { done, type Outcome } from '../outcome.ts';
import type { RecordView } from '../views.ts';
import { classDays } from './classDays.ts';
import { recordInFile } from './recordInFile.ts';

/** Today's entries, as the class sheets tell them and as the Record has them. */
export function recordView(book: Book): Outcome<RecordView> {
  const plan = planInFile(book);
  if (plan.state === 'unreadable') return { ok: false, problem: plan.problem };
  const reading = recordInFile(book)?.reading;
  const classes = classDays(book).map((found) => {
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

/** Classes that have entries of today and no row of today. */
export function recordDue(book: Book): Outcome<{ readonly due: readonly string[] }> {
  const rows = recordInFile(book)?.reading?.rows ?? [];
  const written = rows.filter(({ entry }) => entry.day === book.today).map(({ entry }) => entry.className);
  const due = classDays(book).filter(
    ({ hasEntriesToday, className }) => hasEntriesToday && !written.includes(className),
  );
  return done({ due: due.map(({ className }) => className) });
}
