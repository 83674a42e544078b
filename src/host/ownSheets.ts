import { recognisedSheet } from '../workbook/recognisedSheet.ts';
import type { SheetRole } from '../workbook/workbook.ts';
import { cellsRead, type FileInRun, type SheetInRun, sheetById } from './fileInRun.ts';
import { documentVisibility } from './spreadsheet.ts';
import { hostWords } from './words.ts';

type Metadata = GoogleAppsScript.Spreadsheet.DeveloperMetadata;

const tagKey = 'labrow-sheet';
const keptKey = 'labrow-kept';

/** What a sheet of ours is, in metadata that stays with it when it is renamed or moved. */
export interface SheetTag {
  readonly kind: SheetRole['kind'];
  readonly className?: string;
  /** The lesson that it belongs to; none for what all lessons share, and in files from before there were several. */
  readonly lesson?: string | undefined;
  readonly layout: number;
  /**
   * `building`: its writing began and has not ended. `leaving`: an old sheet whose place a new one is taking.
   * `kept`: an old sheet of this role, left as it was. `away`: put away with its lesson, until that is opened again.
   */
  readonly state: 'building' | 'built' | 'leaving' | 'kept' | 'away';
  /** Made by an emptying of the file that has not ended. Until all that it makes stands it counts as kept. */
  readonly emptying?: true;
  /** Activity that the rows of a class were built for; unknown for sheets of earlier versions. */
  readonly activity?: string;
  /** Of a class: columns of its table; what stands behind them is people's own. */
  readonly columns?: number;
  /** Number of the sheet itself, so that a search over the file need not ask where each tag stands. */
  readonly sheet?: number;
  /** Of a class at rest: the formula that the check of its first team had. */
  readonly check?: string;
  /** Of a class at rest: sums of the words that its checks had stand beside them, so that what is typed over these is known. */
  readonly sums?: boolean;
  /** Of a sheet that is put away: what the page noted about it. */
  readonly about?: string;
  /** Of a sheet whose tab moves, or that is leaving: whether it is out of sight, since the move shows it for a moment. */
  readonly hidden?: boolean;
  /** Number of the old sheet that entries are copied from. */
  readonly from?: number;
  /** Of a sheet that is leaving: the name it gets, and the one that its successor takes over. */
  readonly keptName?: string;
  readonly name?: string;
}

/** A sheet of ours in a run. */
export type OwnSheet = SheetInRun & { tag: SheetTag };

const isOwn = (one: SheetInRun): one is OwnSheet => one.tag !== undefined;

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
function tagByContents(one: SheetInRun): SheetTag | undefined {
  const found = recognisedSheet(cellsRead(one));
  if (found === undefined) return undefined;
  const name = one.sheet.getName();
  return {
    ...found,
    state: hostWords.isKeptName(name) ? 'kept' : hostWords.isAwayName(name) ? 'away' : 'built',
  };
}

/**
 * Every sheet that is ours, in the order of the tabs: by its tag or, where that is gone, by what stands in it. Sheets
 * that were kept are many after a year and answer nothing: they are not among them.
 */
export function ownSheets(file: FileInRun): readonly OwnSheet[] {
  if (!file.isKnown) lookUpTags(file);
  return file.sheets.filter(isOwn).filter(({ tag }) => tag.state !== 'kept');
}

/** Every sheet that is not ours at all: neither in use nor kept, nor the one that tells teacher and students apart. */
export function otherSheets(file: FileInRun): readonly SheetInRun[] {
  const own = ownSheets(file);
  return file.sheets.filter(
    (one) =>
      !own.some(({ id }) => id === one.id) && !isKept(file, one) && one.sheet.getName() !== hostWords.deskSheet.name,
  );
}

/** What this one is, also where it is kept and the list of kept ones does not say so. */
export function tagOf(file: FileInRun, one: SheetInRun): SheetTag | undefined {
  if (!file.isKnown) lookUpTags(file);
  return one.tag;
}

function lookUpTags(file: FileInRun): void {
  for (const [one, { entry, words, tag }] of tagged(file, tagKey)) Object.assign(one, { entry, words, tag });
  // Nothing can be said of a sheet in which nothing stands, and of the one that tells who is a teacher it is known.
  const filled = file.sheets.filter((one) => {
    if (one.tag !== undefined || one.id === file.desk?.id || keptIds(file).includes(one.id)) return false;
    one.isBlank = one.sheet.getLastRow() === 0;
    return !one.isBlank;
  });
  if (filled.length > 0) for (const [one, { tag }] of tagged(file, keptKey)) one.tag ??= tag;
  const inUse = new Set(file.sheets.flatMap(({ tag }) => (tag === undefined || isOld(tag) ? [] : [roleName(tag)])));
  for (const one of filled) {
    const tag = one.tag === undefined ? tagByContents(one) : undefined;
    if (tag === undefined) continue;
    if (!isOld(tag)) {
      // Two sheets cannot be in use for one role: beside a tagged one the other is somebody's copy.
      if (inUse.has(roleName(tag))) continue;
      inUse.add(roleName(tag));
    }
    one.tag = tag;
  }
  file.isKnown = true;
}

interface Found {
  readonly entry: Metadata;
  readonly words: string;
  readonly tag: SheetTag | undefined;
}

/** The sheets that bear a tag, found in one search of the whole file. */
function tagged(file: FileInRun, key: string): ReadonlyMap<SheetInRun, Found> {
  const entries = file.spreadsheet.createDeveloperMetadataFinder().withKey(key).find();
  const found = entries.map((entry): Found => {
    const words = entry.getValue() ?? '';
    return { entry, words, tag: readTag(words) };
  });
  const places = new Map<SheetInRun, Found>();
  for (const one of found) {
    const { tag, entry } = one;
    // A tag names its sheet. Where somebody made a copy of a sheet, two name the same one, and each is asked where it is.
    const isNamed = tag?.sheet !== undefined && found.filter((other) => other.tag?.sheet === tag.sheet).length === 1;
    const named = isNamed ? sheetById(file, tag.sheet) : undefined;
    const place = named ?? sheetById(file, entry.getLocation().getSheet()?.getSheetId());
    if (place !== undefined && !places.has(place)) places.set(place, one);
  }
  return places;
}

/** Writes what a sheet is, where what says so says something else. */
export function writeTag(file: FileInRun, one: SheetInRun, wanted: SheetTag): void {
  const tag: SheetTag = { ...wanted, sheet: one.id };
  const words = JSON.stringify(tag);
  if (one.words !== words) {
    if (one.words === undefined) one.sheet.addDeveloperMetadata(tagKey, words, documentVisibility());
    else {
      entryOf(one)?.setValue(words);
    }
    one.words = words;
  }
  one.tag = tag;
  if (tag.state === 'kept' && tag.emptying !== true) noteKept(file, one);
}

/** Where its tag stands; a sheet that this run has put in has nothing else there. */
function entryOf(one: SheetInRun): Metadata | undefined {
  one.entry ??= one.sheet.getDeveloperMetadata().find((entry) => one.isNew === true || entry.getKey() === tagKey);
  return one.entry;
}

const keptProperty = 'labrow.kept';

/** Numbers of sheets that are known to be kept. A copy of the file may come without this list, and asks every sheet. */
const keptIds = (file: FileInRun): readonly number[] =>
  file.store
    .read(keptProperty)
    .split(' ')
    .filter((id) => id !== '')
    .map(Number);

/** A kept sheet is known by the list of them, or by its own tag; one whose tag says that it is in use is not kept. */
export const isKept = (file: FileInRun, one: SheetInRun): boolean => {
  const tag = tagOf(file, one);
  return tag === undefined ? keptIds(file).includes(one.id) : tag.state === 'kept';
};

/**
 * Its tag goes by another name from then on, so that the search for those in use passes it over. The list is written last:
 * a sheet that is in it was noted whole.
 */
export function noteKept(file: FileInRun, one: SheetInRun): void {
  const ids = keptIds(file);
  if (ids.includes(one.id)) return;
  entryOf(one)?.setKey(keptKey);
  file.store.write(keptProperty, [...ids, one.id].join(' '));
}

/** In use no more, or not now. */
export const isOld = ({ state }: SheetTag): boolean => state !== 'building' && state !== 'built';

const isOf = (tag: SheetTag, role: SheetRole): boolean => roleName(tag) === roleName(role);

/** The sheet in use for a role; old sheets do not count. */
export const sheetInUse = (own: readonly OwnSheet[], role: SheetRole): OwnSheet | undefined =>
  own.find(({ tag }) => !isOld(tag) && isOf(tag, role));

/** The old sheet of a role whose place a new one is taking. */
export const sheetLeaving = (own: readonly OwnSheet[], role: SheetRole): OwnSheet | undefined =>
  own.find(({ tag }) => tag.state === 'leaving' && isOf(tag, role));

/** The sheet of a role that was put away with its lesson. */
export const sheetAway = (own: readonly OwnSheet[], role: SheetRole): OwnSheet | undefined =>
  own.find(({ tag }) => tag.state === 'away' && isOf(tag, role));

const roleName = ({ kind, className = '', lesson = '' }: SheetRole): string =>
  JSON.stringify([kind, className, lesson]);
