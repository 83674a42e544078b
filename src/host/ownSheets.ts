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
  /** Where the tag stands; left out for a sheet that was known by its cells. */
  readonly entry?: GoogleAppsScript.Spreadsheet.DeveloperMetadata;
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

/**
 * Every sheet that is ours, in the order of the tabs: by its tag or, where that is gone, by what stands in it. Sheets
 * that were kept are many after a year and answer nothing: they are asked only where `kept` is true.
 */
export function ownSheets(spreadsheet: Spreadsheet, { kept = false }: { kept?: boolean } = {}): readonly OwnSheet[] {
  const passedOver = kept ? [] : keptIds();
  const sheets = spreadsheet.getSheets().flatMap((sheet) => {
    if (passedOver.length > 0 && passedOver.includes(sheet.getSheetId())) return [];
    const entry = tagOn(sheet);
    return [{ sheet, entry, tag: entry === undefined ? undefined : readTag(entry.getValue() ?? '') }];
  });
  const inUse = new Set(sheets.flatMap(({ tag }) => (tag === undefined || isOld(tag) ? [] : [roleName(tag)])));
  const own: OwnSheet[] = [];
  for (const { sheet, entry, tag: written } of sheets) {
    const tag = written ?? tagByContents(sheet);
    if (tag === undefined) continue;
    if (written === undefined && !isOld(tag)) {
      // Two sheets cannot be in use for one role: beside a tagged one the other is somebody's copy.
      if (inUse.has(roleName(tag))) continue;
      inUse.add(roleName(tag));
    }
    own.push({ sheet, tag, ...(entry === undefined ? {} : { entry }) });
  }
  return own;
}

/** Writes what a sheet is, where the cell that holds it says something else. */
export function writeTag({ sheet, entry }: Pick<OwnSheet, 'sheet' | 'entry'>, tag: SheetTag): void {
  const found = entry ?? tagOn(sheet);
  const words = JSON.stringify(tag);
  if (found === undefined) sheet.addDeveloperMetadata(tagKey, words, documentVisibility());
  else if (found.getValue() !== words) found.setValue(words);
  if (tag.state === 'kept') noteKept(sheet.getSheetId());
}

const keptProperty = 'labrow.kept';

/** Numbers of sheets that are known to be kept. A copy of the file may come without this list, and asks every sheet. */
export function keptIds(): readonly number[] {
  const words = PropertiesService.getDocumentProperties().getProperty(keptProperty) ?? '';
  return words === '' ? [] : words.split(' ').map(Number);
}

function noteKept(sheetId: number): void {
  const ids = keptIds();
  if (!ids.includes(sheetId))
    PropertiesService.getDocumentProperties().setProperty(keptProperty, [...ids, sheetId].join(' '));
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
const roleName = ({ kind, className }: SheetRole): string => JSON.stringify([kind, className ?? '']);
