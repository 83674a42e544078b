import type { SheetRole } from '../../workbook/workbook.ts';
import type { Book, BookSheet, Cells } from './book.ts';

type InUse = BookSheet & { readonly tag: NonNullable<BookSheet['tag']> };

/** Every sheet of ours that is in use: what was kept, or is leaving its place to another, does not count. */
export const sheetsInUse = ({ sheets }: Book): readonly InUse[] =>
  sheets.filter((sheet): sheet is InUse => sheet.tag !== null && ['built', 'building'].includes(sheet.tag.state));

/** In a book limited to a lesson sheets go by their bare roles, in the whole book by the lesson as well. */
const isOf =
  ({ kind, className = '', lesson = '' }: SheetRole) =>
  ({ tag }: BookSheet): boolean =>
    tag?.kind === kind && (tag.className ?? '') === className && (tag.lesson ?? '') === lesson;

export const sheetInUse = (book: Book, role: SheetRole): InUse | undefined => sheetsInUse(book).find(isOf(role));

/** The sheet of a role to read from: the one in use or, while that is being made anew, the one that it replaces. */
export function sheetToRead(book: Book, role: SheetRole): BookSheet | undefined {
  const present = sheetInUse(book, role);
  if (present?.tag.state === 'built') return present;
  const leaving = book.sheets.find((sheet) => sheet.tag?.state === 'leaving' && isOf(role)(sheet));
  return leaving ?? present;
}

export const cellsOf = (sheet: BookSheet | undefined): Cells => sheet?.cells ?? [];
