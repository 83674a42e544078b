import type { CellWish } from '../../host/calls.ts';
import { teamChecks } from '../../lab/judging/teamChecks.ts';
import type { CellValue } from '../../measurement/cellValue.ts';
import { cellText } from '../../workbook/cellText.ts';
import { classColumns as at, classRows } from '../../workbook/layout.ts';
import { helpLinesFor, ownHintsArea } from '../../workbook/planHelpSheet.ts';
import type { ClassReading } from '../../workbook/readClassSheet.ts';
import { typedOver, writtenColumn, writtenSums } from '../../workbook/typedOver.ts';
import type { Area } from '../../workbook/workbook.ts';
import type { Book, BookSheet, Cells } from '../file/book.ts';
import { cellWish } from '../file/cellWish.ts';
import { cellsOf, sheetInUse } from '../file/sheets.ts';
import type { LessonInFile } from '../lesson/planInFile.ts';

/** What the judge is given besides the cells of a team's block. */
interface BesideBlock {
  /** Names and values, as they stand in the Plan. */
  readonly settings: Cells;
  /** As they stand in Help. */
  readonly ownHints: Cells;
}

/** The same for all classes of a lesson. */
export function besideBlocks(book: Book, { lesson, reading, sheet }: LessonInFile): BesideBlock {
  const help = cellsOf(sheetInUse(book, { kind: 'help' }));
  return {
    settings: areaOf(cellsOf(sheet), reading.places.settings),
    ownHints: areaOf(help, ownHintsArea(lesson.activity, helpLinesFor(lesson.activity, help))),
  };
}

/** What the judge says of each row of a block, asked about the cells of a class sheet in today's columns. */
export function blockChecks({
  block: { headingRow, closingRow },
  cells,
  settings,
  ownHints,
}: BesideBlock & {
  readonly block: Pick<ClassReading['blocks'][number], 'headingRow' | 'closingRow'>;
  readonly cells: Cells;
}): ReturnType<typeof teamChecks> {
  const names = cells[classRows.title - 1] ?? [];
  const columns = givenColumns(names);
  const lines = cells.slice(headingRow - 1, closingRow);
  const inColumn = (column: number): readonly CellValue[] => lines.map((line) => line[column - 1]);
  return teamChecks({
    givenNames: columns.map((column) => names[column - 1]),
    givenValues: columns.map((column) => lines[0]?.[column - 1]),
    settings,
    steps: inColumn(at.step),
    entries: inColumn(at.entry),
    helpWanted: inColumn(at.help),
    ownHints,
  });
}

/**
 * What the checks of a class should say, where that differs from what stands there, row by row: the same words that
 * `CHECKTEAM` gives in the cell, since the same judge is asked about the same cells. What somebody typed in the place of a
 * word stays, and Class now names it. For a sheet whose checks are written, in today's columns.
 */
export function workedOut({
  sheet,
  reading,
  settings,
  ownHints,
}: BesideBlock & {
  readonly sheet: BookSheet;
  readonly reading: ClassReading;
}): readonly (readonly CellWish[])[] {
  const cells = cellsOf(sheet);
  return reading.blocks
    .filter(({ known }) => known)
    .flatMap(({ headingRow, closingRow }): readonly (readonly CellWish[])[] => {
      const lines = cells.slice(headingRow - 1, closingRow);
      const rows = blockChecks({ block: { headingRow, closingRow }, cells, settings, ownHints });
      const isTyped = typedOver({ headingRow, closingRow }, cells);
      return rows.map(({ check, lookAt, hint }, down) => {
        const row = headingRow + down;
        const line = lines[down] ?? [];
        const words = [check, lookAt, hint];
        const isOther = (now: string, column: number) =>
          line[column - 1] instanceof Date || now !== cellText(line[column - 1]);
        const wish = (now: string, column: number) => cellWish(sheet, { row, column }, now);
        const own = words.flatMap((now, right) => (isTyped(row, right) ? [] : [{ now, column: at.check + right }]));
        // A row is written whole, so that nobody reads the check of one entry beside the feedback of another.
        const written = own.some(({ now, column }) => isOther(now, column))
          ? own.map(({ now, column }) => wish(now, column))
          : [];
        const sums = writtenSums(words);
        const isNoted = cellText(line[at.step - 1]) === '' || !isOther(sums, writtenColumn);
        return [...written, ...(isNoted ? [] : [wish(sums, writtenColumn)])];
      });
    });
}

/** The key, and the givens as far as they have names: the columns that the formula of a block takes. */
function givenColumns(names: readonly CellValue[]): readonly number[] {
  const columns: number[] = [at.key, at.step];
  // Behind the numbers stand marks without a name, and behind those what the team has of its own.
  for (let column: number = at.givens; column <= names.length; column += 1)
    if (cellText(names[column - 1]) !== '') columns.push(column);
  return columns;
}

/** The cells of an area of a sheet. */
const areaOf = (cells: Cells, { row, column, rows, columns }: Area): Cells =>
  cells.slice(row - 1, row - 1 + rows).map((line) => line.slice(column - 1, column - 1 + columns));
