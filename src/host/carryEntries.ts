import type { CellValue } from '../measurement/cellValue.ts';
import { type CarriedPlan, type CarriedRun, carriedEntries } from '../workbook/carriedEntries.ts';
import { cellText } from '../workbook/cellText.ts';
import type { SheetPlan } from '../workbook/workbook.ts';
import { mostRounds } from './rowNames.ts';
import type { Sheet } from './spreadsheet.ts';
import { valuesOf } from './valuesOf.ts';
import { writeTexts } from './writeTexts.ts';

/**
 * Copies what people had typed in the old sheet to the rows of the same names in the new one, and looks afterwards
 * whether the rows are still where they were: where somebody moved them meanwhile, what landed beside a wrong row is
 * taken out again and written where it belongs. Cells that hold something keep it: each is looked at once more in the
 * last moment before it is written, since teams type into a sheet as soon as it is there.
 */
export function carryEntries({
  sheet,
  plan,
  from,
}: {
  sheet: Sheet;
  plan: CarriedPlan & Pick<SheetPlan, 'rowCount'>;
  /** Cells of the old sheet. */
  from: readonly (readonly CellValue[])[];
}): void {
  for (let round = 1; round <= mostRounds; round += 1) {
    const to = valuesOf(sheet);
    const runs = carriedEntries({ plan, from, to });
    if (runs.length === 0) return;
    const lastRow = Math.max(...runs.map(({ row, values }) => row + values.length - 1));
    const room = sheet.getMaxRows();
    if (room < lastRow) sheet.insertRowsAfter(room, lastRow - room);
    let isWhole = true;
    for (const run of runs) {
      const cells = sheet.getRange(run.row, run.column, run.values.length, 1);
      // Rows that people added lie below those whose format was set.
      if (run.row > plan.rowCount) cells.setNumberFormat('@');
      const blank = stillBlank(run, cells.getValues());
      // Where rows moved, what stands there now belongs to another row.
      isWhole &&= blank.length === 1 && blank[0]?.values.length === run.values.length;
      for (const { row, column, values } of blank) {
        writeTexts(
          sheet.getRange(row, column, values.length, 1),
          values.map((value) => [value]),
        );
      }
    }
    if (plan.role.kind !== 'class') return;
    const now = valuesOf(sheet);
    const nameIn = (cells: typeof now, row: number) =>
      plan.identity.columns.map((column) => cellText(cells[row - 1]?.[column - 1])).join('\n');
    const strayed = runs.flatMap(({ row, column, values }) =>
      values.flatMap((value, down) => {
        const place = row + down;
        const moved = nameIn(to, place) !== nameIn(now, place);
        const wasEmpty = cellText(to[place - 1]?.[column - 1]) === '';
        const isOurs = cellText(now[place - 1]?.[column - 1]) === cellText(value) && cellText(value) !== '';
        return moved && wasEmpty && isOurs ? [{ row: place, column }] : [];
      }),
    );
    if (strayed.length === 0 && isWhole) return;
    for (const { row, column } of strayed) sheet.getRange(row, column).setValue('');
  }
}

/** What of a run goes into cells that are blank by now, in runs of its own. */
function stillBlank(
  { row, column, values }: CarriedRun,
  now: readonly (readonly CellValue[])[],
): readonly CarriedRun[] {
  const runs: CarriedRun[] = [];
  let blank: CellValue[] = [];
  values.forEach((value, down) => {
    if (cellText(now[down]?.[0]) !== '') {
      blank = [];
      return;
    }
    if (blank.length === 0) runs.push({ row: row + down, column, values: blank });
    blank.push(value);
  });
  return runs;
}
