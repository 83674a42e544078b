import type { CellValue } from '../measurement/cellValue.ts';
import { cellText } from './cellText.ts';
import { words } from './words.ts';
import type { SheetPlan } from './workbook.ts';

/** Lines that a teacher added to Help below the planned ones, step, level, wording and link, to be written anew. */
export function addedHints(cells: readonly (readonly CellValue[])[], plan: SheetPlan): readonly (readonly string[])[] {
  const { help } = words;
  const planned = new Set(plan.identity.rows.map((row) => row.join('\n')));
  const heading = cells.findIndex((line) => cellText(line[0]) === help.step && cellText(line[1]) === help.level);
  if (heading < 0) return [];
  return cells
    .slice(heading + 1)
    .map((line) => [0, 1, 2, 3].map((column) => cellText(line[column])))
    .filter(
      ([step = '', level = '', ...own]) => step !== '' && own.join('') !== '' && !planned.has(`${step}\n${level}`),
    );
}
