import type { CellWish } from '../../host/calls.ts';
import { cellText } from '../../workbook/cellText.ts';
import { columnIn } from '../../workbook/classCells.ts';
import { classColumns as at, planColumns } from '../../workbook/layout.ts';
import { classesInFile } from '../classes/classesInFile.ts';
import type { Book, BookSheet } from '../file/book.ts';
import { cellWish } from '../file/cellWish.ts';
import { cellsOf } from '../file/sheets.ts';
import { planInFile } from './planInFile.ts';

const isLink = (entry: string): boolean => /https?:\/\//i.test(entry);

/** Cells of a class that tell of people: who is in a team and did what, who was away, links of theirs, and when they typed. */
export function peopleIn(book: Book, id: string): readonly CellWish[] {
  const found = classesInFile(book).find((one) => one.id === id);
  if (found?.sheet === undefined || found.reading === undefined) return [];
  const { sheet, keys } = found;
  const cells = cellsOf(sheet);
  const timeColumn = columnIn(cells, at.lastEntry);
  const entryColumn = columnIn(cells, at.entry);
  const inSheet = found.reading.blocks.flatMap(({ who, headingRow, whoColumn, steps }) => [
    ...(who === '' ? [] : [emptied(sheet, headingRow, whoColumn)]),
    ...steps.flatMap(({ row, who: name, entry, lastEntry }) => [
      ...(isLink(entry) ? [emptied(sheet, row, entryColumn)] : []),
      ...(name === '' ? [] : [emptied(sheet, row, whoColumn)]),
      ...(lastEntry === undefined ? [] : [emptied(sheet, row, timeColumn)]),
    ]),
  ]);
  const plan = planInFile(book);
  if (plan.state !== 'there') return inSheet;
  const { whole, sheet: planSheet } = plan;
  const todayColumn = planColumns.firstGiven + whole.givenNames.length;
  const away = whole.absent.map(({ key }) => key);
  const absences = cellsOf(planSheet).flatMap((line, index) => {
    const key = cellText(line[planColumns.key - 1]);
    const isMarked = index >= whole.places.keys.row && keys.includes(key) && away.includes(key);
    return isMarked ? [emptied(planSheet, index + 1, todayColumn)] : [];
  });
  return [...inSheet, ...absences];
}

const emptied = (sheet: BookSheet, row: number, column: number): CellWish => cellWish(sheet, { row, column }, '');
