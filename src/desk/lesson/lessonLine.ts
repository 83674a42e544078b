import { lessonActivity } from '../../lab/lesson/lessonActivity.ts';
import { classesInFile } from '../classes/classesInFile.ts';
import type { LessonLine } from '../views.ts';
import { begunOn, type LessonInFile, type SheetAway } from './lessonsInFile.ts';
import { planInFile } from './planInFile.ts';

/** A lesson in use in a line: what it is about, whose it is, when it was begun. */
export function lessonLine({ id, begun, book }: LessonInFile): LessonLine {
  const plan = planInFile(book);
  const setup = plan.state === 'there' ? plan.whole.setup : undefined;
  const classes = classesInFile(book);
  const steps = classes.flatMap(({ reading }) => reading?.blocks.flatMap((block) => block.steps) ?? []);
  return {
    id,
    begun,
    activity: (setup && lessonActivity(setup.settings)?.title) ?? setup?.activity ?? '',
    substance: setup?.givens.formula ?? '',
    classes: classes.map(({ name }) => name),
    entries: steps.filter(({ entry }) => entry !== '').length,
    invented: plan.state === 'there' && plan.whole.invented,
  };
}

/** Lessons that were put away, the last one first, each as it was then. */
export function linesAway(away: readonly SheetAway[]): readonly LessonLine[] {
  const ids = [...new Set(away.map(({ lesson }) => lesson))].reverse();
  return ids.map((id): LessonLine => {
    const notes = away.filter(({ lesson }) => lesson === id).map(({ note }) => note);
    return {
      id,
      begun: begunOn(id),
      activity: notes[0]?.activity ?? '',
      substance: notes[0]?.substance ?? '',
      classes: notes.map(({ className }) => className),
      entries: notes.reduce((sum, { entries }) => sum + entries, 0),
      invented: notes.some(({ invented }) => invented),
    };
  });
}
