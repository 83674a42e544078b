export interface Undoable {
  /** False where it can no longer be undone without losing what was typed since. */
  readonly undo: () => boolean;
  readonly redo: () => boolean;
}

/** What one seat did, newest last. Something new makes an end of what could be done again. */
export class UndoList {
  #done: Undoable[] = [];
  #undone: Undoable[] = [];

  add(entry: Undoable): void {
    this.#done.push(entry);
    if (this.#done.length > 100) this.#done.shift();
    this.#undone = [];
  }
  clear(): void {
    this.#done = [];
    this.#undone = [];
  }
  undo(): boolean {
    return UndoList.#step(this.#done, this.#undone, 'undo');
  }
  redo(): boolean {
    return UndoList.#step(this.#undone, this.#done, 'redo');
  }
  static #step(from: Undoable[], to: Undoable[], way: keyof Undoable): boolean {
    const entry = from.at(-1);
    if (!entry?.[way]()) return false;
    from.pop();
    to.push(entry);
    return true;
  }
}
