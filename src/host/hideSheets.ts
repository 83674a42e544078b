import type { SheetKind } from './calls.ts';
import type { FileInRun, SheetInRun } from './fileInRun.ts';
import { ownSheets } from './ownSheets.ts';

/**
 * Puts sheets out of sight. The one in view stays, so that nothing goes from under the hands of whoever pressed, unless
 * there is another that comes to the front `instead`.
 */
export function hideSheets(file: FileInRun, kinds: readonly SheetKind[] = [], instead?: SheetInRun): void {
  if (kinds.length === 0) return;
  const own = ownSheets(file).filter(({ tag }) => kinds.includes(tag.kind));
  let inView = file.spreadsheet.getActiveSheet().getSheetId();
  if (instead !== undefined && own.some(({ id }) => id === inView)) {
    instead.sheet.activate();
    inView = instead.id;
  }
  for (const { sheet, id } of own) if (id !== inView && !sheet.isSheetHidden()) sheet.hideSheet();
}
