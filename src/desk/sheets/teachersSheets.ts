import type { SheetKind } from '../../host/calls.ts';
import type { Book } from '../file/book.ts';
import { sheetsInUse } from '../file/sheets.ts';

/** What is the teacher’s alone, in the order in which the sidebar offers it. Students see the other sheets in use. */
export const teachersKinds: readonly SheetKind[] = ['plan', 'prepare', 'help', 'record', 'key'];

/** The teacher’s sheets, which a build leaves hidden: that spares students the search, and keeps nothing secret. */
export const teachersSheets = (book: Book) =>
  sheetsInUse(book)
    .filter(({ tag }) => teachersKinds.includes(tag.kind))
    .sort((one, other) => teachersKinds.indexOf(one.tag.kind) - teachersKinds.indexOf(other.tag.kind));
