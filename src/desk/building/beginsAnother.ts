import { lessonActivity } from '../../lab/lesson/lessonActivity.ts';
import type { Setup } from '../../lab/lesson/setup.ts';
import { classesInFile } from '../classes/classesInFile.ts';
import { entriesIn } from '../classes/entriesIn.ts';
import type { Book } from '../file/book.ts';
import { lessonShown } from '../lesson/lessonsInFile.ts';
import { planInFile } from '../lesson/planInFile.ts';
import { sampleLeft } from '../lesson/sampleLeft.ts';
import { done, type Outcome } from '../outcome.ts';
import { asked } from './asked.ts';
import type { BuildAnswers } from './buildNote.ts';
import type { TypedWhere } from './questions.ts';

/**
 * Whether what is typed in the plan is the lesson that is there with some changes, or another one: another activity or
 * substance once a class has begun, or the first lesson of one's own beside the sample. Then it is asked first.
 */
export function beginsAnother(
  book: Book,
  {
    chosen,
    setup,
    answers,
  }: { readonly chosen: string | undefined; readonly setup: Setup; readonly answers: BuildAnswers },
): Outcome<'the same' | 'another'> {
  const shown = lessonShown(book, chosen);
  const plan = shown && planInFile(shown.book);
  if (shown === undefined || plan?.state !== 'there') return done('the same');
  const { reading } = plan;
  if (reading.invented && isOwn(setup, reading.setup)) {
    return answers.sample === undefined ? asked({ about: 'sample', ...sampleLeft(book) }) : done('another');
  }
  const from = titleOf(reading.setup);
  const to = titleOf(setup);
  if (from === to) return done('the same');
  const where = classesInFile(shown.book).flatMap(({ name, reading: sheet }): readonly TypedWhere[] => {
    const cells = entriesIn(sheet);
    return cells === 0 ? [] : [{ className: name, cells }];
  });
  // Before anybody has typed, a lesson is still being made up.
  if (where.length === 0 || answers.setAside === true) return done('the same');
  return answers.begins === 'next' ? done('another') : asked({ about: 'next lesson', from, to, where });
}

/** None of the classes of the sample is among them any more. */
const isOwn = ({ classes }: Setup, { classes: invented }: Setup): boolean =>
  classes.every(({ name }) => !invented.some((one) => one.name === name));

/** The activity by its title, with the substance. */
const titleOf = ({ settings, givens, activity }: Setup): string =>
  `${lessonActivity({ ...settings, activity })?.title ?? activity}, ${(givens.formula ?? '').trim()}`;
