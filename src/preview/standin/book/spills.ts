import { cellKey, cellName, columnOf, rowOf } from '../address.ts';
import type { CallOutcome } from '../enginePlugins.ts';
import type { SheetState, SpilledValue } from '../sheetState.ts';
import type { ChangeLog } from './changeLog.ts';
import type { Engine } from './engine.ts';
import { placeKey } from './places.ts';

const noRows: readonly (readonly SpilledValue[])[] = [['']];

/** Lays array results of scripts into the cells right of and below their formula, as the host does. */
export class Spills {
  readonly #engine: Engine;
  readonly #log: ChangeLog;
  /** Formulas whose room may have changed. */
  readonly #recheck = new Set<string>();
  #roomMade = false;

  constructor(engine: Engine, log: ChangeLog) {
    this.#engine = engine;
    this.#log = log;
  }

  /** A cell got content of its own: what filled it until now has no room any more. */
  covered(sheet: SheetState, key: number): void {
    const filled = sheet.spilled.get(key);
    if (!filled) return;
    sheet.spilled.delete(key);
    this.#recheck.add(placeKey(sheet, filled.from));
  }
  /** A cell was cleared: formulas that found no room may find it now. */
  madeRoom(sheet: SheetState): void {
    this.#roomMade = true;
    for (const blocked of sheet.blocked.keys()) this.#recheck.add(placeKey(sheet, blocked));
  }
  forget(sheet: SheetState, key: number): void {
    sheet.blocked.delete(key);
    if (sheet.results.delete(key)) this.#clear(sheet, key);
  }
  /** Whether room was made since this was asked last. */
  takeRoomMade(): boolean {
    const made = this.#roomMade;
    this.#roomMade = false;
    return made;
  }

  /** Lays out what arrived, and tries again where room changed; true if there was anything to do. */
  absorb(arrived: ReadonlyMap<string, CallOutcome>): boolean {
    for (const [key, outcome] of arrived) {
      const place = this.#engine.place(key);
      if (place?.sheet.cells.get(place.key)?.content?.kind !== 'formula') continue;
      const rows = outcome.kind === 'rows' ? outcome.rows : noRows;
      const single = rows.length === 1 && rows[0]?.length === 1;
      if (single) {
        place.sheet.results.delete(place.key);
        this.#clear(place.sheet, place.key);
        if (place.sheet.blocked.delete(place.key)) this.#engine.reenter(place.sheet, place.key);
      } else {
        place.sheet.results.set(place.key, rows);
        this.layOut(place.sheet, place.key);
      }
    }
    const anyToCheck = this.#recheck.size > 0;
    if (anyToCheck) {
      const recheck = [...this.#recheck];
      this.#recheck.clear();
      for (const key of recheck) {
        const place = this.#engine.place(key);
        if (place?.sheet.results.has(place.key)) this.layOut(place.sheet, place.key);
      }
    }
    this.#engine.reenterOutgrown();
    return arrived.size > 0 || anyToCheck;
  }

  /** Puts an array result into its cells, or says why it cannot. */
  layOut(sheet: SheetState, from: number): void {
    const rows = sheet.results.get(from);
    if (!rows) return;
    const words = this.#obstacle(sheet, from, rows);
    const before = sheet.blocked.get(from);
    if (words !== undefined) {
      this.#clear(sheet, from);
      if (before === words) return;
      sheet.blocked.set(from, words);
      this.#engine.reenter(sheet, from);
      return;
    }
    if (before !== undefined) {
      sheet.blocked.delete(from);
      this.#engine.reenter(sheet, from);
    }
    const wanted = new Set<number>();
    rows.forEach((row, down) => {
      row.forEach((value, across) => {
        const key = cellKey(rowOf(from) + down, columnOf(from) + across);
        if (key === from) return;
        wanted.add(key);
        const there = sheet.spilled.get(key);
        sheet.spilled.set(key, { from, value });
        if (there?.value === value) return;
        this.#engine.fill(sheet, key, value);
        this.#log.mark(sheet, key);
      });
    });
    this.#clear(sheet, from, wanted);
  }

  #obstacle(sheet: SheetState, from: number, rows: readonly (readonly SpilledValue[])[]): string | undefined {
    const top = rowOf(from);
    const left = columnOf(from);
    const missingRows = top + rows.length - 1 - sheet.rows;
    if (missingRows > 0) return `Result was not automatically expanded, please insert more rows (${missingRows}).`;
    const missingColumns = left + (rows[0]?.length ?? 1) - 1 - sheet.columns;
    if (missingColumns > 0) {
      return `Result was not automatically expanded, please insert more columns (${missingColumns}).`;
    }
    for (let down = 0; down < rows.length; down += 1) {
      for (let across = 0; across < (rows[0]?.length ?? 1); across += 1) {
        const key = cellKey(top + down, left + across);
        if (key === from) continue;
        const filledBy = sheet.spilled.get(key)?.from;
        const taken = filledBy === undefined ? this.#engine.isNativeSpill(sheet, key) : filledBy !== from;
        if (sheet.cells.get(key)?.content || taken) {
          return `Array result was not expanded because it would overwrite data in ${cellName(top + down, left + across)}.`;
        }
      }
    }
    return undefined;
  }

  #clear(sheet: SheetState, from: number, except?: ReadonlySet<number>): void {
    for (const [key, spilled] of sheet.spilled) {
      if (spilled.from !== from || except?.has(key)) continue;
      sheet.spilled.delete(key);
      if (sheet.cells.get(key)?.content) continue;
      this.#engine.fill(sheet, key, undefined);
      this.#roomMade = true;
      this.#log.mark(sheet, key);
      for (const blocked of sheet.blocked.keys()) if (blocked !== from) this.#recheck.add(placeKey(sheet, blocked));
    }
  }
}
