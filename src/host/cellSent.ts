import type { CellValue } from '../measurement/cellValue.ts';
import type { CellSent } from './calls.ts';

/** A cell as it crosses to the page. A date is told by its kind, since it may come from another realm. */
export function cellSent(cell: CellValue): CellSent {
  if (cell === null || cell === undefined) return '';
  if (Object.prototype.toString.call(cell) !== '[object Date]') return cell as CellSent;
  const moment = (cell as Date).getTime();
  return Number.isFinite(moment) ? { date: moment } : '';
}

/** The same on its way back. */
export const cellFromPage = (cell: CellSent): string | number | boolean | Date =>
  typeof cell === 'object' ? new Date(cell.date) : cell;

export const isSameCell = (one: CellSent, other: CellSent | undefined): boolean =>
  JSON.stringify(one) === JSON.stringify(other);
