import { type Obstacle, obstaclesIn } from '../workbook/obstaclesIn.ts';
import { readClassSheet } from '../workbook/readClassSheet.ts';
import { cellsRead, type SheetInRun } from './fileInRun.ts';
import { hostWords } from './words.ts';

/**
 * Makes room for the checks of a class: what stands in their cells goes into a note on the cell, and then out of it. The
 * note is written first, so that nothing is lost where the run stops between the two.
 */
export function moveAside(one: SheetInRun): readonly Obstacle[] {
  const cells = cellsRead(one);
  const rests = one.tag?.sums;
  const obstacles = (readClassSheet(cells)?.blocks ?? []).flatMap((block) => {
    const found = obstaclesIn(block, cells, rests);
    if (found.length === 0) return [];
    const isFormula = one.sheet.getRange(block.headingRow, block.checkColumn).getFormula() !== '';
    // One that stopped on its way to rest has its formulas still: what shows there is theirs.
    const typed = rests && isFormula ? obstaclesIn(block, cells) : found;
    // In the cell of the check itself a formula that gives other words is one that the host still works out.
    const isAtWork =
      isFormula && typed.some(({ row, column }) => row === block.headingRow && column === block.checkColumn);
    return isAtWork ? [] : typed;
  });
  for (const { row, column, text } of obstacles) {
    const cell = one.sheet.getRange(row, column);
    const note = cell.getNote();
    const words = hostWords.movedAside(cell.getFormula() || text);
    if (!note.includes(words)) cell.setNote(note === '' ? words : `${note}\n${words}`);
    cell.setValue('');
  }
  if (obstacles.length > 0) one.cells = undefined;
  return obstacles;
}
