import type { CellValue } from '../measurement/cellValue.ts';
import { classShift } from '../workbook/classCells.ts';
import type { CellSent, CellWish } from './calls.ts';
import { cellSent } from './cellSent.ts';
import { isNamed, nameOf } from './rowNames.ts';
import type { Sheet } from './spreadsheet.ts';
import { valuesOf } from './valuesOf.ts';
import { writeTexts } from './writeTexts.ts';

type Cells = readonly (readonly CellValue[])[];

/** What stood in a class sheet when its rows were looked at. */
export interface RowsBefore {
  readonly cells: Cells;
  readonly formulas: readonly (readonly string[])[];
}

/** Rows can be moved by people between reading and writing; after so many rounds the rest waits for the next build. */
const mostRounds = 3;

/** Undefined where no row of a team is written to, so that there is nothing to look after. */
export function rowsBefore(sheet: Sheet, cells: Cells, wanted: readonly CellWish[]): RowsBefore | undefined {
  const isTeams = ({ row }: CellWish): boolean => isNamed(cells[row - 1] ?? []);
  if (classShift(cells) !== 0 || !wanted.some(isTeams)) return undefined;
  return { cells, formulas: sheet.getRange(1, 1, cells.length, cells[0]?.length ?? 1).getFormulas() };
}

/**
 * Looks after writing whether the rows are still where they were. Where somebody put a row in, took one out or sorted them
 * meanwhile, what landed in the row of another step gives way to what stood there, and is written where it belongs. A cell
 * that holds neither, such as one that somebody has just typed in, stays as it is.
 */
export function putRowsRight(sheet: Sheet, written: readonly CellWish[], { cells, formulas }: RowsBefore): void {
  const names = rowNames(cells);
  const rowBefore = rowsByName(names);
  const wishAt = new Map(written.map((wish) => [placeOf(wish), wish]));
  for (let round = 1; round <= mostRounds; round += 1) {
    const now = valuesOf(sheet);
    const namesNow = rowNames(now);
    if (written.every(({ row }) => names[row - 1] === namesNow[row - 1])) return;
    const rowNow = rowsByName(namesNow);
    const seen = new Set<string>();
    for (const { row: strayed, column } of written) {
      for (const row of [strayed, rowNow.get(names[strayed - 1] ?? '')]) {
        if (row === undefined || seen.has(placeOf({ row, column }))) continue;
        seen.add(placeOf({ row, column }));
        const own = rowBefore.get(namesNow[row - 1] ?? '');
        const wish = own === undefined ? undefined : wishAt.get(placeOf({ row: own, column }));
        const was = own === undefined ? '' : (cells[own - 1]?.[column - 1] ?? '');
        const formula = own === undefined ? '' : (formulas[own - 1]?.[column - 1] ?? '');
        const holds = cellSent(now[row - 1]?.[column - 1]);
        const wanted = wish === undefined ? cellSent(was) : wish.now;
        const isOurs = isSame(holds, wishAt.get(placeOf({ row, column }))?.now) || isSame(holds, wish?.was);
        if (isOurs && !isSame(holds, wanted))
          putBack(sheet, { row, column }, wish === undefined ? formula : '', wanted);
      }
    }
  }
}

function putBack(sheet: Sheet, { row, column }: Place, formula: string, value: CellSent): void {
  const cell = sheet.getRange(row, column);
  // In a cell of plain text a formula would be a text, and a text elsewhere might be a number.
  if (formula === '' && typeof value === 'string') cell.setNumberFormat('@');
  if (formula !== '') cell.setNumberFormat('General').setFormula(formula);
  else writeTexts(cell, [[typeof value === 'object' ? new Date(value.date) : value]]);
}

type Place = Pick<CellWish, 'row' | 'column'>;
const placeOf = ({ row, column }: Place): string => `${row},${column}`;
const isSame = (one: CellSent, other: CellSent | undefined): boolean => JSON.stringify(one) === JSON.stringify(other);

const rowsByName = (names: readonly string[]): ReadonlyMap<string, number> =>
  new Map(names.flatMap((name, index) => (name === '' ? [] : [[name, index + 1] as const])));

/** Team, step and how many rows of that name there are above, row by row; rows that are nobody's have none. */
function rowNames(cells: Cells): readonly string[] {
  const counts = new Map<string, number>();
  return cells.map((line) => {
    if (!isNamed(line)) return '';
    const name = nameOf(line);
    const count = counts.get(name) ?? 0;
    counts.set(name, count + 1);
    return `${name} ${count}`;
  });
}
