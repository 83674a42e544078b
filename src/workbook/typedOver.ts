import { checkHeadings } from '../lab/texts/feedback.ts';
import type { CellValue } from '../measurement/cellValue.ts';
import { cellText } from './cellText.ts';
import { digest } from './digest.ts';
import { classColumns as at, countedColumn } from './layout.ts';
import type { BlockReading } from './readClassSheet.ts';
import { restWords } from './restWords.ts';
import { stateWords } from './stateWords.ts';

type Cells = readonly (readonly CellValue[])[];

/** Hidden, behind the entry that was counted last: sums over the words that the page has written as the checks of a row. */
export const writtenColumn = countedColumn + 1;

/** What is noted beside words that the page writes: a sum for each, and nothing where it has written none. */
export const writtenSums = (words: readonly string[]): string =>
  words.every((text) => text === '') ? '' : words.map(digest).join(' ');

const sumsIn = (line: readonly CellValue[] | undefined): string => cellText(line?.[writtenColumn - 1]);

/**
 * Whether somebody typed in a cell where the page writes its checks, or where those of a lesson that is put away rest:
 * `right` is 0 for the check, 1 for what to look at, 2 for the hint. Words that the page has written anywhere in the block
 * are its own, so that rows may be moved and copied.
 */
export function typedOver(
  { headingRow, closingRow }: Pick<BlockReading, 'headingRow' | 'closingRow'>,
  cells: Cells,
): (row: number, right: number) => boolean {
  const sums = new Set(cells.slice(headingRow, closingRow).flatMap((line) => sumsIn(line).split(' ')));
  // In the order of their columns.
  const headings: readonly string[] = Object.values(checkHeadings);
  return (row, right) => {
    const line = cells[row - 1] ?? [];
    const cell = line[at.check - 1 + right];
    const text = cellText(cell);
    if (text === '') return cell instanceof Date;
    if (row === headingRow) return text !== headings[right] && text !== restWords.checks;
    if (sums.has(digest(text))) return false;
    // Written before the page noted it: the words of such a row stand behind the word of a check.
    return sumsIn(line) !== '' || !stateWords.some(({ word }) => word === cellText(line[at.check - 1]));
  };
}
