import type { CellValue } from '../measurement/cellValue.ts';
import { classShift } from '../workbook/classCells.ts';
import type { CellSent, CellWish } from './calls.ts';
import { cellFromPage, cellSent, isSameCell } from './cellSent.ts';
import { isNamed, mostRounds, nameOf } from './rowNames.ts';
import type { Sheet } from './spreadsheet.ts';
import { valuesOf } from './valuesOf.ts';
import { writeTexts } from './writeTexts.ts';

type Cells = readonly (readonly CellValue[])[];

/** What stood in a class sheet when its rows were looked at. */
export interface RowsBefore {
  readonly cells: Cells;
  readonly formulas: readonly (readonly string[])[];
}

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
    const places = written.flatMap(({ row, column }): readonly Place[] => {
      const moved = rowNow.get(names[row - 1] ?? '');
      return [{ row, column }, ...(moved === undefined ? [] : [{ row: moved, column }])];
    });
    for (const place of new Map(places.map((one) => [placeOf(one), one])).values()) {
      const { row, column } = place;
      // A row that was not there has none of these.
      const own = rowBefore.get(namesNow[row - 1] ?? '') ?? 0;
      const wish = wishAt.get(placeOf({ row: own, column }));
      const wanted = wish?.now ?? cellSent(cells[own - 1]?.[column - 1]);
      const holds = cellSent(now[row - 1]?.[column - 1]);
      const isOurs = isSameCell(holds, wishAt.get(placeOf(place))?.now) || isSameCell(holds, wish?.was);
      if (!isOurs || isSameCell(holds, wanted)) continue;
      putBack(sheet, place, wish === undefined ? (formulas[own - 1]?.[column - 1] ?? '') : '', wanted);
    }
  }
}

function putBack(sheet: Sheet, { row, column }: Place, formula: string, value: CellSent): void {
  const cell = sheet.getRange(row, column);
  // In a cell of plain text a formula would be a text, and a text elsewhere might be a number.
  if (formula === '' && typeof value === 'string') cell.setNumberFormat('@');
  if (formula !== '') cell.setNumberFormat('General').setFormula(formula);
  else writeTexts(cell, [[cellFromPage(value)]]);
}

type Place = Pick<CellWish, 'row' | 'column'>;
const placeOf = ({ row, column }: Place): string => `${row},${column}`;

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
