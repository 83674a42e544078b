import type { CellValue } from '../measurement/cellValue.ts';

/** A cell as text, without the blanks around it; a date, which no cell of ours should hold, as nothing. */
export function cellText(cell: CellValue): string {
  if (cell === null || cell === undefined || cell instanceof Date) return '';
  return String(cell).trim();
}
