import { cellText } from '../workbook/cellText.ts';
import { layoutFits } from '../workbook/layoutFits.ts';
import { applySheet } from './applyWorkbook.ts';
import { saveNote } from './buildNote.ts';
import type { EmptyFileWish, Outcome } from './calls.ts';
import type { FileInRun, SheetInRun } from './fileInRun.ts';
import { done, problem } from './outcome.ts';
import { otherSheets, ownSheets, sheetInUse } from './ownSheets.ts';
import { recalculateEveryMinute, type Sheet } from './spreadsheet.ts';
import { valuesOf } from './valuesOf.ts';
import { hostWords } from './words.ts';

const ownPrefix = /^labrow/i;

interface Kept {
  readonly one: SheetInRun;
  /** The plain name that it gets once the sheets before it are gone. */
  readonly name: string;
}

/**
 * Empties a copy that is to be given on, and only one that is called by its name. What stays is written anew first and
 * read back; then every other sheet of ours is removed, so that nothing anybody wrote, noted or named there is left.
 * Stopped at any point it can be pressed again: what was to stay is taken from the old sheets until the new ones stand.
 */
export function emptyFile(file: FileInRun, wish: EmptyFileWish): Outcome<{ readonly left: readonly string[] }> {
  const { share: say } = hostWords;
  const { spreadsheet, store } = file;
  const typed = wish.fileName.trim();
  if (typed !== spreadsheet.getName().trim()) {
    return problem({ ...say.name, received: typed === '' ? 'a blank' : `“${typed}”` }, { field: 'fileName' });
  }
  const seesPlan = ownSheets(file).some(({ tag }) => tag.kind === 'plan');
  if (!seesPlan || !wish.anew.some(({ plan }) => plan.role.kind === 'plan')) return problem(say.noLesson);
  const kept: Kept[] = [];
  for (const one of wish.anew) {
    applySheet({ file, replace: true, ...one });
    const made = sheetInUse(ownSheets(file), one.plan.role);
    // Nothing goes before what is to stay was seen to stand.
    if (made === undefined || !stands(made.sheet, one))
      return problem({ ...say.notWritten, where: `“${one.plan.name}”` });
    kept.push({ one: made, name: one.plan.name });
  }
  removeOthers({ file, kept, everything: wish.removeOthers });
  for (const entry of spreadsheet.getDeveloperMetadata()) if (ownPrefix.test(entry.getKey())) entry.remove();
  store.clear();
  saveNote(store, wish.note);
  recalculateEveryMinute(spreadsheet);
  return done({ left: file.sheets.map(({ sheet }) => sheet.getName()) });
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
  file,
  kept,
  everything,
}: {
  file: FileInRun;
  kept: readonly Kept[];
  everything: boolean;
}): void {
  const { spreadsheet, sheets } = file;
  const staying = [...kept.map(({ one }) => one), ...(everything ? [] : otherSheets(file))];
  // The teacher's hidden sheet goes too: whoever takes the file on gets one of their own with the next build.
  const leaving = sheets.filter((one) => !staying.includes(one));
  const leavingIds = leaving.map(({ id }) => id);
  // A name for a range is words that people typed as well.
  for (const named of spreadsheet.getNamedRanges()) {
    if (everything || leavingIds.includes(named.getRange().getSheet().getSheetId())) named.remove();
  }
  kept[0]?.one.sheet.activate();
  for (const one of leaving) {
    spreadsheet.deleteSheet(one.sheet);
    sheets.splice(sheets.indexOf(one), 1);
  }
  const taken = sheets.map(({ sheet }) => sheet.getName());
  for (const { one, name } of kept) if (!taken.includes(name)) one.sheet.setName(name);
}
