import { type CellValue, isBlank } from '../../measurement/cellValue.ts';
import { readNumber } from '../../measurement/readNumber.ts';
import { readQuantity } from '../../measurement/readQuantity.ts';
import { withDecimalMark } from '../../measurement/withDecimalMark.ts';
import type { QuantityArgument } from '../quantities/quantityEntry.ts';

/**
 * A given or an entry as a set-up shows it: the number in the unit of its argument, with the figures as typed wherever
 * that unit was meant, and with the class's own mark where no mark was typed. Undefined where the cell is blank or holds
 * no such number.
 */
export function shownCell(
  cell: CellValue,
  { argument, decimalMark }: { readonly argument: QuantityArgument; readonly decimalMark: 'point' | 'comma' },
): string | undefined {
  if (isBlank(cell)) return undefined;
  const { kind, name } = argument;
  if (kind === 'formula' || kind === 'ion') return typeof cell === 'string' ? cell.trim() : undefined;
  const read =
    kind === 'number' ? readNumber(cell, name, { decimalMark }) : readQuantity(cell, kind, name, { decimalMark });
  if (!read.ok) return undefined;
  const isAsTyped = typeof cell === 'string' && !('unit' in read.value && read.value.unit !== '');
  return isAsTyped ? cell.trim() : withDecimalMark(String(read.value.value), decimalMark);
}
