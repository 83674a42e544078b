import { type CellValue, isBlank } from '../../measurement/cellValue.ts';
import { readNumber } from '../../measurement/readNumber.ts';
import { readQuantity } from '../../measurement/readQuantity.ts';
import type { QuantityArgument } from '../quantities/quantityEntry.ts';

/**
 * A given or an entry as a set-up shows it: the number in the unit of its argument, with the figures as typed wherever
 * that unit was meant. Undefined where the cell is blank or holds no such number.
 */
export function shownCell(
  cell: CellValue,
  { argument, decimalMark }: { readonly argument: QuantityArgument; readonly decimalMark: 'point' | 'comma' },
): string | undefined {
  if (isBlank(cell)) return undefined;
  const { kind, name } = argument;
  if (kind === 'formula' || kind === 'ion') return typeof cell === 'string' ? cell.trim() : undefined;
  if (kind === 'number') {
    const read = readNumber(cell, name, { decimalMark });
    return read.ok ? read.value.typed.trim() : undefined;
  }
  const read = readQuantity(cell, kind, name, { decimalMark });
  if (!read.ok) return undefined;
  return read.value.unit === '' ? read.value.typed.trim() : String(read.value.value);
}
