import { HostException } from '../hostError.ts';
import { emptySheet, type SheetState } from '../sheetState.ts';
import type { ChangeLog } from './changeLog.ts';
import type { Engine } from './engine.ts';

/** The sheets of a workbook in their order: their ids and names, which no two share. */
export class BookSheets {
  readonly all: SheetState[] = [];
  readonly #engine: Engine;
  readonly #log: ChangeLog;
  #nextId = 0;

  constructor(engine: Engine, log: ChangeLog) {
    this.#engine = engine;
    this.#log = log;
  }

  byId(id: number): SheetState {
    const found = this.all.find((sheet) => sheet.id === id);
    if (!found) throw new HostException(`The sheet ${id} no longer exists.`);
    return found;
  }
  named(name: string): SheetState | undefined {
    return this.all.find((sheet) => sheet.name.toLowerCase() === name.toLowerCase());
  }
  add(name: string | undefined, index = this.all.length, id = this.#freeId()): SheetState {
    let title = name;
    for (let count = this.all.length + 1; title === undefined; count += 1) {
      if (!this.named(`Sheet${count}`)) title = `Sheet${count}`;
    }
    if (this.named(title)) throw new HostException(taken(title));
    const state = emptySheet(id, title, this.#engine.addSheet(title));
    this.all.splice(index, 0, state);
    this.#engine.attach(state);
    this.#log.restructure(state);
    return state;
  }
  #freeId(): number {
    // The first sheet of a file has the id 0 on the host, the others any number.
    const id = this.#nextId === 0 ? 0 : 1000 + this.#nextId * 137;
    this.#nextId += 1;
    return this.all.some((sheet) => sheet.id === id) ? this.#freeId() : id;
  }
  refuseRemoving(sheet: SheetState): void {
    if (this.all.length === 1) throw new HostException("You can't remove all the sheets in a document.");
    if (!sheet.hidden && !this.all.some((other) => other !== sheet && !other.hidden)) {
      throw new HostException("You can't remove all the visible sheets in a document.");
    }
  }
  remove(sheet: SheetState): void {
    this.#engine.removeSheet(sheet);
    this.#log.moves += 1;
    this.all.splice(this.all.indexOf(sheet), 1);
    this.#log.remove(sheet);
  }
  refuseName(sheet: SheetState, name: string): void {
    const other = this.named(name);
    if (other && other !== sheet) throw new HostException(taken(name));
  }
  move(sheet: SheetState, index: number): void {
    this.all.splice(this.all.indexOf(sheet), 1);
    this.all.splice(index, 0, sheet);
  }
}

const taken = (name: string): string => `A sheet with the name "${name}" already exists. Please enter another name.`;
