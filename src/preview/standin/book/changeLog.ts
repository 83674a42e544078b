import type { SheetState } from '../sheetState.ts';

/** What changed since which version: cells, whole sheets, and sheets that went. */
export class ChangeLog {
  version = 1;
  /** By sheet: the version from which a cell looks as it does now. */
  readonly changed = new Map<number, Map<number, number>>();
  readonly restructured = new Map<number, number>();
  readonly removed = new Map<number, number>();
  /** Counts changes that move cells, after which kept positions mean something else. */
  moves = 0;

  mark(sheet: SheetState, key: number): void {
    let cells = this.changed.get(sheet.id);
    if (!cells) {
      cells = new Map();
      this.changed.set(sheet.id, cells);
    }
    cells.set(key, this.version + 1);
  }
  restructure(sheet: SheetState): void {
    this.restructured.set(sheet.id, this.version + 1);
  }
  remove(sheet: SheetState): void {
    this.changed.delete(sheet.id);
    this.restructured.delete(sheet.id);
    this.removed.set(sheet.id, this.version + 1);
  }
}
