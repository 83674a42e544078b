import { lessonActivity } from '../../lab/lesson/lessonActivity.ts';
import type { Book } from '../file/book.ts';
import type { LessonLine } from '../views.ts';
import { planInFile } from './planInFile.ts';

/** What the lesson of a book limited to one is about, as its whole Plan has it, classes that were put away included. */
export function lessonAbout(book: Book): Pick<LessonLine, 'activity' | 'substance' | 'invented'> {
  const plan = planInFile(book);
  if (plan.state !== 'there') return { activity: '', substance: '', invented: false };
  const { setup, invented } = plan.whole;
  const { activity, settings, givens } = setup;
  return { activity: lessonActivity(settings)?.title ?? activity, substance: givens.formula ?? '', invented };
}
