import { cellKey } from '../address.ts';
import type { CallOutcome, EngineCall } from '../enginePlugins.ts';
import type { SheetState } from '../sheetState.ts';
import type { Engine } from './engine.ts';
import { addressKey, movePlaces, placeKey } from './places.ts';

export interface ScriptRunner {
  readonly names: readonly string[];
  /** Runs a function of the script for a cell; exactly one call on the host. */
  call(call: EngineCall): CallOutcome;
}

const nothingArrived: ReadonlyMap<string, CallOutcome> = new Map();

/** Calls of cells to the script: what each returned last, which wait for their result, which never get one. */
export class ScriptCalls {
  /** When true, results arrive only when they are let through. */
  delayed = false;
  /** Told of each call that begins to wait, by a name for its cell that `releaseOne` takes. */
  onWaiting: (key: string) => void = () => {};
  readonly #runner: ScriptRunner;
  readonly #engine: () => Engine;
  readonly #memo = new Map<string, Map<string, CallOutcome>>();
  readonly #waiting = new Map<string, Map<string, EngineCall>>();
  #arrived = new Map<string, CallOutcome>();
  /** Calls that depend on NOW, RAND and their like: they never get past loading on the host. */
  readonly #stuck = new Set<string>();

  constructor(runner: ScriptRunner, engine: () => Engine) {
    this.#runner = runner;
    this.#engine = engine;
  }

  /** Answers the engine: with what is known, by a run, or with the loading state. */
  call(call: EngineCall): CallOutcome {
    const key = addressKey(call.cell);
    if (this.#stuck.has(key)) return { kind: 'loading' };
    const signature = `${call.name}|${JSON.stringify(call.arguments)}`;
    let outcome = this.#memo.get(key)?.get(signature);
    if (!outcome && this.delayed) {
      // A whole call that changed while it waited is only worth its latest arguments.
      const waiting = (!call.whole && this.#waiting.get(key)) || new Map<string, EngineCall>();
      if (!waiting.has(signature)) this.onWaiting(key);
      this.#waiting.set(key, waiting.set(signature, call));
      return { kind: 'loading' };
    }
    if (!outcome) {
      outcome = this.#runner.call(call);
      this.#remember(key, signature, outcome, call.whole);
    }
    if (outcome.kind !== 'rows') {
      if (call.whole) this.#arrived.set(key, outcome);
      return outcome;
    }
    if (!call.whole) {
      this.#engine().noteInnerSize(key, outcome.rows);
      return outcome;
    }
    this.#arrived.set(key, outcome);
    const sheet = this.#engine().sheetAt(call.cell.sheet);
    const words = sheet?.blocked.get(cellKey(call.cell.row + 1, call.cell.col + 1));
    return words ? { kind: 'reference', message: words } : outcome;
  }

  #remember(key: string, signature: string, outcome: CallOutcome, whole: boolean): void {
    const calls = whole ? new Map<string, CallOutcome>() : (this.#memo.get(key) ?? new Map<string, CallOutcome>());
    if (calls.size > 16) calls.clear();
    this.#memo.set(key, calls.set(signature, outcome));
  }

  /** Results of whole calls that have not been laid out yet; each is handed over once. */
  takeArrived(): ReadonlyMap<string, CallOutcome> {
    const arrived = this.#arrived;
    if (arrived.size === 0) return nothingArrived;
    this.#arrived = new Map();
    return arrived;
  }

  /** Lets delayed results through: of the oldest `count` cells that wait for one. */
  release(count: number): number {
    let released = 0;
    for (const key of [...this.#waiting.keys()]) {
      if (released >= count) break;
      this.releaseOne(key);
      released += 1;
    }
    return released;
  }
  /** Lets the delayed result of one cell through. */
  releaseOne(key: string): void {
    const calls = this.#waiting.get(key);
    if (calls === undefined) return;
    this.#waiting.delete(key);
    for (const [signature, call] of calls) this.#remember(key, signature, this.#runner.call(call), call.whole);
    const place = this.#engine().place(key);
    if (place) this.#engine().reenter(place.sheet, place.key);
  }
  get waiting(): number {
    return this.#waiting.size;
  }

  /** Those that are stuck from now on; formulas that became so, or got free, are entered again. */
  setStuck(stuck: ReadonlySet<string>): void {
    for (const key of [...stuck, ...this.#stuck]) {
      if (stuck.has(key) === this.#stuck.has(key)) continue;
      if (stuck.has(key)) this.#stuck.add(key);
      else this.#stuck.delete(key);
      const place = this.#engine().place(key);
      if (place) this.#engine().reenter(place.sheet, place.key);
    }
  }

  forget(sheet: SheetState, key: number): void {
    const place = placeKey(sheet, key);
    for (const store of [this.#memo, this.#waiting, this.#stuck, this.#arrived]) store.delete(place);
  }
  moved(sheet: SheetState, movedKey: (key: number) => number | undefined): void {
    for (const store of [this.#memo, this.#waiting, this.#stuck]) movePlaces(store, sheet, movedKey);
  }
}
