import type { SheetRole } from '../../workbook/workbook.ts';
import type { Book, BookSheet } from '../file/book.ts';
import { type AwayNote, readAwayNote } from './awayNote.ts';

/** What a lesson has of its own; all other sheets are shared by all lessons. */
const ownKinds: readonly SheetRole['kind'][] = ['plan', 'prepare', 'class'];

/** A lesson of the file: an activity with a substance, for some classes, begun on a day. */
export interface LessonInFile {
  /** Day and number, or empty for the one lesson of a file from before there were several. */
  readonly id: string;
  /** Year-month-day on which it was begun; empty where nobody noted it. */
  readonly begun: string;
  /**
   * The file as if it held this lesson alone: whatever is worked out for a file is worked out from this for a lesson. Of
   * sheets of other lessons only the names are left.
   */
  readonly book: Book;
}

/** A class sheet that was put away with its lesson. */
export interface SheetAway {
  readonly sheet: BookSheet;
  readonly lesson: string;
  readonly note: AwayNote;
}

type Tag = NonNullable<BookSheet['tag']>;
const lessonOf = ({ lesson = '' }: Tag): string => lesson;
const isOwn = ({ kind }: Tag): boolean => ownKinds.includes(kind);
const isAway = ({ state }: Tag): boolean => state === 'away';

/** Every lesson that some class is at, in the order in which they were begun. */
export function lessonsInUse(book: Book): readonly LessonInFile[] {
  const ids = book.sheets.flatMap(({ tag }) => (tag !== null && isOwn(tag) && !isAway(tag) ? [lessonOf(tag)] : []));
  return sorted(ids).map((id) => ({ id, begun: begunOn(id), book: lessonBook(book, id) }));
}

/** Class sheets that were put away, in the order in which their lessons were begun. */
export function sheetsAway(book: Book): readonly SheetAway[] {
  const away = book.sheets.flatMap((sheet) =>
    sheet.tag !== null && sheet.tag.kind === 'class' && isAway(sheet.tag)
      ? [{ sheet, lesson: lessonOf(sheet.tag), note: readAwayNote(sheet.tag) }]
      : [],
  );
  return sorted(away.map(({ lesson }) => lesson)).flatMap((id) => away.filter(({ lesson }) => lesson === id));
}

const sorted = (ids: readonly string[]): readonly string[] => [...new Set(ids)].sort(inOrder);

/** Days before days, and of one day the second before the tenth. */
const inOrder = (one: string, other: string): number => one.localeCompare(other, 'en', { numeric: true });

/**
 * A book limited to one lesson: its sheets go by their bare roles, what was put away of it is left out with its teams, and
 * of sheets of other lessons only the names are left.
 */
export function lessonBook(book: Book, id: string): Book {
  const away = sheetsAway(book).filter(({ lesson }) => lesson === id);
  return {
    ...book,
    begun: begunOn(id),
    away: [...(book.away ?? []), ...away.flatMap(({ note }) => note.keys)],
    sheets: book.sheets.map((sheet): BookSheet => {
      const { tag } = sheet;
      if (tag === null || !isOwn(tag)) return sheet;
      if (lessonOf(tag) !== id || isAway(tag)) return { id: sheet.id, name: sheet.name, tag: null, kept: true };
      const { lesson: _, ...bare } = tag;
      return { ...sheet, tag: bare };
    }),
  };
}

/**
 * The book as it is once a lesson that was put away is in use again: so it is planned before it is opened. Of its classes
 * those come back whose sheets are found by one of these names, or all.
 */
export const awakened = (book: Book, id: string, classes?: readonly string[]): Book => ({
  ...book,
  sheets: book.sheets.map((sheet): BookSheet => {
    const { tag } = sheet;
    if (tag === null || !isAway(tag) || lessonOf(tag) !== id) return sheet;
    const comes = tag.kind !== 'class' || classes === undefined || classes.includes(tag.className ?? '');
    return comes ? { ...sheet, tag: { ...tag, state: 'built' } } : sheet;
  }),
});

/** A lesson has its day and, where several begin on one, their number. */
export function freshLessonId(book: Book): string {
  const taken = book.sheets.map(({ tag }) => tag?.lesson);
  for (let number = 1; ; number += 1) {
    const id = `${book.today}.${number}`;
    if (!taken.includes(id)) return id;
  }
}

export const begunOn = (id: string): string => id.slice(0, 10);

/** The sheets that belong to a lesson, put away or not. */
export const sheetsOfLesson = (book: Book, id: string): readonly BookSheet[] =>
  book.sheets.filter(({ tag }) => tag !== null && isOwn(tag) && lessonOf(tag) === id);

/** A bare role as the sheet of a lesson has it in the file. */
export const ofLesson = (role: SheetRole, id: string): SheetRole =>
  ownKinds.includes(role.kind) && id !== '' ? { ...role, lesson: id } : role;

/**
 * The lesson that is spoken of: the one that was chosen, or that of the class in front, or the one that was begun last.
 * Undefined in a file without any.
 */
export function lessonShown(book: Book, chosen: string | undefined): LessonInFile | undefined {
  const all = lessonsInUse(book);
  const front = book.sheets.find(({ id, tag }) => id === book.activeSheet && tag?.kind === 'class')?.tag;
  const inFront = front === undefined || front === null ? undefined : lessonOf(front);
  const found = (id: string | undefined) => all.find((one) => id !== undefined && one.id === id);
  // One whose Plan was still being written when the run stopped holds nothing yet: another is spoken of, if there is one.
  const standing = all.filter(isStanding);
  return found(chosen) ?? found(inFront) ?? standing[standing.length - 1] ?? all[all.length - 1];
}

const isStanding = ({ book }: LessonInFile): boolean =>
  book.sheets.some(({ tag }) => tag?.kind === 'plan' && tag.state !== 'building');

/** The book limited to that lesson, or the book as it is where the file has none. */
export const bookShown = (book: Book, chosen: string | undefined): Book => lessonShown(book, chosen)?.book ?? book;
