import { isInvitation } from '../lab/members/readMembers.ts';
import type { CellValue } from '../measurement/cellValue.ts';
import { cellText } from './cellText.ts';
import { inTodaysColumns, layoutIn } from './classCells.ts';
import { classColumns } from './layout.ts';
import type { SheetPlan } from './workbook.ts';

type Cells = readonly (readonly CellValue[])[];

/** A run of cells below each other, to be written in one call. */
export interface CarriedRun {
  readonly row: number;
  readonly column: number;
  readonly values: readonly CellValue[];
}

/** What has to be known of a sheet to carry entries into it. */
export type CarriedPlan = Pick<
  SheetPlan,
  'role' | 'identity' | 'carried' | 'writable' | 'unprotected' | 'carriesAddedRows' | 'relettered'
>;

/**
 * What people had typed in a sheet of another layout, placed by identity (team key and step id, or step and level) in
 * the new one. A cell of the new sheet that holds something already keeps it, so that copying twice loses nothing.
 */
export function carriedEntries({
  plan,
  from: given,
  to,
}: {
  plan: CarriedPlan;
  from: Cells;
  to: Cells;
}): readonly CarriedRun[] {
  const { columns, rows, firstRow } = plan.identity;
  const isClass = plan.role.kind === 'class';
  const from = isClass ? inTodaysColumns(given) : given;
  const { relettered } = plan;
  const lettersBefore =
    relettered !== undefined && isClass && layoutIn(from) < relettered.since ? relettered : undefined;
  const carriedAs = (value: CellValue, place: { row: number; column: number }): CellValue =>
    lettersBefore !== undefined && place.column === lettersBefore.column && lettersBefore.rows.includes(place.row)
      ? `${lettersBefore.before}${cellText(value)}`
      : value;
  // A heading row has a team and no step; the closing row below it has the same name, and nothing in it is carried.
  const nameOf = (texts: readonly string[]) => (texts[0] === '' ? '' : JSON.stringify(texts));
  const nameAt = (cells: Cells[number] | undefined): string =>
    nameOf(columns.map((column) => cellText(cells?.[column - 1])));
  /** Index of the first row of each name. */
  const placesIn = (all: Cells): ReadonlyMap<string, number> => {
    const places = new Map<string, number>();
    all.forEach((cells, index) => {
      const name = nameAt(cells);
      if (name !== '' && !places.has(name)) places.set(name, index);
    });
    return places;
  };
  const rowByName = placesIn(from);
  const standsAt = placesIn(to);
  /** Where a planned row stands by now; undefined where it was taken out. People can move rows while a sheet is written. */
  const placeOf = (name: string, planned: number): number | undefined => {
    const there = nameAt(to[planned - 1]);
    if (!isClass || there === name) return planned;
    const index = standsAt.get(name);
    return index === undefined ? (there === '' ? planned : undefined) : index + 1;
  };
  const runs: CarriedRun[] = [];
  for (const column of plan.carried) {
    let values: CellValue[] = [];
    let start = 0;
    const close = () => {
      if (values.length > 0) runs.push({ row: start, column, values });
      values = [];
    };
    rows.forEach((texts, index) => {
      const planned = firstRow + index;
      const source = rowByName.get(nameOf(texts));
      const row = placeOf(nameOf(texts), planned);
      if (source === undefined || row === undefined || !carries(plan, { row: planned, column })) {
        close();
        return;
      }
      const found = from[source]?.[column - 1];
      // What stood there until somebody wrote is nobody's.
      const old = isClass && column === classColumns.who && isInvitation(cellText(found)) ? '' : found;
      // Somebody may be typing in any other cell, so that nothing is written there, not even what was read.
      if (isEmpty(old) || !isEmpty(to[row - 1]?.[column - 1])) {
        close();
        return;
      }
      if (row !== start + values.length) close();
      if (values.length === 0) start = row;
      values.push(carriedAs(old, { row: planned, column }));
    });
    close();
  }
  return plan.carriesAddedRows === true ? [...runs, ...addedRows({ plan, from, to, rowByName })] : runs;
}

/** What stands in rows that people put in between or below ours, in their order, from the first row below the planned. */
function addedRows({
  plan: { identity, carried },
  from,
  to,
  rowByName,
}: {
  plan: CarriedPlan;
  from: Cells;
  to: Cells;
  rowByName: ReadonlyMap<string, number>;
}): readonly CarriedRun[] {
  const named = new Set(rowByName.values());
  const added = from.filter(
    (cells, index) =>
      index >= identity.firstRow - 1 && !named.has(index) && carried.some((column) => !isEmpty(cells[column - 1])),
  );
  const row = identity.firstRow + identity.rows.length;
  if (added.length === 0) return [];
  return carried.map((column) => ({
    row,
    column,
    values: added.map((cells, index) => {
      const present = to[row - 1 + index]?.[column - 1];
      return isEmpty(present) ? (cells[column - 1] ?? '') : present;
    }),
  }));
}

const isEmpty = (cell: CellValue): boolean => cell === '' || cell === null || cell === undefined;

const carries = ({ writable, unprotected }: CarriedPlan, { row, column }: { row: number; column: number }): boolean =>
  [...writable, ...unprotected].some(
    (area) =>
      row >= area.row && row < area.row + area.rows && column >= area.column && column < area.column + area.columns,
  );
