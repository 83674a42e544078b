import { type RecordEntry, type RecordField, recordFields } from '../lab/record/recordEntry.ts';
import { recordWords } from '../lab/texts/record.ts';
import type { CellValue } from '../measurement/cellValue.ts';
import { cellText } from './cellText.ts';

export interface RecordRow {
  /** Row of the sheet, from 1. */
  readonly row: number;
  readonly entry: RecordEntry;
}

export interface RecordReading {
  /** Column of each field, from 1, found by its heading wherever it was moved to. */
  readonly columns: Readonly<Record<RecordField, number>>;
  readonly rows: readonly RecordRow[];
  /** First row below everything that is written. */
  readonly freeRow: number;
}

/** The Record read back, values only. Undefined where a heading is gone: then nothing may be written by guess. */
export function readRecordSheet(cells: readonly (readonly CellValue[])[]): RecordReading | undefined {
  const labels = recordFields.map((field) => recordWords.labels[field]);
  const heading = cells.findIndex((line) => labels.every((label) => line.some((cell) => cellText(cell) === label)));
  const line = cells[heading];
  if (line === undefined) return undefined;
  const columns = {} as Record<RecordField, number>;
  for (const field of recordFields) {
    columns[field] = line.findIndex((cell) => cellText(cell) === recordWords.labels[field]) + 1;
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
  return { columns, rows, freeRow };
}

/** The row of a class and day; the first where somebody made two. */
export const rowFor = (
  { rows }: Pick<RecordReading, 'rows'>,
  { day, className }: Pick<RecordEntry, 'day' | 'className'>,
): RecordRow | undefined => rows.find(({ entry }) => entry.day === day && entry.className === className);
