import type { CellValue } from '../measurement/cellValue.ts';
import { cellText } from './cellText.ts';
import { columnIn } from './classCells.ts';
import { isAtWork } from './isAtWork.ts';
import { classColumns as at } from './layout.ts';
import type { BlockReading } from './readClassSheet.ts';
import { columnLetters } from './reference.ts';
import { typedOver } from './typedOver.ts';
import { checksAreWritten } from './writtenChecks.ts';

/**
 * Something that stands where the checks of a team have to show. It keeps all of them from showing where they are a
 * formula's, and its own where the page writes them.
 */
export interface Obstacle {
  readonly row: number;
  readonly column: number;
  /** As the sheet names it, such as D47. */
  readonly cell: string;
  readonly text: string;
}

/** What the host itself shows in the cell of a check that failed or found no room. */
const failed = /^#/;

/**
 * What people typed where the checks of a block show, row by row. Where they are a formula's, only of a block whose checks
 * do not show: there everything that stands in their cells was typed, unless the host is still at work. Values only, so a
 * formula of theirs is told by what it gives.
 */
export function obstaclesIn(
  { known, headingRow, closingRow }: Pick<BlockReading, 'known' | 'headingRow' | 'closingRow'>,
  cells: readonly (readonly CellValue[])[],
  /** Whether the words that stand there are texts, with their sums beside them. */
  areTexts = checksAreWritten(cells),
): readonly Obstacle[] {
  const [first, last] = [columnIn(cells, at.check), columnIn(cells, at.hint)];
  const check = cellText(cells[headingRow - 1]?.[first - 1]);
  const isTyped = areTexts ? typedOver({ headingRow, closingRow }, cells) : undefined;
  if (isTyped === undefined && (known || isAtWork(check))) return [];
  const found: Obstacle[] = [];
  for (let row = headingRow; row <= closingRow; row += 1) {
    for (let column = first; column <= last; column += 1) {
      const cell = cells[row - 1]?.[column - 1];
      const text = cell instanceof Date ? cell.toISOString() : cellText(cell);
      const isCheck = row === headingRow && column === first;
      if (text === '' || (isCheck && failed.test(text)) || isTyped?.(row, column - first) === false) continue;
      found.push({ row, column, cell: `${columnLetters(column)}${row}`, text });
    }
  }
  return found;
}
