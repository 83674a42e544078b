import type { SheetView } from '../view.ts';
import { rowTitle } from './rowNews.ts';

/**
 * Whose rows these are. Rows that one formula fills belong together, and are called by what its own row begins with:
 * in a class's sheet that is the name of the team.
 */
export function whoseRows(sheet: SheetView, rows: Iterable<number>): readonly string[] {
  const wanted = new Set(rows);
  const heads = new Map<number, number>();
  for (const [key, { filledBy }] of Object.entries(sheet.cells)) {
    if (filledBy === undefined) continue;
    const head = Number.parseInt(filledBy, 10);
    heads.set(Number.parseInt(key, 10), head);
    heads.set(head, head);
  }
  const names: string[] = [];
  for (const row of [...wanted].sort((one, other) => one - other)) {
    const head = heads.get(row);
    const name = head === undefined ? '' : rowTitle(sheet, head);
    if (name !== '' && !names.includes(name)) names.push(name);
  }
  return names;
}
