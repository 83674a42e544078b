import type { CellWish } from '../../host/calls.ts';
import { cellText } from '../../workbook/cellText.ts';
import { countedEntry } from '../../workbook/countedEntry.ts';
import { classColumns as at, countedColumn } from '../../workbook/layout.ts';
import type { ClassReading } from '../../workbook/readClassSheet.ts';
import type { BookSheet } from '../file/book.ts';
import { cellWish } from '../file/cellWish.ts';
import { cellsOf } from '../file/sheets.ts';

/** The entries of a class as the page has seen them last: by team and step, on a day of the file. */
export interface EntriesSeen {
  readonly day: string;
  readonly entries: ReadonlyMap<string, string>;
}

/**
 * The count of tries and the time of the last entry, for rows whose entry is not the one that was counted last: what the
 * trigger notes in the same cells, where it runs. An entry that came since an earlier look of the same day gets the time
 * of this look; one that stood there at the first look may be of any day, and is counted without a time. Several entries
 * between two looks are one, so tries means at least so many.
 */
export function countSeen({
  sheet,
  reading,
  before,
  day,
  now,
}: {
  readonly sheet: BookSheet;
  readonly reading: ClassReading;
  readonly before: EntriesSeen | undefined;
  readonly day: string;
  /** Milliseconds since 1970. */
  readonly now: number;
}): { readonly rows: readonly (readonly CellWish[])[]; readonly seen: EntriesSeen } {
  const cells = cellsOf(sheet);
  const entries = new Map<string, string>();
  const rows = reading.blocks.flatMap(({ steps }) =>
    steps.map(({ row, key, step, entry }): readonly CellWish[] => {
      const name = `${key} ${step}`;
      entries.set(name, entry);
      const line = cells[row - 1] ?? [];
      const tries = line[at.tries - 1];
      const isCount = typeof tries === 'number' || cellText(tries) === '';
      if (entry === '' || !isCount || cellText(line[countedColumn - 1]) === countedEntry(entry)) return [];
      const isTimed = before?.day === day && before.entries.get(name) !== entry;
      return [
        cellWish(sheet, { row, column: at.tries }, (typeof tries === 'number' ? tries : 0) + 1),
        ...(isTimed ? [cellWish(sheet, { row, column: at.lastEntry }, { date: now })] : []),
        cellWish(sheet, { row, column: countedColumn }, countedEntry(entry)),
      ];
    }),
  );
  return { rows, seen: { day, entries } };
}
