import type { PlaceView, StepView } from '../view.ts';
import type { SheetState } from './sheetState.ts';

/** Where the cells of a sheet stand after its rows moved; undefined where they are gone. */
export interface CellsMoved {
  readonly sheet: SheetState;
  readonly key: (key: number) => number | undefined;
}
export interface StepDone extends StepView {
  /** What moved, so that what others may take back goes along. */
  readonly moved?: CellsMoved;
}
export interface Undoable {
  /** Both leave alone what somebody changed since, and tell the truth about it. */
  undo(): StepDone;
  redo(): StepDone;
  /** The same step after rows moved under it; undefined where it can no longer be taken back safely. */
  follow(moved: CellsMoved): Undoable | undefined;
}

const nothingDone: StepView = { done: false, changed: [], left: [] };
export const stepped = (changed: readonly PlaceView[], left: readonly PlaceView[] = []): StepView => ({
  done: changed.length > 0,
  changed,
  left,
});

const longest = 100;

/** What one window did, newest last. Something new makes an end of what could be done again. */
export class UndoList {
  #done: Undoable[] = [];
  #undone: Undoable[] = [];

  add(entry: Undoable): void {
    this.#done.push(entry);
    if (this.#done.length > longest) this.#done.shift();
    this.#undone = [];
  }
  clear(): void {
    this.#done = [];
    this.#undone = [];
  }
  undo(): StepDone {
    return UndoList.#step(this.#done, this.#undone, 'undo');
  }
  redo(): StepDone {
    return UndoList.#step(this.#undone, this.#done, 'redo');
  }
  static #step(from: Undoable[], to: Undoable[], way: 'undo' | 'redo'): StepDone {
    const entry = from.pop();
    if (!entry) return nothingDone;
    const step = entry[way]();
    // What could not be taken back will not be possible later either; the next try goes on to the entry before.
    if (step.done) to.push(entry);
    return step;
  }
  /** Somebody else moved rows. Entries older than a move of our own were noted for places that are hard to follow. */
  follow(moved: CellsMoved): void {
    const followed: Undoable[] = [];
    for (const entry of this.#done.toReversed()) {
      const next = entry.follow(moved);
      if (!next) break;
      followed.unshift(next);
    }
    this.#done = followed;
    this.#undone = [];
  }
}

/** One list for each window, by its name. Windows that were not heard of for longest are forgotten first. */
export class UndoLists {
  readonly #lists = new Map<string, UndoList>();
  readonly #most: number;

  constructor(most = 100) {
    this.#most = most;
  }
  of(window: string): UndoList {
    const list = this.#lists.get(window) ?? new UndoList();
    this.#lists.delete(window);
    this.#lists.set(window, list);
    const [oldest] = this.#lists.keys();
    if (this.#lists.size > this.#most && oldest !== undefined) this.#lists.delete(oldest);
    return list;
  }
  /** Takes a change of rows into the lists of all windows but the one that made it. */
  follow(moved: CellsMoved, except: string): void {
    for (const [window, list] of this.#lists) if (window !== except) list.follow(moved);
  }
  clear(): void {
    for (const list of this.#lists.values()) list.clear();
  }
}
