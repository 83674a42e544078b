import type { CellValue } from '../measurement/cellValue.ts';
import { cellText } from './cellText.ts';
import { classColumns as at, classMarker } from './layout.ts';

type Cells = readonly (readonly CellValue[])[];

/** In layouts 2 and 3 title and task stood in one column, so that all columns behind it were one further left. */
const earlierShift = 1;

/** How many columns a class sheet is short of today's behind the first; undefined where the cells are no class sheet's. */
export function classShift(cells: Cells): 0 | typeof earlierShift | undefined {
  const mark = (shift: number) => cellText(cells[0]?.[at.key - 1 - shift]);
  if (mark(0) === classMarker) return 0;
  return mark(earlierShift) === classMarker ? earlierShift : undefined;
}

/** Where one of today's columns stands in a class sheet with these cells. */
export const columnIn = (cells: Cells, column: number): number => column - (classShift(cells) ?? 0);

/** A class sheet's cells with each column where it stands today, whatever layout the sheet has; others as they are. */
export const inTodaysColumns = (cells: Cells): Cells =>
  classShift(cells) === earlierShift ? cells.map(([first, ...rest]) => [first ?? '', '', ...rest]) : cells;

/** The layout that a class sheet says it has, or 0 where it says none. Its columns are today's. */
export const layoutIn = (cells: Cells): number => Number(cellText(cells[0]?.[at.step - 1])) || 0;
