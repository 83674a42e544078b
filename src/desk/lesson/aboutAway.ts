import { lessonActivity } from '../../lab/lesson/lessonActivity.ts';
import type { SheetRole } from '../../workbook/workbook.ts';
import { classesInFile } from '../classes/classesInFile.ts';
import type { Book } from '../file/book.ts';
import type { AwayNote } from './awayNote.ts';
import { lessonBook } from './lessonsInFile.ts';
import { planInFile } from './planInFile.ts';

/** What is noted about a class sheet that is about to be put away; empty for any other sheet. */
export function aboutAway(book: Book, { kind, className, lesson = '' }: SheetRole): string {
  if (kind !== 'class') return '';
  const limited = lessonBook(book, lesson);
  const plan = planInFile(limited);
  const setup = plan.state === 'there' ? plan.whole.setup : undefined;
  const found = classesInFile(limited).find(({ id }) => id === className);
  const steps = (found?.reading?.blocks ?? []).flatMap((block) => block.steps);
  return JSON.stringify({
    className: found?.name ?? className ?? '',
    keys: found?.keys ?? [],
    activity: (setup && lessonActivity(setup.settings)?.title) ?? setup?.activity ?? '',
    substance: setup?.givens.formula ?? '',
    entries: steps.filter(({ entry }) => entry !== '').length,
    day: book.today,
    invented: plan.state === 'there' && plan.whole.invented,
  } satisfies AwayNote);
}
