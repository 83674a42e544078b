import type { CellWish } from '../../host/calls.ts';
import type { BlockReading } from '../../workbook/readClassSheet.ts';
import type { BookSheet } from '../file/book.ts';
import { cellWish } from '../file/cellWish.ts';

/** Writes who is in a team: in the heading row of its block, where nothing is worked out. */
export const whoCell = ({
  sheet,
  block: { headingRow, whoColumn },
  now,
}: {
  readonly sheet: BookSheet;
  readonly block: Pick<BlockReading, 'headingRow' | 'whoColumn'>;
  readonly now: string;
}): CellWish => cellWish(sheet, { row: headingRow, column: whoColumn }, now);
