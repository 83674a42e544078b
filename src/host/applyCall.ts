import { type Applied, applySheet } from './applyWorkbook.ts';
import { saveNote } from './buildNote.ts';
import type { ApplyWish, LastTouch, Outcome } from './calls.ts';
import { makeDeskSheet } from './deskSheet.ts';
import { isUntouched } from './isUntouched.ts';
import { notePreparedPlan } from './notePreparedPlan.ts';
import { done } from './outcome.ts';
import { tagOf } from './ownSheets.ts';
import { sheetById } from './sheetById.ts';
import { recalculateEveryMinute, type Spreadsheet } from './spreadsheet.ts';

/** Brings one sheet to its plan, with what belongs to such a sheet besides its cells. */
export function applyCall(
  spreadsheet: Spreadsheet,
  wish: ApplyWish,
): Outcome<Pick<Applied, 'sheetId' | 'name' | 'made'>> {
  const { plan, keptName, replace = false, firstEntries = [], tab, note, show } = wish;
  if (note?.before !== undefined) saveNote(note.before);
  const { sheetId, made } = applySheet({ spreadsheet, plan, keptName, replace, firstEntries });
  if (plan.role.kind === 'plan') {
    recalculateEveryMinute(spreadsheet);
    makeDeskSheet(spreadsheet);
  }
  if (plan.role.kind === 'prepare') notePreparedPlan({ spreadsheet, seen: wish.seen });
  if (tab !== undefined) renameTab(spreadsheet, { sheetId, tab });
  if (show === true) sheetById(spreadsheet, sheetId)?.activate();
  afterStep(spreadsheet, wish);
  return done({ sheetId, made, name: sheetById(spreadsheet, sheetId)?.getName() ?? plan.name });
}

/** A tab that somebody has given a name of their own keeps it. */
function renameTab(
  spreadsheet: Spreadsheet,
  { sheetId, tab }: { readonly sheetId: number; readonly tab: { readonly was: string; readonly now: string } },
): void {
  const sheet = sheetById(spreadsheet, sheetId);
  if (sheet?.getName() !== tab.was) return;
  // The host does not tell case apart: a name that differs in nothing else is the sheet’s own.
  const other = spreadsheet.getSheetByName(tab.now);
  if (other === null || other.getSheetId() === sheetId) sheet.setName(tab.now);
}

/** How far a build has come with a step, or what it leaves with its last one. */
export function afterStep(spreadsheet: Spreadsheet, { note, last }: Pick<ApplyWish, 'note' | 'last'>): void {
  if (note?.after !== undefined) saveNote(note.after);
  if (last !== undefined) touchLast(spreadsheet, last);
}

/** What a build leaves: no note, none of the empty sheet that the file began with, and a sheet in view. */
function touchLast(spreadsheet: Spreadsheet, { show, emptySheet }: LastTouch): void {
  const empty = emptySheet === null ? undefined : sheetById(spreadsheet, emptySheet);
  if (empty !== undefined && tagOf(empty) === undefined && isUntouched(empty)) spreadsheet.deleteSheet(empty);
  if (show !== null) sheetById(spreadsheet, show)?.activate();
  saveNote('');
}
