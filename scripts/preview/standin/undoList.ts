export interface Undoable {
  readonly undo: () => void;
  readonly redo: () => void;
}

/** What one seat did, newest last. Something new makes an end of what could be done again. */
export class UndoList {
  readonly #done: Undoable[] = [];
  #undone: Undoable[] = [];

  add(entry: Undoable): void {
    this.#done.push(entry);
    if (this.#done.length > 100) this.#done.shift();
    this.#undone = [];
  }
  undo(): boolean {
    const entry = this.#done.pop();
    if (!entry) return false;
    entry.undo();
    this.#undone.push(entry);
    return true;
  }
  redo(): boolean {
    const entry = this.#undone.pop();
    if (!entry) return false;
    entry.redo();
    this.#done.push(entry);
    return true;
  }
}
