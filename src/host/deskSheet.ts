import type { Outcome } from './calls.ts';
import { type FileInRun, fileInRun } from './fileInRun.ts';
import { openSpreadsheet, sheetProtections } from './spreadsheet.ts';
import { hostWords } from './words.ts';

const { name, why, protection: described } = hostWords.deskSheet;

/** The host was too busy, or broke off: the same call may do next time. */
const passing = /service|server|time|again|many/i;

/**
 * Makes the hidden sheet by which teacher and students are told apart: protected, with all other editors taken off. It is
 * finished once; whom the owner lets in afterwards stays in. Where the host does not let anybody be taken off, such as a
 * group that the builder is a member of, everybody goes on being let in.
 */
export function makeDeskSheet({ spreadsheet, sheets, desk }: FileInRun): void {
  const present = desk?.protections[0];
  if (present?.getDescription() === described) return;
  let sheet = desk?.sheet ?? spreadsheet.getSheetByName(name);
  if (sheet === null) {
    // First of all, where no new sheet is ever put before it; what is in view stays in view.
    const shown = spreadsheet.getActiveSheet();
    sheet = spreadsheet.insertSheet(name, 0);
    sheets.unshift({ sheet, id: sheet.getSheetId() });
    shown.activate();
  }
  sheet.getRange(1, 1).setValue(why);
  sheet.hideSheet();
  const protection = present ?? sheet.protect();
  try {
    protection.removeEditors(protection.getEditors());
    if (protection.canDomainEdit()) protection.setDomainEdit(false);
  } catch (error) {
    if (passing.test(String(error))) throw error;
  }
  protection.setDescription(described);
}

/**
 * Work that shows or changes the teacher's desk asks first who is there; a file without such a sheet lets everybody in. It
 * is a curb and no wall: whoever may edit the file can read its cells and its script.
 */
export function onDesk<T>(work: (file: FileInRun) => Outcome<T>): Outcome<T> {
  const spreadsheet = openSpreadsheet();
  const sheet = spreadsheet.getSheetByName(name);
  const desk = sheet === null ? undefined : { sheet, id: sheet.getSheetId(), protections: sheetProtections(sheet) };
  const isIn = desk === undefined || desk.protections.every((protection) => protection.canEdit());
  return isIn
    ? work(fileInRun(spreadsheet, desk))
    : { ok: false, problem: { message: hostWords.notTeacher, reason: 'teacher' } };
}
