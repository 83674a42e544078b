import { recognisedSheet } from '../workbook/recognisedSheet.ts';
import type { SheetRole } from '../workbook/workbook.ts';
import { documentVisibility, type Sheet, type Spreadsheet } from './spreadsheet.ts';
import { hostWords } from './words.ts';

const tagKey = 'labrow-sheet';

/** What a sheet of ours is, in metadata that stays with it when it is renamed or moved. */
export interface SheetTag {
  readonly kind: SheetRole['kind'];
  readonly className?: string;
  readonly layout: number;
  /**
   * `building`: its writing began and has not ended. `leaving`: an old sheet whose place a new one is taking.
   * `kept`: an old sheet of this role, left as it was.
   */
  readonly state: 'building' | 'built' | 'leaving' | 'kept';
  /** Activity that the rows of a class were built for; unknown for sheets of earlier versions. */
  readonly activity?: string;
  /** Number of the old sheet that entries are copied from. */
  readonly from?: number;
  /** Of a sheet that is leaving: the name it gets, and the one that its successor takes over. */
  readonly keptName?: string;
  readonly name?: string;
}

export interface OwnSheet {
  readonly sheet: Sheet;
  readonly tag: SheetTag;
}

const tagOn = (sheet: Sheet) => sheet.getDeveloperMetadata().find((entry) => entry.getKey() === tagKey);

/** What a sheet is by its tag; undefined for one without. A host that fails to answer is no answer: its error goes on. */
export function tagOf(sheet: Sheet): SheetTag | undefined {
  const words = tagOn(sheet)?.getValue() ?? '';
  return words === '' ? undefined : readTag(words);
}

function readTag(words: string): SheetTag | undefined {
  try {
    const tag: unknown = JSON.parse(words);
    return typeof tag === 'object' && tag !== null && 'kind' in tag ? (tag as SheetTag) : undefined;
  } catch {
    // Words under our key that are no tag: somebody wrote them by hand.
    return undefined;
  }
}

/**
 * What a sheet without a tag is by what stands in it, since nobody says that a copied file keeps its metadata. It is
 * tagged again when it is next built.
 */
function tagByContents(sheet: Sheet): SheetTag | undefined {
  if (sheet.getLastRow() === 0) return undefined;
  const found = recognisedSheet(sheet.getDataRange().getValues());
  if (found === undefined) return undefined;
  return { ...found, state: hostWords.isKeptName(sheet.getName()) ? 'kept' : 'built' };
}

/** Every sheet that is ours, in the order of the tabs: by its tag or, where that is gone, by what stands in it. */
export function ownSheets(spreadsheet: Spreadsheet): readonly OwnSheet[] {
  const sheets = spreadsheet.getSheets().map((sheet) => ({ sheet, tag: tagOf(sheet) }));
  const inUse = new Set(sheets.flatMap(({ tag }) => (tag === undefined || isOld(tag) ? [] : [roleName(tag)])));
  const own: OwnSheet[] = [];
  for (const { sheet, tag: written } of sheets) {
    const tag = written ?? tagByContents(sheet);
    if (tag === undefined) continue;
    if (written === undefined && !isOld(tag)) {
      // Two sheets cannot be in use for one role: beside a tagged one the other is somebody's copy.
      if (inUse.has(roleName(tag))) continue;
      inUse.add(roleName(tag));
    }
    own.push({ sheet, tag });
  }
  return own;
}

export function writeTag(sheet: Sheet, tag: SheetTag): void {
  const found = tagOn(sheet);
  const words = JSON.stringify(tag);
  if (found === undefined) sheet.addDeveloperMetadata(tagKey, words, documentVisibility());
  else if (found.getValue() !== words) found.setValue(words);
}

const isOld = ({ state }: SheetTag): boolean => state === 'kept' || state === 'leaving';

const isOf = (tag: SheetTag, role: SheetRole): boolean =>
  tag.kind === role.kind && (tag.className ?? '') === (role.className ?? '');

/** The sheet in use for a role; old sheets do not count. */
export const sheetInUse = (own: readonly OwnSheet[], role: SheetRole): OwnSheet | undefined =>
  own.find(({ tag }) => !isOld(tag) && isOf(tag, role));

/** The old sheet of a role whose place a new one is taking. */
export const sheetLeaving = (own: readonly OwnSheet[], role: SheetRole): OwnSheet | undefined =>
  own.find(({ tag }) => tag.state === 'leaving' && isOf(tag, role));

/** A role as one text, to name it in a stored list. */
export const roleName = ({ kind, className }: SheetRole): string => JSON.stringify([kind, className ?? '']);
