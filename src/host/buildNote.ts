import type { FileStore } from './fileStore.ts';

const property = 'labrow.build';
/** The host allows 9 kB in one property. */
const pieceLength = 8000;

/** What the page noted about a build that is under way. A long note is kept in several properties; the first counts them. */
export function readNote(store: FileStore): string {
  const count = Number(store.read(property));
  let note = '';
  for (let piece = 1; piece <= count; piece += 1) note += store.read(`${property}.${piece}`);
  return note;
}

/** The count goes last: a longer note that stops between its pieces reads as none, and the build is begun again. */
export function saveNote(store: FileStore, note: string): void {
  let count = 0;
  for (let from = 0; from < note.length; from += pieceLength) {
    count += 1;
    store.write(`${property}.${count}`, note.slice(from, from + pieceLength));
  }
  store.write(property, String(count));
}
