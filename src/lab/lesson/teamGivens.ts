import type { CellValue } from '../../measurement/cellValue.ts';
import { type GivenCells, plainName } from './givenCells.ts';

/** Longer texts are nothing that a given can be; what is left of one is still too long for every reader. */
const longestGiven = 300;
const shortened = (cell: CellValue): CellValue =>
  typeof cell === 'string' && cell.length > longestGiven ? cell.slice(0, longestGiven) : cell;

/** A team's values by the name of the given. A name that heads two columns is left out: it is reported, never guessed at. */
export function teamGivens(names: readonly CellValue[], values: readonly CellValue[]): GivenCells {
  const cells: Record<string, CellValue> = Object.create(null);
  const plain = names.map(plainName);
  plain.forEach((name, column) => {
    if (name !== '' && plain.indexOf(name) === plain.lastIndexOf(name)) cells[name] = shortened(values[column]);
  });
  return cells;
}
