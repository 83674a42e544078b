import { quoted } from '../../errors/quoted.ts';
import { failure, type Result, success } from '../../errors/result.ts';
import type { CellValue } from '../../measurement/cellValue.ts';
import { fillQuantity } from '../judging/fillQuantity.ts';
import { plainName, readGivenCells } from '../lesson/givenCells.ts';
import { shownCell } from '../lesson/shownCell.ts';
import { type QuantityName, quantities } from '../quantities.ts';
import { quantityHint } from './quantityHint.ts';

/**
 * Help with one quantity: level 1 the idea, 2 the relation, 3 the set-up with the given numbers and no result.
 *
 * @param table - Two columns, name and value, with the names that the quantity takes.
 * @returns Fails as the table or a number in it does, or with `hint-level`.
 */
export function hintForQuantity(
  quantity: QuantityName,
  table: readonly (readonly CellValue[])[],
  level: CellValue,
): Result<string> {
  const wanted = typeof level === 'string' ? Number(plainName(level)) : level;
  if (wanted !== 1 && wanted !== 2 && wanted !== 3) {
    return failure({
      code: 'hint-level',
      argument: 'level',
      received: quoted(level),
      advice: 'Type 1 for the idea, 2 for the relation or 3 for the set-up with your numbers.',
    });
  }
  const entry = quantities[quantity];
  const cells = readGivenCells(entry, table);
  if (!cells.ok) return cells;
  // Read whole, so that a number which could not be checked is not shown in a set-up either.
  const prepared = fillQuantity(entry, cells.value, {});
  if (!prepared.ok) return prepared;
  const textOf = (name: string): string | undefined => {
    const argument = entry.takes.find((taken) => taken.name === name);
    return argument && shownCell(cells.value[name], { argument, decimalMark: 'point' });
  };
  return success(quantityHint(quantity, { level: wanted, textOf }));
}
