import { cellText } from '../workbook/cellText.ts';
import { layoutFits } from '../workbook/layoutFits.ts';
import { makeBeside } from './applyWorkbook.ts';
import { saveNote } from './buildNote.ts';
import type { EmptyFileWish, Outcome } from './calls.ts';
import { type FileInRun, type SheetInRun, sheetById } from './fileInRun.ts';
import { done, problem } from './outcome.ts';
import { type OwnSheet, otherSheets, ownSheets, sheetInUse, sheetLeaving, writeTag } from './ownSheets.ts';
import { recalculateEveryMinute, type Sheet } from './spreadsheet.ts';
import { valuesOf } from './valuesOf.ts';
import { hostWords } from './words.ts';

const ownPrefix = /^labrow/i;

/**
 * Empties a copy that is to be given on, and only one that is called by its name. What stays is written anew first and
 * read back; then every other sheet of ours is removed, so that nothing anybody wrote, noted or named there is left.
 * Stopped at any point it can be pressed again, with another wish too: what was to stay is taken from the old sheets until
 * all that is new stands. Until then nothing that it made is in use, and the next press makes it once more, since somebody
 * may have typed in it meanwhile.
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
  const help = helpToRead(file);
  removeHalfMade(file, [...wish.seen.map(({ id }) => id), help?.id]);
  const made: OwnSheet[] = [];
  for (const one of wish.anew) {
    const { plan } = one;
    const anew = makeBeside({ file, ...one, from: plan.role.kind === 'help' ? help : undefined });
    // Nothing goes before what is to stay was seen to stand.
    if (!stands(anew.sheet, one)) return problem({ ...say.notWritten, where: `“${plan.name}”` });
    made.push(anew);
  }
  removeOthers({ file, made, everything: wish.removeOthers });
  const taken = file.sheets.map(({ sheet }) => sheet.getName());
  made.forEach((one, index) => {
    const { emptying: _, ...tag } = one.tag;
    writeTag(file, one, tag);
    const name = wish.anew[index]?.plan.name;
    if (name !== undefined && !taken.includes(name)) one.sheet.setName(name);
  });
  for (const entry of spreadsheet.getDeveloperMetadata()) if (ownPrefix.test(entry.getKey())) entry.remove();
  store.clear();
  saveNote(store, wish.note);
  recalculateEveryMinute(spreadsheet);
  return done({ left: file.sheets.map(({ sheet }) => sheet.getName()) });
}

/** What a press before this one made and nothing is taken from now. */
function removeHalfMade(file: FileInRun, sources: readonly (number | undefined)[]): void {
  const leaving = file.sheets.filter(({ id, tag }) => tag?.emptying === true && !sources.includes(id));
  // The host removes no sheet where all others are out of sight, as a Plan is that has been built from.
  const isLast = file.sheets.every((one) => leaving.includes(one) || one.sheet.isSheetHidden());
  if (isLast) sheetById(file, sources[0])?.sheet.showSheet();
  removeSheets(file, leaving);
}

/** The Help that the page has read its lines from: the one in use or, while that is being made anew, the one before it. */
function helpToRead(file: FileInRun): OwnSheet | undefined {
  const present = sheetInUse(ownSheets(file), { kind: 'help' });
  if (present?.tag.state === 'built') return present;
  return sheetLeaving(ownSheets(file), { kind: 'help' }) ?? present;
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

/**
 * What the new sheets were made from goes last, so that a press after a stop makes the same from it. Before that goes the
 * new ones are in use; of one lesson nothing is left then but its Plan.
 */
function removeOthers({
  file,
  made,
  everything,
}: {
  file: FileInRun;
  made: readonly OwnSheet[];
  everything: boolean;
}): void {
  const staying: readonly SheetInRun[] = [...made, ...(everything ? [] : otherSheets(file))];
  // The teacher's hidden sheet goes too: whoever takes the file on gets one of their own with the next build.
  const leaving = file.sheets.filter((one) => !staying.includes(one));
  const sources: readonly SheetInRun[] = ownSheets(file).filter(
    (one) => leaving.includes(one) && (one.tag.kind === 'plan' || one.tag.kind === 'help'),
  );
  const leavingIds = leaving.map(({ id }) => id);
  // A name for a range is words that people typed as well.
  for (const named of file.spreadsheet.getNamedRanges()) {
    if (everything || leavingIds.includes(named.getRange().getSheet().getSheetId())) named.remove();
  }
  made[0]?.sheet.activate();
  removeSheets(
    file,
    leaving.filter((one) => !sources.includes(one)),
  );
  for (const one of made) writeTag(file, one, { ...one.tag, state: 'built' });
  removeSheets(file, sources);
}

function removeSheets({ spreadsheet, sheets }: FileInRun, leaving: readonly SheetInRun[]): void {
  for (const one of leaving) {
    spreadsheet.deleteSheet(one.sheet);
    sheets.splice(sheets.indexOf(one), 1);
  }
}
