import { type FileInRun, sheetById } from './fileInRun.ts';

/** Puts sheets out of sight. The one in view stays, so that nothing goes from under the hands of whoever pressed. */
export function hideSheets(file: FileInRun, ids: readonly number[] = []): void {
  if (ids.length === 0) return;
  const inView = file.spreadsheet.getActiveSheet().getSheetId();
  for (const id of ids) {
    const sheet = id === inView ? undefined : sheetById(file, id)?.sheet;
    if (sheet?.isSheetHidden() === false) sheet.hideSheet();
  }
}
