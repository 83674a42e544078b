import { HostException } from '../hostError.ts';
import { aNumber, aText, HostObject } from '../hostObject.ts';
import type { ScriptRun } from './scriptRun.ts';

/** What outlives a run: properties, cache and lock of the file. */
export interface Stores {
  readonly properties: Record<'document' | 'script' | 'teacher' | 'student', Map<string, string>>;
  readonly cache: Map<string, { readonly value: string; readonly until: number }>;
  /** Held by another run, as a test may pretend. */
  lockedByOther: boolean;
  /** For how many milliseconds more another run holds the lock, at this moment; 0 where none does. */
  heldByOthers: () => number;
}

export const emptyStores = (): Stores => ({
  properties: { document: new Map(), script: new Map(), teacher: new Map(), student: new Map() },
  cache: new Map(),
  lockedByOther: false,
  heldByOthers: () => 0,
});

const bytes = (text: string): number => Buffer.byteLength(text, 'utf8');
const valueLimit = 9 * 1024;
const storeLimit = 500 * 1024;

class Properties extends HostObject implements GoogleAppsScript.Properties.Properties {
  readonly kind_ = 'Properties';
  readonly #store: Map<string, string>;
  constructor(store: Map<string, string>) {
    super();
    this.#store = store;
  }
  getProperty(key: string): string | null {
    return this.#store.get(aText(key, 'PropertiesService.Properties.getProperty')) ?? null;
  }
  getProperties(): Record<string, string> {
    return Object.fromEntries(this.#store);
  }
  getKeys(): string[] {
    return [...this.#store.keys()];
  }
  setProperty(key: string, value: string): this {
    const text = aText(value, 'PropertiesService.Properties.setProperty');
    if (bytes(text) > valueLimit) throw new HostException('Argument too large: value');
    let size = bytes(key) + bytes(text);
    for (const [name, kept] of this.#store) if (name !== key) size += bytes(name) + bytes(kept);
    if (size > storeLimit) {
      throw new HostException(
        'You have exceeded the property storage quota. Please remove some properties and try again.',
      );
    }
    this.#store.set(aText(key, 'PropertiesService.Properties.setProperty'), text);
    return this;
  }
  setProperties(properties: Record<string, string>, deleteAllOthers = false): this {
    if (deleteAllOthers) this.#store.clear();
    for (const [key, value] of Object.entries(properties)) this.setProperty(key, value);
    return this;
  }
  deleteProperty(key: string): this {
    this.#store.delete(key);
    return this;
  }
  deleteAllProperties(): this {
    this.#store.clear();
    return this;
  }
}

export class PropertiesServiceStandIn extends HostObject {
  readonly kind_ = 'PropertiesService';
  readonly #run: ScriptRun;
  constructor(run: ScriptRun) {
    super();
    this.#run = run;
  }
  getDocumentProperties(): Properties {
    return new Properties(this.#run.stores.properties.document);
  }
  getScriptProperties(): Properties {
    return new Properties(this.#run.stores.properties.script);
  }
  getUserProperties(): Properties {
    const { mode, seat } = this.#run.execution;
    // A function in a cell sees the owner's.
    return new Properties(this.#run.stores.properties[mode === 'CUSTOM_FUNCTION' ? 'teacher' : seat]);
  }
}

class Cache extends HostObject implements Pick<GoogleAppsScript.Cache.Cache, 'get' | 'put' | 'remove'> {
  readonly kind_ = 'Cache';
  readonly #run: ScriptRun;
  readonly #prefix: string;
  constructor(run: ScriptRun, prefix: string) {
    super();
    this.#run = run;
    this.#prefix = prefix;
  }
  get(key: string): string | null {
    const found = this.#run.stores.cache.get(this.#prefix + key);
    return found && found.until > this.#run.book.clock().getTime() ? found.value : null;
  }
  put(key: string, value: string, expirationInSeconds = 600): void {
    if (key.length > 250) throw new HostException('Argument too large: key');
    const text = aText(value, 'CacheService.Cache.put');
    if (bytes(text) > 100 * 1024) throw new HostException('Argument too large: value');
    const seconds = Math.min(aNumber(expirationInSeconds, 'CacheService.Cache.put'), 21_600);
    const until = this.#run.book.clock().getTime() + seconds * 1000;
    this.#run.stores.cache.set(this.#prefix + key, { value: text, until });
    const oldest = this.#run.stores.cache.keys().next().value;
    if (this.#run.stores.cache.size > 1000 && oldest !== undefined) this.#run.stores.cache.delete(oldest);
  }
  remove(key: string): void {
    this.#run.stores.cache.delete(this.#prefix + key);
  }
}

export class CacheServiceStandIn extends HostObject {
  readonly kind_ = 'CacheService';
  readonly #run: ScriptRun;
  constructor(run: ScriptRun) {
    super();
    this.#run = run;
  }
  getDocumentCache(): Cache {
    return new Cache(this.#run, 'document:');
  }
  getScriptCache(): Cache {
    return new Cache(this.#run, 'script:');
  }
  getUserCache(): Cache {
    return new Cache(this.#run, `${this.#run.execution.seat}:`);
  }
}

class Lock extends HostObject implements GoogleAppsScript.Lock.Lock {
  readonly kind_ = 'Lock';
  readonly #run: ScriptRun;
  #held = false;
  constructor(run: ScriptRun) {
    super();
    this.#run = run;
  }
  hasLock(): boolean {
    return this.#held;
  }
  tryLock(timeoutInMillis: number): boolean {
    const patience = aNumber(timeoutInMillis, 'LockService.Lock.tryLock');
    const { lockedByOther, heldByOthers } = this.#run.stores;
    if (!this.#held && !lockedByOther) this.#held = heldByOthers() <= patience;
    return this.#held;
  }
  waitLock(timeoutInMillis: number): void {
    if (!this.tryLock(timeoutInMillis))
      throw new HostException('Lock timeout: another process was holding the lock for too long.');
  }
  releaseLock(): void {
    this.#held = false;
  }
}

export class LockServiceStandIn extends HostObject {
  readonly kind_ = 'LockService';
  readonly #run: ScriptRun;
  constructor(run: ScriptRun) {
    super();
    this.#run = run;
  }
  getDocumentLock(): Lock {
    return new Lock(this.#run);
  }
  getScriptLock(): Lock {
    return new Lock(this.#run);
  }
  getUserLock(): Lock {
    return new Lock(this.#run);
  }
}
