import { classesInUse } from '../classes/classesInUse.ts';
import type { Book } from '../file/book.ts';
import { done, type Outcome } from '../outcome.ts';
import type { LessonsView } from '../views.ts';
import { lessonLine, linesAway } from './lessonLine.ts';
import { lessonsInUse, sheetsAway } from './lessonsInFile.ts';
import { peopleIn } from './peopleIn.ts';
import { planInFile } from './planInFile.ts';

/** The lessons of the file: those that classes are at, and those that were put away and can be opened again. */
export function lessonsView(book: Book): Outcome<LessonsView> {
  const classes = classesInUse(book).flatMap(({ name, id, keys, sheet, lesson }): LessonsView['classes'] => {
    const plan = planInFile(lesson.book);
    if (sheet === undefined || plan.state !== 'there') return [];
    const teams = plan.reading.setup.classes.find((one) => one.name === name)?.teams ?? [];
    return [{ name, teams, keys, lesson: lesson.id, begun: lesson.begun, people: peopleIn(lesson.book, id).length }];
  });
  return done({
    today: book.today,
    inUse: lessonsInUse(book).map(lessonLine),
    away: linesAway(sheetsAway(book)),
    classes,
  });
}
