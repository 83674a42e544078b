import { paintedSizes } from './paintedSizes.ts';
import { words } from './words.ts';
import { type SheetPlan, text } from './workbook.ts';

/** The key on a sheet of its own, with the warning on top: rows of class, team, step, answer, unit and note. */
export function planKeySheet({
  name,
  rows,
}: {
  /** Its tab, and what it is found by. */
  readonly name: string;
  readonly rows: readonly (readonly string[])[];
}): SheetPlan {
  const { warning, headings } = words.keySheet;
  const width = headings.length;
  const lines = [[warning], headings, ...rows].map((line) =>
    Array.from({ length: width }, (_, index) => text(line[index] ?? '')),
  );
  return {
    name,
    role: { kind: 'key', className: name },
    rowCount: lines.length,
    columnCount: width,
    columnWidths: paintedSizes([110, 110, 180, 100, 60, 300]),
    hiddenColumns: undefined,
    frozenRows: 2,
    frozenColumns: 0,
    blocks: [{ row: 1, column: 1, cells: lines }],
    checks: [],
    looks: [
      { row: 1, column: 1, rows: 1, columns: width, look: 'caution' },
      { row: 2, column: 1, rows: 1, columns: width, look: 'heading' },
    ],
    formats: [],
    states: [],
    choices: [],
    writable: [],
    unprotected: [],
    spill: [],
    // With the teams, so that one whose writing stopped is finished and not written a second time beside it.
    identity: { firstRow: 2, columns: [1, 2], rows: [headings, ...rows].map((line) => line.slice(0, 2)) },
    carried: [],
  };
}
