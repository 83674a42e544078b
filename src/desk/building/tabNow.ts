import type { ApplyWish } from '../../host/calls.ts';
import { freeName } from '../../workbook/freeName.ts';
import { recognisedSheet } from '../../workbook/recognisedSheet.ts';
import { tabName } from '../../workbook/sheetNames.ts';
import type { Book, BookSheet } from '../file/book.ts';
import { cellsOf } from '../file/sheets.ts';
import { deskWords } from '../words.ts';

/**
 * A tab that is still called as its class was follows the name of the class, and one that came back with its lesson sheds
 * the day that it bore while it was away.
 */
export function tabNow(book: Book, sheet: BookSheet | undefined, className = ''): Pick<ApplyWish, 'tab'> {
  if (sheet === undefined) return {};
  const was = sheet.name;
  const before = recognisedSheet(cellsOf(sheet))?.className ?? '';
  const follows = className !== '' && before !== '' && before !== className && was === tabName(before);
  const wanted = follows ? tabName(className) : deskWords.nameBefore(was);
  if (wanted === was) return {};
  const others = book.sheets.filter(({ id }) => id !== sheet.id).map(({ name }) => name);
  return { tab: { was, now: freeName(wanted, others) } };
}
