import type { SheetRole } from '../workbook/workbook.ts';

/** One sheet that is to be built, or put aside because its class is no longer in the plan. */
export interface BuildTask {
  readonly role: SheetRole;
  readonly label: string;
  readonly putAside?: true;
}

/** How far a build has come. Kept in the document's properties, since each call begins anew. */
export interface BuildMemo {
  readonly tasks: readonly BuildTask[];
  done: number;
  /** Date for the names of sheets that are kept. */
  readonly stamp: string;
  readonly sample: boolean;
  /** By role: the name that its sheet has or will have. Written before the sheet is made, so that it is found again. */
  readonly names: Record<string, string>;
  /** Number of the empty sheet that the file began with, where this is its first build. */
  readonly emptySheet?: number;
  /** Number of the sheet in view when a later build began. */
  readonly shownBefore?: number;
  /** A sheet was made, and with it what is in view has changed. */
  made?: true;
}

const property = 'labrow.build';
/** The host allows 9 kB in one property. */
const pieceLength = 8000;

/** Long lists are kept in several properties; the first says how many there are. */
export function readMemo(): BuildMemo | undefined {
  const stored = PropertiesService.getDocumentProperties().getProperties();
  const count = Number(stored[property] ?? '0');
  let words = '';
  for (let piece = 1; piece <= count; piece += 1) words += stored[`${property}.${piece}`] ?? '';
  try {
    return words === '' ? undefined : (JSON.parse(words) as BuildMemo);
  } catch {
    return undefined;
  }
}

/** The count goes last. A longer list that stops between its pieces reads as no list, and the build is begun again. */
export function saveMemo(memo: BuildMemo): void {
  const words = JSON.stringify(memo);
  const store = PropertiesService.getDocumentProperties();
  let count = 0;
  for (let from = 0; from < words.length; from += pieceLength) {
    count += 1;
    store.setProperty(`${property}.${count}`, words.slice(from, from + pieceLength));
  }
  store.setProperty(property, String(count));
}
