import { isYes } from '../../lab/lesson/lessonSettings.ts';
import { showExitGiven } from '../../lab/lesson/teamColumns.ts';
import type { Work } from '../file/ask.ts';
import type { File } from '../file/look.ts';
import { attempt, seenOf, writeCells } from '../file/writing.ts';
import { planOf } from '../lesson/planInFile.ts';
import { done, type Outcome, problem } from '../outcome.ts';
import { ownCell } from '../teams/ownCell.ts';
import { deskWords } from '../words.ts';
import { classesInUse } from './classesInUse.ts';

const kinds = ['plan'] as const;

/** Shows a class the checks of its exit questions, or keeps them again: a cell in the Plan's line of each of its teams. */
export const showExitChecks = (file: File, className: unknown, shown: unknown): Work<Outcome<null>> =>
  attempt(file, kinds, function* (book) {
    const found = classesInUse(book).find(({ name }) => name === className);
    if (found === undefined) return problem({ ...deskWords.classUnknown, received: `“${String(className)}”` }, 'class');
    const plan = planOf(found.lesson.book, deskWords.teams.noLesson);
    if (!plan.ok) return plan;
    const { reading, sheet } = plan.value;
    const lines = reading.teams.filter((line) => line.className === className);
    if (reading.places.teamColumns[showExitGiven] === undefined) return problem(deskWords.exit.none);
    if (shown !== true && isYes(reading.setup.settings['show exit checks'])) return problem(deskWords.exit.forLesson);
    const now = shown === true ? 'yes' : '';
    const cells = lines.flatMap(({ key }) => ownCell(plan.value, { key, name: showExitGiven, now }));
    if (cells.length === 0) return done(null);
    const written = yield* writeCells(file, { cells, seen: seenOf(sheet), kinds });
    return written.ok ? done(null) : written;
  });
