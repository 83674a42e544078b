/** Time that passes only when it is told to: what is due by then happens, the earliest first. */
export class HostTime {
  now = 0;
  readonly #due: { readonly at: number; readonly happen: () => void }[] = [];

  after(ms: number, happen: () => void): void {
    const at = this.now + ms;
    const place = this.#due.findIndex((other) => other.at > at);
    this.#due.splice(place < 0 ? this.#due.length : place, 0, { at, happen });
  }
  pass(ms: number): void {
    const end = this.now + ms;
    for (;;) {
      const next = this.#due[0];
      if (next === undefined || next.at > end) break;
      this.#due.shift();
      this.now = next.at;
      next.happen();
    }
    this.now = end;
  }
  get isIdle(): boolean {
    return this.#due.length === 0;
  }
}
