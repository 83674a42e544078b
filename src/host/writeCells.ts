import { recognisedSheet } from '../workbook/recognisedSheet.ts';
import { areaName } from '../workbook/reference.ts';
import type { CellsWish, CellWish, Outcome } from './calls.ts';
import { cellFromPage, cellSent, isSameCell } from './cellSent.ts';
import { cellsRead, type FileInRun, type SheetInRun, sheetById } from './fileInRun.ts';
import { changed, done, problem } from './outcome.ts';
import { tagOf } from './ownSheets.ts';
import { putRowsRight, type RowsBefore, rowsBefore } from './putRowsRight.ts';
import { hostWords } from './words.ts';
import { makeRoom } from './writeSheet.ts';
import { writeTexts } from './writeTexts.ts';

/** Cells side by side in one row, all texts or none, written together. */
interface Run {
  readonly one: SheetInRun;
  readonly row: number;
  readonly column: number;
  readonly cells: CellWish[];
}

/** Writes values into cells of our sheets: all of them, or none where one holds something else than the page has seen. */
export function writeCells(file: FileInRun, { cells, heights }: CellsWish): Outcome<object> {
  const runs = runsOf(file, cells);
  if (runs === undefined) return problem({ ...hostWords.notOurs, received: hostWords.aSheetGone });
  const sheets = new Set(runs.map(({ one }) => one));
  const before = new Map<SheetInRun, RowsBefore>();
  for (const one of sheets) {
    const own = runs.filter((run) => run.one === one);
    makeRoom(one.sheet, {
      rows: Math.max(...own.map(({ row }) => row)),
      columns: Math.max(...own.map(({ column, cells: wide }) => column + wide.length - 1)),
    });
    const there = cellsRead(one);
    const isThere = ({ row, column, was }: CellWish): boolean =>
      isSameCell(cellSent(there[row - 1]?.[column - 1]), was);
    if (!own.every((run) => run.cells.every(isThere))) return changed(hostWords.theSheet(one.sheet.getName()));
    const rows = rowsBefore(one.sheet, there, wishesIn(own));
    if (rows !== undefined) before.set(one, rows);
  }
  // Before the words: where the run stops in between, the same wish made again still finds something to write.
  for (const { sheetId, row, height } of heights ?? []) {
    const one = sheetById(file, sheetId);
    if (one !== undefined && isOurs(file, one)) one.sheet.setRowHeightsForced(row, 1, height);
  }
  for (const one of sheets) {
    // Read anew by whoever comes next. What is to stay text gets the format of texts first, all of it at once.
    one.cells = undefined;
    const texts = runs.filter((run) => run.one === one && isText(run));
    if (texts.length > 0) one.sheet.getRangeList(texts.map(nameOf)).setNumberFormat('@');
  }
  for (const { one, row, column, cells: wide } of runs) {
    writeTexts(one.sheet.getRange(row, column, 1, wide.length), [wide.map(({ now }) => cellFromPage(now))]);
  }
  for (const [one, rows] of before) putRowsRight(one.sheet, wishesIn(runs.filter((run) => run.one === one)), rows);
  return done({});
}

const wishesIn = (runs: readonly Run[]): readonly CellWish[] => runs.flatMap(({ cells }) => cells);

const isText = ({ cells }: Run): boolean => typeof cells[0]?.now === 'string';

const nameOf = ({ row, column, cells }: Run): string => areaName({ row, column, rows: 1, columns: cells.length });

const isOurs = (file: FileInRun, one: SheetInRun): boolean =>
  tagOf(file, one) !== undefined || recognisedSheet(cellsRead(one)) !== undefined;

/** Undefined where a sheet is gone or is none of ours. */
function runsOf(file: FileInRun, cells: readonly CellWish[]): readonly Run[] | undefined {
  const runs: Run[] = [];
  const ours = new Set<SheetInRun>();
  for (const cell of cells) {
    const last = runs[runs.length - 1];
    if (
      last?.one.id === cell.sheetId &&
      last.row === cell.row &&
      isText(last) === (typeof cell.now === 'string') &&
      last.column + last.cells.length === cell.column
    ) {
      last.cells.push(cell);
      continue;
    }
    const one = sheetById(file, cell.sheetId);
    if (one === undefined || !(ours.has(one) || isOurs(file, one))) return undefined;
    ours.add(one);
    runs.push({ one, row: cell.row, column: cell.column, cells: [cell] });
  }
  return runs;
}
