import { type Applied, applySheet, renameTab } from './applyWorkbook.ts';
import { readNote, saveNote } from './buildNote.ts';
import type { ApplyWish, LastTouch, Outcome } from './calls.ts';
import { makeDeskSheet } from './deskSheet.ts';
import { type FileInRun, sheetById } from './fileInRun.ts';
import { hideSheets } from './hideSheets.ts';
import { isUntouched } from './isUntouched.ts';
import { carryLate, type Late } from './lateEntries.ts';
import { notePreparedPlan } from './notePreparedPlan.ts';
import { changed, done } from './outcome.ts';
import { noteKept, tagOf } from './ownSheets.ts';
import { recalculateEveryMinute } from './spreadsheet.ts';
import { hostWords } from './words.ts';

/** Brings sheets to their plans, with what belongs to such a sheet besides its cells. */
export function applyCall(
  file: FileInRun,
  wish: ApplyWish,
): Outcome<Pick<Applied, 'sheetId' | 'made'> & { readonly late?: Late }> {
  const { plan, keptName, replace = false, firstEntries = [], also = [], tab, note, show } = wish;
  if (note?.was !== undefined && note.was !== readNote(file.store)) return changed(hostWords.theBuild);
  if (note?.before !== undefined) saveNote(file.store, note.before);
  const { sheetId, made } = applySheet({ file, plan, keptName, replace, firstEntries });
  const sheet = sheetById(file, sheetId)?.sheet;
  if (tab !== undefined) renameTab(file, { sheetId, ...tab });
  // What comes behind a new sheet names it: the page plans it again where the name was taken.
  if (made && also.length > 0 && sheet?.getName() !== plan.name) return changed(hostWords.theSheet(plan.name));
  const others = also.map((one) => applySheet({ file, ...one }));
  const roles = [wish, ...also].map((one) => one.plan.role);
  if (roles.some(({ kind }) => kind === 'plan')) {
    recalculateEveryMinute(file.spreadsheet);
    makeDeskSheet(file);
  }
  const prepare = roles.find(({ kind }) => kind === 'prepare');
  if (prepare !== undefined) notePreparedPlan({ file, role: prepare, seen: wish.seen });
  if (show === true) sheet?.showSheet().activate();
  const madeAny = made || others.some((other) => other.made);
  const late = afterStep(file, { ...wish, made: madeAny });
  return done({
    sheetId,
    made: madeAny,
    ...(late === undefined ? {} : { late }),
  });
}

/** How far a build has come with a step, or what it leaves with its last one: then also what was typed too late. */
export function afterStep(
  file: FileInRun,
  { note, last, made = false }: Pick<ApplyWish, 'note' | 'last'> & { readonly made?: boolean },
): Late | undefined {
  if (note?.after !== undefined) saveNote(file.store, note.after);
  if (last === undefined) return undefined;
  const late = carryLate(file);
  touchLast(file, made ? { ...last, madeBefore: true } : last);
  return late.carried + late.left + late.away + late.own.length > 0 ? late : undefined;
}

/** What a build leaves: no note, none of the empty sheet that the file began with, and a sheet in view. */
function touchLast(file: FileInRun, { show, madeBefore, emptySheet, hide }: LastTouch): void {
  const empty = sheetById(file, emptySheet);
  if (empty !== undefined && tagOf(file, empty) === undefined && isUntouched(file, empty.sheet)) {
    file.spreadsheet.deleteSheet(empty.sheet);
    file.sheets.splice(file.sheets.indexOf(empty), 1);
  }
  // Asked for once more where its answer was lost: a sheet that somebody opened since then is theirs to look at.
  const isOver = readNote(file.store) === '';
  const shown = isOver ? undefined : sheetById(file, show);
  if (madeBefore) shown?.sheet.activate();
  // A run that stopped may have left one of these in view.
  hideSheets(file, hide, shown);
  // A run may have stopped after it tagged a sheet as kept and before it noted that.
  for (const one of file.sheets) if (one.tag?.state === 'kept') noteKept(file, one);
  saveNote(file.store, '');
}
