import { recognisedSheet } from '../workbook/recognisedSheet.ts';
import type { CellSent, CellsWish, CellWish, Outcome } from './calls.ts';
import { cellSent } from './cellSent.ts';
import { cellsRead, type FileInRun, type SheetInRun, sheetById } from './fileInRun.ts';
import { changed, done, problem } from './outcome.ts';
import { tagOf } from './ownSheets.ts';
import type { Sheet } from './spreadsheet.ts';
import { hostWords } from './words.ts';
import { makeRoom } from './writeSheet.ts';
import { writeTexts } from './writeTexts.ts';

/** Cells side by side in one row, read and written together. */
interface Run {
  readonly sheet: Sheet;
  readonly row: number;
  readonly column: number;
  readonly cells: CellWish[];
}

/** Writes texts into cells of our sheets: all of them, or none where one holds something else than the page has seen. */
export function writeCells(file: FileInRun, { cells, heights = [] }: CellsWish): Outcome<object> {
  const runs = runsOf(file, cells);
  if (runs === undefined) return problem({ ...hostWords.notOurs, received: hostWords.aSheetGone });
  for (const sheet of new Set(runs.map((run) => run.sheet))) {
    const own = runs.filter((run) => run.sheet === sheet);
    const last = (most: readonly number[]): number => Math.max(...most);
    makeRoom(sheet, {
      rows: last(own.map(({ row }) => row)),
      columns: last(own.map(({ column, cells: wide }) => column + wide.length - 1)),
    });
  }
  for (const run of runs) {
    const there: CellSent[] = (rangeOf(run).getValues()[0] ?? []).map(cellSent);
    const other = run.cells.find(({ was }, index) => !isSame(there[index], was));
    if (other !== undefined) return changed(hostWords.theSheet(run.sheet.getName()));
  }
  for (const run of runs) {
    const range = rangeOf(run);
    range.setNumberFormat('@');
    writeTexts(range, [run.cells.map(({ now }) => now)]);
  }
  for (const { sheetId, row, height } of heights) {
    const one = sheetById(file, sheetId);
    if (one !== undefined && isOurs(file, one)) one.sheet.setRowHeightsForced(row, 1, height);
  }
  return done({});
}

const isSame = (one: CellSent | undefined, other: CellSent): boolean => JSON.stringify(one) === JSON.stringify(other);

const rangeOf = ({ sheet, row, column, cells }: Run) => sheet.getRange(row, column, 1, cells.length);

const isOurs = (file: FileInRun, one: SheetInRun): boolean =>
  tagOf(file, one) !== undefined || recognisedSheet(cellsRead(one)) !== undefined;

/** Undefined where a sheet is gone or is none of ours. */
function runsOf(file: FileInRun, cells: readonly CellWish[]): readonly Run[] | undefined {
  const runs: Run[] = [];
  const ours = new Map<number, SheetInRun>();
  for (const cell of cells) {
    const last = runs[runs.length - 1];
    if (
      last !== undefined &&
      last.cells[0]?.sheetId === cell.sheetId &&
      last.row === cell.row &&
      last.column + last.cells.length === cell.column
    ) {
      last.cells.push(cell);
      continue;
    }
    const one = ours.get(cell.sheetId) ?? sheetById(file, cell.sheetId);
    if (one === undefined || (!ours.has(cell.sheetId) && !isOurs(file, one))) return undefined;
    ours.set(cell.sheetId, one);
    one.cells = undefined;
    runs.push({ sheet: one.sheet, row: cell.row, column: cell.column, cells: [cell] });
  }
  return runs;
}
