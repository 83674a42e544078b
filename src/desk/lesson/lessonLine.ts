import { classesInFile } from '../classes/classesInFile.ts';
import { entriesIn } from '../classes/entriesIn.ts';
import type { LessonLine } from '../views.ts';
import { lessonAbout } from './lessonAbout.ts';
import { begunOn, type LessonInFile, type SheetAway } from './lessonsInFile.ts';

/** A lesson in use in a line: what it is about, whose it is, when it was begun. */
export function lessonLine({ id, begun, book }: LessonInFile): LessonLine {
  const classes = classesInFile(book);
  return {
    id,
    begun,
    ...lessonAbout(book),
    classes: classes.map(({ name }) => name),
    entries: classes.reduce((sum, { reading }) => sum + entriesIn(reading), 0),
  };
}

/** Lessons that were put away, the last one first, each as it was then. */
export function linesAway(away: readonly SheetAway[]): readonly LessonLine[] {
  const ids = [...new Set(away.map(({ lesson }) => lesson))].reverse();
  return ids.map((id): LessonLine => {
    const notes = away.filter(({ lesson }) => lesson === id).map(({ note }) => note);
    const cleared = notes.filter((note) => note.cleared === true).map(({ className }) => className);
    return {
      id,
      begun: begunOn(id),
      activity: notes[0]?.activity ?? '',
      substance: notes[0]?.substance ?? '',
      classes: notes.map(({ className }) => className),
      entries: notes.reduce((sum, { entries }) => sum + entries, 0),
      invented: notes.some(({ invented }) => invented),
      cleared,
    };
  });
}
