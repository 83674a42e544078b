import { badGiven, badSetting } from '../../lab/texts/feedback.ts';
import { cellText } from '../../workbook/cellText.ts';
import { planColumns } from '../../workbook/layout.ts';
import type { BlockReading } from '../../workbook/readClassSheet.ts';
import type { PlanReading } from '../../workbook/readLesson.ts';
import { columnLetters } from '../../workbook/reference.ts';
import { words } from '../../workbook/words.ts';
import type { BookSheet } from '../file/book.ts';
import { cellsOf } from '../file/sheets.ts';

/**
 * The number or the setting of the Plan that the checks of a team cannot use, as a sentence with its cell; undefined where
 * they can use all. A team reads of it “Tell your teacher”.
 */
export function badGivenOf(
  { key, steps }: BlockReading,
  { reading, sheet }: { readonly reading: PlanReading; readonly sheet: BookSheet },
): string | undefined {
  const cells = cellsOf(sheet);
  const { settings, keys, givenHeadings } = reading.places;
  const said = ({ row, column, name }: { row: number; column: number; name: string }) =>
    words.classNow.badGiven({
      cell: `${columnLetters(column)}${row}`,
      name,
      typed: cellText(cells[row - 1]?.[column - 1]),
    });
  const isSaid = (text: string) => steps.some(({ lookAt }) => lookAt === text);
  const rowIn = (column: number, from: number, is: (text: string) => boolean) =>
    cells.findIndex((line, index) => index >= from && is(cellText(line[column - 1]))) + 1;
  const given = reading.givenNames.findIndex((name) => isSaid(badGiven(name)));
  const row = rowIn(planColumns.key, keys.row, (text) => text === key);
  if (given >= 0 && row > 0)
    return said({ row, column: givenHeadings.column + given, name: reading.givenNames[given] ?? '' });
  const setting = Object.keys(reading.setup.settings).find((name) => isSaid(badSetting(name)));
  const line = rowIn(settings.column, settings.row, (text) => text.toLowerCase() === setting);
  return setting === undefined || line === 0
    ? undefined
    : said({ row: line, column: settings.column + 1, name: setting });
}
