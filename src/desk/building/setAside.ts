import { exitSteps } from '../../lab/exit/exitSteps.ts';
import { seatsOf } from '../../lab/exit/seatsOf.ts';
import type { Lesson } from '../../workbook/lesson.ts';
import { classesInFile } from '../classes/classesInFile.ts';
import type { Book } from '../file/book.ts';
import type { BuildQuestion } from './questions.ts';
import { typedInBlock, typedInStep } from './typedCells.ts';

/**
 * Cells that people typed and that the lesson has no place for: of teams that are gone, of rows that are gone, and of
 * another activity, whose rows begin blank. They stay in sheets that are kept, but not in the table. Undefined where
 * there are none.
 */
export function setAsideBy(
  book: Book,
  { teams, activity, setup }: Lesson,
  /** Left out where every class is built. */
  onlyClass?: string,
): Extract<BuildQuestion, { about: 'typed' }> | undefined {
  const keys = teams.map(({ key }) => key);
  const steps = [...activity.steps, ...exitSteps(activity, seatsOf(setup.settings))].map(({ id }) => id);
  const touched = classesInFile(book).filter(({ name }) => onlyClass === undefined || name === onlyClass);
  const where = touched.flatMap(({ name, sheet, reading }) => {
    const isOfAnother = sheet?.tag?.activity !== undefined && sheet.tag.activity !== activity.id;
    return (reading?.blocks ?? []).map((block) => {
      const stays = keys.includes(block.key);
      const gone = block.steps.filter(({ step }) => isOfAnother || !steps.includes(step));
      const cells = stays ? gone.reduce((sum, step) => sum + typedInStep(step), 0) : typedInBlock(block);
      return { className: name, team: block.team, cells };
    });
  });
  const found = where.filter(({ cells }) => cells > 0);
  if (found.length === 0) return undefined;
  return { about: 'typed', cells: found.reduce((sum, { cells }) => sum + cells, 0), where: found };
}
