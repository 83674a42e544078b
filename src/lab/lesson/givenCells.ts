import { quoted } from '../../errors/quoted.ts';
import { failure, type Result, success } from '../../errors/result.ts';
import { type CellValue, isBlank } from '../../measurement/cellValue.ts';
import type { QuantityEntry } from '../quantities/quantityEntry.ts';

/** Cells by the name of the given. */
export type GivenCells = Readonly<Record<string, CellValue>>;

/** A name as it is looked up: case and spacing do not matter. */
export const plainName = (cell: CellValue): string =>
  typeof cell === 'string'
    ? cell
        .trim()
        .toLowerCase()
        .replace(/[\s_]+/g, ' ')
    : '';

/** The names that a quantity takes, for messages: `formula, molarity, volume, purity if there is one`. */
export const namesTaken = ({ takes }: QuantityEntry): string =>
  takes.map(({ name, optional }) => (optional ? `${name} if you have one` : name)).join(', ');

/**
 * A `given` table, two columns of name and value, as cells by name. Rows without a name are passed over.
 *
 * @returns Fails with `given-shape`, `given-unknown`, `given-twice` or `given-missing`; each lists the names taken.
 */
export function readGivenCells(quantity: QuantityEntry, table: readonly (readonly CellValue[])[]): Result<GivenCells> {
  const cells: Record<string, CellValue> = Object.create(null);
  for (const row of table) {
    if (row.length !== 2) {
      return failure({
        code: 'given-shape',
        argument: 'given',
        received: row.length === 1 ? 'one column' : `${row.length} columns`,
        advice: `Put the names in the first: ${namesTaken(quantity)}.`,
      });
    }
    const [nameCell, value] = row;
    if (isBlank(nameCell)) continue;
    const name = plainName(nameCell);
    if (!quantity.takes.some((argument) => argument.name === name)) {
      return failure({
        code: 'given-unknown',
        argument: 'given',
        received: quoted(nameCell),
        advice: `For ${quantity.name}, give ${namesTaken(quantity)}.`,
        brief: quoted(nameCell),
      });
    }
    if (name in cells) {
      return failure({
        code: 'given-twice',
        argument: 'given',
        received: quoted(nameCell),
        advice: `Keep one row for each of ${namesTaken(quantity)}.`,
        brief: name,
      });
    }
    cells[name] = value;
  }
  return success(cells);
}
