import type { SheetKind } from './calls.ts';
import type { FileInRun } from './fileInRun.ts';
import { ownSheets } from './ownSheets.ts';

/** Puts sheets out of sight. The one in view stays, so that nothing goes from under the hands of whoever pressed. */
export function hideSheets(file: FileInRun, kinds: readonly SheetKind[] = []): void {
  if (kinds.length === 0) return;
  const inView = file.spreadsheet.getActiveSheet().getSheetId();
  for (const { sheet, id, tag } of ownSheets(file)) {
    if (id !== inView && kinds.includes(tag.kind) && !sheet.isSheetHidden()) sheet.hideSheet();
  }
}
