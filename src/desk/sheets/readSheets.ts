import { classesInUse } from '../classes/classesInUse.ts';
import { ask, type Work } from '../file/ask.ts';
import type { Book } from '../file/book.ts';
import { type File, look, noted } from '../file/look.ts';
import { sheetsInUse } from '../file/sheets.ts';
import { done, type Outcome, problem } from '../outcome.ts';
import type { SheetsView } from '../views.ts';
import { deskWords } from '../words.ts';
import { linkTo } from './linkTo.ts';
import { teachersKinds, teachersSheets } from './teachersSheets.ts';

const kinds = ['plan', 'class'] as const;

/** The teacher’s sheets, and where the students of each class find theirs. */
export function* readSheets(file: File): Work<Outcome<SheetsView>> {
  const answer = yield* ask('readBook', { kinds, address: true });
  if (!answer.ok) return answer;
  const book = noted(file, answer.value, kinds);
  const { address = '' } = answer.value;
  return done({
    teachers: teachersSheets(book).map(({ id, name, tag }) => ({ id, name, kind: tag.kind })),
    classes: builtClasses(book).map(({ name, id }) => ({ name, address: linkTo(address, id) })),
  });
}

const builtClasses = (book: Book): readonly { readonly name: string; readonly id: number }[] =>
  classesInUse(book).flatMap(({ name, sheet }) => (sheet?.tag?.state === 'built' ? [{ name, id: sheet.id }] : []));

const firstClassOf = (book: Book): number | undefined =>
  sheetsInUse(book).find(({ tag }) => tag.kind === 'class' && tag.state === 'built')?.id;

export const openSheet = (_: File, sheetId: number): Work<Outcome<null>> => ask('show', { sheetId });

/** Hides the teacher’s sheets again. Where one of them is in view, the first class comes in its place. */
export function* hideTeachersSheets(file: File): Work<Outcome<null>> {
  const book = yield* look(file, []);
  if (!book.ok) return book;
  const { activeSheet } = book.value;
  const isIn = teachersSheets(book.value).some(({ id }) => id === activeSheet);
  const sheetId = isIn ? firstClassOf(book.value) : activeSheet;
  return sheetId === undefined ? problem(deskWords.noClassSheet) : yield* ask('show', { sheetId, hide: teachersKinds });
}
