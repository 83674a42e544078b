import { classShift } from '../../workbook/classCells.ts';
import { obstaclesIn } from '../../workbook/obstaclesIn.ts';
import { checksAreWritten, checksComeFromSidebar } from '../../workbook/writtenChecks.ts';
import type { Work } from '../file/ask.ts';
import { type File, look } from '../file/look.ts';
import { cellsOf } from '../file/sheets.ts';
import { seenOf, writeRows } from '../file/writing.ts';
import { lessonsInUse } from '../lesson/lessonsInFile.ts';
import { lessonInFile } from '../lesson/planInFile.ts';
import { done, type Outcome, type Problem } from '../outcome.ts';
import { classesInFile } from './classesInFile.ts';
import { countSeen } from './countSeen.ts';
import { besideBlocks, workedOut } from './workedOut.ts';

export interface ChecksWorkedOut {
  /** Rows that say something else now. */
  readonly rows: number;
  /** Hours and minutes of the look at the sheets. */
  readonly clock: string;
  /** Cells where something typed stands in the place of a check; left out where there are none. */
  readonly inTheWay?: readonly string[];
}

/**
 * Reads all classes and writes what their checks should say, for lessons whose checks do not come from formulas, and what
 * no trigger counts there. Where rows moved or somebody typed over a check since the look, the script refuses and nothing
 * of that class is written: the next look follows. A class or a lesson with which something is wrong keeps no other from
 * its checks; the first such problem is handed back.
 */
export function* workOutChecks(file: File): Work<Outcome<ChecksWorkedOut>> {
  const read = yield* look(file, ['plan', 'help', 'class']);
  if (!read.ok) return read;
  const { today, now, clock } = read.value;
  file.entriesSeen ??= new Map();
  let rows = 0;
  const inTheWay: string[] = [];
  let wrong: Problem | undefined;
  for (const { book } of lessonsInUse(read.value)) {
    const inFile = lessonInFile(book);
    if (!inFile.ok) {
      wrong ??= inFile.problem;
      continue;
    }
    if (!checksComeFromSidebar(inFile.value.lesson.setup.settings)) continue;
    const beside = besideBlocks(book, inFile.value);
    for (const { sheet, reading } of classesInFile(book)) {
      if (sheet?.tag?.state !== 'built' || reading === undefined) continue;
      // Where they are formulas, or were when it was built, a build comes first.
      const cells = cellsOf(sheet);
      if (classShift(cells) !== 0 || !checksAreWritten(cells)) continue;
      const checks = workedOut({ sheet, reading, ...beside }).filter((row) => row.length > 0);
      const counts = countSeen({ sheet, reading, before: file.entriesSeen.get(sheet.id), day: today, now });
      const written = yield* writeRows(file, [...checks, ...counts.rows], { seen: seenOf(sheet), kinds: [] });
      if (written.ok) {
        rows += checks.length;
        file.entriesSeen.set(sheet.id, counts.seen);
      } else wrong ??= written.problem;
      const typed = reading.blocks.flatMap((block) => obstaclesIn(block, cells));
      inTheWay.push(...typed.map(({ cell }) => cell));
    }
  }
  return wrong === undefined
    ? done({ rows, clock, ...(inTheWay.length > 0 ? { inTheWay } : {}) })
    : { ok: false, problem: wrong };
}
