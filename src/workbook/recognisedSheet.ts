import { firstRecordFields } from '../lab/record/recordEntry.ts';
import { isRecordLabel } from '../lab/texts/recordLabels.ts';
import type { CellValue } from '../measurement/cellValue.ts';
import { cellText } from './cellText.ts';
import { classShift, inTodaysColumns, layoutIn } from './classCells.ts';
import { classColumns, classRows, pollColumns, pollMarker } from './layout.ts';
import { scratchSheet } from './scratchSheet.ts';
import { sheetHeadings } from './sheetHeadings.ts';
import type { SheetRole } from './workbook.ts';

type Cells = readonly (readonly CellValue[])[];

/** What a sheet of ours holds, told by its cells. */
export interface RecognisedSheet extends SheetRole {
  /** The layout it was built in, or 0 where the sheet does not say. */
  readonly layout: number;
}

/**
 * What a sheet is by its cells from A1 on, values only; undefined for one that is not ours. Marks, or several headings
 * in one row, count as evidence; a title alone does not, since anybody may call a sheet of their own so.
 */
export function recognisedSheet(cells: Cells): RecognisedSheet | undefined {
  const found = kindOf(cells);
  const lesson = cells
    .slice(0, 3)
    .flatMap((line) => line.map(cellText))
    .find((mark) => /^\d{4}-\d\d-\d\d\.\d+$/.test(mark));
  return found && lesson !== undefined ? { ...found, lesson } : found;
}

function kindOf(cells: Cells): RecognisedSheet | undefined {
  const at = (row: number, column: number): string => cellText(cells[row - 1]?.[column - 1]);
  if (at(1, 1) === scratchSheet.mark) return undefined;
  const shift = classShift(cells);
  if (shift !== undefined) {
    const className = at(shift === 0 ? classRows.title : 1, classColumns.title);
    return { kind: 'class', className, layout: layoutIn(inTodaysColumns(cells)) };
  }
  if (at(1, pollColumns.marker) === pollMarker) return { kind: 'poll', layout: 0 };
  const has = (...headings: readonly string[]): boolean =>
    cells.some((line) => headings.every((heading) => line.some((cell) => cellText(cell) === heading)));
  const { plan, progress, help, prepare } = sheetHeadings;
  if (has(plan.setting, plan.value) && has(plan.key, plan.className, plan.team)) return { kind: 'plan', layout: 0 };
  const isHeading = (line: readonly CellValue[]): boolean =>
    firstRecordFields.every((field) => line.some((cell) => isRecordLabel(field, cellText(cell))));
  if (cells.some(isHeading)) return { kind: 'record', layout: 0 };
  if (at(1, 1) === help.title && has(help.step, help.level, help.wording, help.link))
    return { kind: 'help', layout: 0 };
  if (at(1, 1) === prepare.title && has(...prepare.headings, prepare.mark)) return { kind: 'prepare', layout: 0 };
  if (at(1, 1) === progress.title && has(progress.now) && has(progress.done, progress.count)) {
    return { kind: 'progress', layout: 0 };
  }
  return undefined;
}
