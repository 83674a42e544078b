import { cellText } from '../workbook/cellText.ts';
import { layoutFits } from '../workbook/layoutFits.ts';
import { applySheet } from './applyWorkbook.ts';
import { saveNote } from './buildNote.ts';
import type { EmptyFileWish, Outcome } from './calls.ts';
import { done, problem } from './outcome.ts';
import { ownSheets, sheetInUse } from './ownSheets.ts';
import { recalculateEveryMinute, type Sheet, type Spreadsheet } from './spreadsheet.ts';
import { valuesOf } from './valuesOf.ts';
import { hostWords } from './words.ts';

const ownPrefix = /^labrow/i;

interface Kept {
  readonly sheet: Sheet;
  /** The plain name that it gets once the sheets before it are gone. */
  readonly name: string;
}

/**
 * Empties a copy that is to be given on, and only one that is called by its name. What stays is written anew first and
 * read back; then every other sheet of ours is removed, so that nothing anybody wrote, noted or named there is left.
 * Stopped at any point it can be pressed again: what was to stay is taken from the old sheets until the new ones stand.
 */
export function emptyFile(
  spreadsheet: Spreadsheet,
  wish: EmptyFileWish,
): Outcome<{ readonly left: readonly string[] }> {
  const { share: say } = hostWords;
  const typed = wish.fileName.trim();
  if (typed !== spreadsheet.getName().trim()) {
    return problem({ ...say.name, received: typed === '' ? 'a blank' : `“${typed}”` }, { field: 'fileName' });
  }
  const seesPlan = ownSheets(spreadsheet).some(({ tag }) => tag.kind === 'plan' && tag.state !== 'kept');
  if (!seesPlan || !wish.anew.some(({ plan }) => plan.role.kind === 'plan')) return problem(say.noLesson);
  const kept: Kept[] = [];
  for (const one of wish.anew) {
    applySheet({ spreadsheet, replace: true, ...one });
    const sheet = sheetInUse(ownSheets(spreadsheet), one.plan.role)?.sheet;
    // Nothing goes before what is to stay was seen to stand.
    if (sheet === undefined || !stands(sheet, one)) return problem({ ...say.notWritten, where: `“${one.plan.name}”` });
    kept.push({ sheet, name: one.plan.name });
  }
  removeOthers({ spreadsheet, kept, everything: wish.removeOthers });
  for (const entry of spreadsheet.getDeveloperMetadata()) if (ownPrefix.test(entry.getKey())) entry.remove();
  PropertiesService.getDocumentProperties().deleteAllProperties();
  saveNote(wish.note);
  recalculateEveryMinute(spreadsheet);
  return done({ left: spreadsheet.getSheets().map((sheet) => sheet.getName()) });
}

function stands(sheet: Sheet, { plan, firstEntries = [] }: EmptyFileWish['anew'][number]): boolean {
  const cells = valuesOf(sheet);
  return (
    layoutFits(plan, cells) === 'same' &&
    firstEntries.every(({ row, column, texts }) =>
      texts.every((text, down) => cellText(cells[row - 1 + down]?.[column - 1]) === text.trim()),
    )
  );
}

function removeOthers({
  spreadsheet,
  kept,
  everything,
}: {
  spreadsheet: Spreadsheet;
  kept: readonly Kept[];
  everything: boolean;
}): void {
  const stayingIds = kept.map(({ sheet }) => sheet.getSheetId());
  const own = ownSheets(spreadsheet, { kept: true }).map(({ sheet }) => sheet.getSheetId());
  const leaving = spreadsheet
    .getSheets()
    .filter((sheet) => !stayingIds.includes(sheet.getSheetId()))
    .filter((sheet) => everything || own.includes(sheet.getSheetId()));
  const leavingIds = leaving.map((sheet) => sheet.getSheetId());
  // A name for a range is words that people typed as well.
  for (const named of spreadsheet.getNamedRanges()) {
    if (everything || leavingIds.includes(named.getRange().getSheet().getSheetId())) named.remove();
  }
  kept[0]?.sheet.activate();
  for (const sheet of leaving) spreadsheet.deleteSheet(sheet);
  const taken = spreadsheet.getSheets().map((sheet) => sheet.getName());
  for (const { sheet, name } of kept) if (!taken.includes(name)) sheet.setName(name);
}
