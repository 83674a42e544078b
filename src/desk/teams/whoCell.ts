import type { CellWish } from '../../host/calls.ts';
import type { BlockReading } from '../../workbook/readClassSheet.ts';
import type { BookSheet } from '../file/book.ts';
import { cellWas } from '../file/cellWas.ts';

/** Writes who is in a team: in the heading row of its block, where nothing is worked out. */
export const whoCell = ({
  sheet,
  block: { headingRow, whoColumn },
  now,
}: {
  readonly sheet: BookSheet;
  readonly block: Pick<BlockReading, 'headingRow' | 'whoColumn'>;
  readonly now: string;
}): CellWish => ({
  sheetId: sheet.id,
  row: headingRow,
  column: whoColumn,
  was: cellWas(sheet, { row: headingRow, column: whoColumn }),
  now,
});
