import { firstRecordFields, type RecordEntry, type RecordField, recordFields } from '../lab/record/recordEntry.ts';
import { isRecordLabel } from '../lab/texts/recordLabels.ts';
import type { CellValue } from '../measurement/cellValue.ts';
import { cellText } from './cellText.ts';

export interface RecordRow {
  /** Row of the sheet, from 1. */
  readonly row: number;
  readonly entry: RecordEntry;
}

export interface RecordReading {
  /** Column of each field, from 1, found by its heading wherever it was moved to; a free one where it has none yet. */
  readonly columns: Readonly<Record<RecordField, number>>;
  readonly headingRow: number;
  /** Fields that came later than this sheet: their headings are still to be written. */
  readonly withoutHeading: readonly RecordField[];
  readonly rows: readonly RecordRow[];
  /** First row below everything that is written. */
  readonly freeRow: number;
}

/** The Record read back, values only. Undefined where a heading is gone: then nothing may be written by guess. */
export function readRecordSheet(cells: readonly (readonly CellValue[])[]): RecordReading | undefined {
  const heading = cells.findIndex((found) =>
    firstRecordFields.every((field) => found.some((cell) => isRecordLabel(field, cellText(cell)))),
  );
  const line = cells[heading];
  if (line === undefined) return undefined;
  const columns = {} as Record<RecordField, number>;
  const withoutHeading: RecordField[] = [];
  // Behind everything that anybody wrote, in whichever row.
  let free = Math.max(
    ...cells.map((found) => found.reduce<number>((last, cell, at) => (cellText(cell) === '' ? last : at + 1), 0)),
  );
  for (const field of recordFields) {
    const column = line.findIndex((cell) => isRecordLabel(field, cellText(cell))) + 1;
    if (column === 0) {
      withoutHeading.push(field);
      free += 1;
    }
    columns[field] = column === 0 ? free : column;
  }
  const rows: RecordRow[] = [];
  let freeRow = heading + 2;
  for (let index = heading + 1; index < cells.length; index += 1) {
    const found = cells[index] ?? [];
    if (found.every((cell) => cellText(cell) === '')) continue;
    freeRow = index + 2;
    const entry = {} as Record<RecordField, string>;
    for (const field of recordFields) entry[field] = cellText(found[columns[field] - 1]);
    rows.push({ row: index + 1, entry });
  }
  return { columns, headingRow: heading + 1, withoutHeading, rows, freeRow };
}

/**
 * The row of a class, a lesson and a day; the first where somebody made two. What a row does not say of its lesson, as
 * rows of older sheets and those that people write, may be any.
 */
export function rowFor(
  { rows }: Pick<RecordReading, 'rows'>,
  wanted: Pick<RecordEntry, 'day' | 'className'> & Partial<Pick<RecordEntry, 'activity' | 'substance'>>,
): RecordRow | undefined {
  const fits = (one = '', other = '') => one === '' || other === '' || one === other;
  const ofDay = rows.filter(({ entry }) => entry.day === wanted.day && entry.className === wanted.className);
  const isSame = (exactly: boolean) => (row: RecordRow) =>
    (['activity', 'substance'] as const).every((field) =>
      exactly ? row.entry[field] === wanted[field] : fits(row.entry[field], wanted[field]),
    );
  return ofDay.find(isSame(true)) ?? ofDay.find(isSame(false));
}
