import { helpLinesFor, ownHintsArea } from '../../workbook/planHelpSheet.ts';
import { checksComeFromSidebar } from '../../workbook/writtenChecks.ts';
import type { Work } from '../file/ask.ts';
import { type File, look } from '../file/look.ts';
import { cellsOf, sheetInUse } from '../file/sheets.ts';
import { seenOf, writeAllCells } from '../file/writing.ts';
import { lessonsInUse } from '../lesson/lessonsInFile.ts';
import { lessonInFile } from '../lesson/planInFile.ts';
import { done, type Outcome, type Problem } from '../outcome.ts';
import { classesInFile } from './classesInFile.ts';
import { areaOf, workedOut } from './workedOut.ts';

export interface ChecksWorkedOut {
  /** Rows that say something else now. */
  readonly rows: number;
  /** Hours and minutes of the look at the sheets. */
  readonly clock: string;
}

/**
 * Reads all classes and writes what their checks should say, for lessons whose checks do not come from formulas. Where rows
 * moved or somebody typed over a check since the look, the script refuses and nothing of that class is written: the next
 * look follows. A class or a lesson with which something is wrong keeps no other from its checks; the first such problem is
 * handed back.
 */
export function* workOutChecks(file: File): Work<Outcome<ChecksWorkedOut>> {
  const read = yield* look(file, ['plan', 'help', 'class']);
  if (!read.ok) return read;
  let rows = 0;
  let wrong: Problem | undefined;
  for (const { book } of lessonsInUse(read.value)) {
    const inFile = lessonInFile(book);
    if (!inFile.ok) {
      wrong ??= inFile.problem;
      continue;
    }
    const { lesson, reading: plan, sheet: planSheet } = inFile.value;
    if (!checksComeFromSidebar(lesson.setup.settings)) continue;
    const settings = areaOf(cellsOf(planSheet), plan.places.settings);
    const help = cellsOf(sheetInUse(book, { kind: 'help' }));
    const ownHints = areaOf(help, ownHintsArea(lesson.activity, helpLinesFor(lesson.activity, help)));
    for (const { sheet, reading } of classesInFile(book)) {
      if (sheet?.tag?.state !== 'built' || reading === undefined) continue;
      const cells = workedOut({ sheet, reading, settings, ownHints });
      const written = yield* writeAllCells(file, cells, { seen: seenOf(sheet), kinds: [] });
      if (written.ok) rows += cells.length / 3;
      else wrong ??= written.problem;
    }
  }
  return wrong === undefined ? done({ rows, clock: read.value.clock }) : { ok: false, problem: wrong };
}
