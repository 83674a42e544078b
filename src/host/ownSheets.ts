import type { SheetRole } from '../workbook/workbook.ts';
import { documentVisibility, type Sheet, type Spreadsheet } from './spreadsheet.ts';

const tagKey = 'labrow-sheet';

/** What a sheet of ours is, in metadata that stays with it when it is renamed or moved. */
export interface SheetTag {
  readonly kind: SheetRole['kind'];
  readonly className?: string;
  readonly layout: number;
  /** `kept`: an earlier sheet of this role, left as it was. */
  readonly state: 'building' | 'built' | 'kept';
  /** Activity that the rows of a class were built for; unknown for sheets of earlier versions. */
  readonly activity?: string;
  /** Number of the sheet that entries are copied from. */
  readonly from?: number;
}

export interface OwnSheet {
  readonly sheet: Sheet;
  readonly tag: SheetTag;
}

const tagOn = (sheet: Sheet) => sheet.getDeveloperMetadata().find((entry) => entry.getKey() === tagKey);

/** What a sheet is; undefined for one that is not ours. */
export function tagOf(sheet: Sheet): SheetTag | undefined {
  try {
    const tag: unknown = JSON.parse(tagOn(sheet)?.getValue() ?? '');
    return typeof tag === 'object' && tag !== null && 'kind' in tag ? (tag as SheetTag) : undefined;
  } catch {
    return undefined;
  }
}

/** Every sheet that carries our tag, in the order of the tabs. */
export function ownSheets(spreadsheet: Spreadsheet): readonly OwnSheet[] {
  const own: OwnSheet[] = [];
  for (const sheet of spreadsheet.getSheets()) {
    const tag = tagOf(sheet);
    if (tag !== undefined) own.push({ sheet, tag });
  }
  return own;
}

export function writeTag(sheet: Sheet, tag: SheetTag): void {
  const found = tagOn(sheet);
  const words = JSON.stringify(tag);
  if (found === undefined) sheet.addDeveloperMetadata(tagKey, words, documentVisibility());
  else if (found.getValue() !== words) found.setValue(words);
}

/** The sheet in use for a role; sheets that were kept do not count. */
export const sheetInUse = (own: readonly OwnSheet[], role: SheetRole): OwnSheet | undefined =>
  own.find(
    ({ tag }) => tag.state !== 'kept' && tag.kind === role.kind && (tag.className ?? '') === (role.className ?? ''),
  );

/** A role as one text, to name it in a stored list. */
export const roleName = ({ kind, className }: SheetRole): string => JSON.stringify([kind, className ?? '']);
