import vm from 'node:vm';
import type { Counts } from './counts.ts';
import { HostException } from './hostError.ts';
import { HostConstant, HostObject } from './hostObject.ts';

/** Objects of the script's own realm, made inside it, so that `instanceof` and `Array.isArray` hold there. */
interface Realm {
  readonly array: (items: readonly unknown[]) => unknown[];
  readonly record: (entries: readonly (readonly [string, unknown])[]) => object;
  readonly date: (milliseconds: number) => Date;
  readonly error: (name: string, message: string) => Error;
  readonly callable: (body: (args: unknown[]) => unknown) => (...args: unknown[]) => unknown;
}
/** Puts the stand-in's clock behind the script's Date, so that a test may say what time it is. */
const clockSource = `(now) => {
  const Real = Date;
  const Clocked = function Date(...given) {
    if (!new.target) return new Real(now()).toString();
    return Reflect.construct(Real, given.length ? given : [now()], new.target);
  };
  Object.defineProperty(Clocked, 'prototype', { value: Real.prototype, writable: false });
  Object.defineProperty(Real.prototype, 'constructor', { value: Clocked, writable: true, configurable: true });
  Object.assign(Clocked, { now, UTC: Real.UTC, parse: Real.parse });
  globalThis.Date = Clocked;
}`;
const realmSource = `({
  array: (items) => {
    const made = [];
    for (let index = 0; index < items.length; index += 1) made.push(items[index]);
    return made;
  },
  record: (entries) => { const made = {}; for (const [name, value] of entries) made[name] = value; return made; },
  date: (milliseconds) => new Date(milliseconds),
  error: (name, message) => { const made = new Error(message); made.name = name; return made; },
  callable: (body) => function (...args) { return body(args); },
})`;

/**
 * Asks for a global object like the host's own: behind one that Node has made its own, each look at `Math` or `Object`
 * passes through Node, which makes a loop that calls `Math.imul` five times as slow. Early versions of Node 20 lack it.
 */
const globalObject = () => (vm.constants as Partial<typeof vm.constants>).DONT_CONTEXTIFY ?? Object.create(null);

export const isDateObject = (value: unknown): value is Date =>
  Object.prototype.toString.call(value) === '[object Date]';

interface ContextOptions {
  readonly counts: Counts;
  /** Throws where this kind of run may not call this. */
  readonly permit: (kind: string, member: string) => void;
  readonly clock: (() => Date) | undefined;
  readonly allowCodeFromText: boolean;
}

/** One load of the script: a bare V8 context that has what the host has and nothing else. */
export class ScriptContext {
  readonly globals: Record<string, unknown>;
  readonly #realm: Realm;
  readonly #counts: Counts;
  readonly #facades = new WeakMap<object, object>();
  readonly #behind = new WeakMap<object, HostObject>();

  readonly #permit: (kind: string, member: string) => void;

  constructor(
    script: vm.Script,
    services: Readonly<Record<string, HostObject>>,
    { counts, permit, clock, allowCodeFromText }: ContextOptions,
  ) {
    this.#counts = counts;
    this.#permit = permit;
    const codeGeneration = { strings: allowCodeFromText, wasm: allowCodeFromText };
    this.globals = vm.createContext(globalObject(), { codeGeneration }) as Record<string, unknown>;
    this.#realm = vm.runInContext(realmSource, this.globals) as Realm;
    if (clock) (vm.runInContext(clockSource, this.globals) as (now: () => number) => void)(() => clock().getTime());
    for (const [name, service] of Object.entries(services)) this.globals[name] = this.toScript(service);
    this.#inside(() => script.runInContext(this.globals));
  }

  /** Calls a top-level function; what it throws comes out as an error of this realm with the same name and message. */
  call(name: string, args: readonly unknown[]): unknown {
    const target = this.globals[name];
    if (typeof target !== 'function') throw new HostException(`Script function not found: ${name}`);
    return this.#inside(() => (target as (...args: unknown[]) => unknown)(...args));
  }

  #inside<T>(body: () => T): T {
    try {
      return body();
    } catch (thrown) {
      throw this.fromScriptError(thrown);
    }
  }

  fromScriptError(thrown: unknown): Error {
    if (thrown instanceof Error) return thrown;
    const { name, message, stack } = (thrown ?? {}) as { name?: unknown; message?: unknown; stack?: unknown };
    const error = new Error(typeof message === 'string' ? message : String(thrown));
    error.name = typeof name === 'string' ? name : 'Error';
    if (typeof stack === 'string') error.stack = stack;
    return error;
  }

  toScript(value: unknown): unknown {
    if (typeof value !== 'object' || value === null) return value;
    if (value instanceof HostObject) return this.#facade(value);
    if (value instanceof Date) return this.#realm.date(value.getTime());
    if (Array.isArray(value)) return this.#realm.array(value.map((item) => this.toScript(item)));
    return this.#realm.record(Object.entries(value).map(([name, item]) => [name, this.toScript(item)]));
  }

  fromScript(value: unknown): unknown {
    if (typeof value !== 'object' || value === null) return value;
    const behind = this.#behind.get(value);
    if (behind) return behind;
    if (isDateObject(value)) return new Date(value.getTime());
    if (Array.isArray(value)) return Array.from(value, (item) => this.fromScript(item));
    return Object.fromEntries(Object.entries(value).map(([name, item]) => [name, this.fromScript(item)]));
  }

  #facade(object: HostObject): object {
    const made = this.#facades.get(object);
    if (made) return made;
    const methods = new Map<string, unknown>();
    const facade = new Proxy(this.#realm.record([]), {
      get: (_, property) => this.#member(object, property, methods),
      set: (_, property) => {
        throw this.#realm.error('TypeError', `Cannot set ${String(property)} of ${object.kind_}.`);
      },
      has: (_, property) => typeof property === 'string' && property in object && !property.endsWith('_'),
      ownKeys: () => [],
      // No plain record: it must not pass the bridge to the page.
      getPrototypeOf: () => HostObject.prototype,
    });
    this.#facades.set(object, facade);
    this.#behind.set(facade, object);
    return facade;
  }

  #member(object: HostObject, property: string | symbol, methods: Map<string, unknown>): unknown {
    if (property === Symbol.toPrimitive) return undefined;
    if (typeof property === 'symbol') return undefined;
    if (property === 'then' || property === 'toJSON') return undefined;
    if (property === 'toString' && !(object instanceof HostConstant)) return this.#realm.callable(() => object.kind_);
    const known = methods.get(property);
    if (known !== undefined) return known;
    const member = (object as unknown as Record<string, unknown>)[property];
    if ((object as { refuses_?: boolean }).refuses_) {
      return this.#realm.callable(() => {
        throw this.#realm.error('Exception', `You do not have permission to call ${object.kind_}.${property}.`);
      });
    }
    if (property.endsWith('_') || property === 'constructor' || member === undefined) {
      throw this.#realm.error('Exception', `The stand-in does not cover ${object.kind_}.${property}.`);
    }
    if (typeof member !== 'function') {
      const value = this.toScript(member);
      methods.set(property, value);
      return value;
    }
    const method = this.#realm.callable((args) => {
      if (!(object instanceof HostConstant)) this.#counts.countHost(`${object.kind_}.${property}`);
      try {
        if (!(object instanceof HostConstant)) this.#permit(object.kind_, property);
        const handed = args.map((argument) => this.fromScript(argument));
        return this.toScript((member as (...args: unknown[]) => unknown).apply(object, handed));
      } catch (thrown) {
        const error = thrown as Error;
        if (thrown instanceof HostException) throw this.#realm.error('Exception', error.message);
        throw thrown instanceof Error ? this.#realm.error(error.name, `Stand-in: ${error.message}`) : thrown;
      }
    });
    methods.set(property, method);
    return method;
  }
}
