import type { CellValue } from '../measurement/cellValue.ts';
import { cellText } from '../workbook/cellText.ts';
import { inTodaysColumns } from '../workbook/classCells.ts';
import { digest } from '../workbook/digest.ts';
import { classColumns } from '../workbook/layout.ts';
import type { SheetKind } from './calls.ts';
import { cellSent } from './cellSent.ts';

type Cells = readonly (readonly CellValue[])[];

/**
 * What was seen of a sheet, as one short text to compare by. Of a class sheet only which team and step stands in which
 * row: what students type there meanwhile changes nothing that is planned from it. One that was put away meanwhile is another.
 */
export const markOf = (tag: { readonly kind: SheetKind; readonly state?: string } | undefined, cells: Cells): string =>
  digest(
    JSON.stringify([
      tag?.kind === 'class' ? structureOf(cells) : cells.map((line) => line.map(cellSent)),
      tag?.state === 'away',
    ]),
  );

/** Team and step of each row, down to the last that has one: what people type below the table is none of it. */
function structureOf(found: Cells): readonly (readonly string[])[] {
  const cells = inTodaysColumns(found);
  const rows = cells.map((line) => [cellText(line[classColumns.key - 1]), cellText(line[classColumns.step - 1])]);
  while (rows.length > 0 && rows[rows.length - 1]?.join('') === '') rows.pop();
  return rows;
}
