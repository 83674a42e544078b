import { HostException } from './hostError.ts';

/** Stands in for an object of the host. Members whose names end in `_` are ours and hidden from scripts. */
export abstract class HostObject {
  /** As the host names its class. */
  abstract readonly kind_: string;
}

/** A constant such as `SpreadsheetApp.ProtectionType.SHEET`. */
export class HostConstant extends HostObject {
  readonly kind_ = 'Enum';
  readonly value_: string;
  constructor(value: string) {
    super();
    this.value_ = value;
  }
  override toString(): string {
    return this.value_;
  }
  name(): string {
    return this.value_;
  }
}

export const constants = <Name extends string>(...names: readonly Name[]): Readonly<Record<Name, HostConstant>> =>
  Object.fromEntries(names.map((name) => [name, new HostConstant(name)])) as Readonly<Record<Name, HostConstant>>;

/** Lets a part of one of the host's classes pass where its whole type is declared; what is not covered refuses by name. */
export const part = <Whole>(object: HostObject): Whole => object as unknown as Whole;

/** The stand-in's own object behind a parameter that is typed as the host's. */
export function own<Type extends HostObject>(
  value: unknown,
  type: abstract new (...args: never[]) => Type,
  method: string,
): Type {
  if (value instanceof type) return value;
  const received = value === null ? 'null' : value instanceof HostObject ? value.kind_ : typeof value;
  throw new HostException(`The parameters (${received}) don't match the method signature for ${method}.`);
}

/** The value of a constant handed over by a script, or undefined where it is none of those allowed. */
export function constantValue<Name extends string>(
  value: unknown,
  allowed: Readonly<Record<Name, HostConstant>>,
  method: string,
): Name {
  if (value instanceof HostConstant && Object.values(allowed).includes(value)) return value.value_ as Name;
  throw new HostException(`The parameters (${String(value)}) don't match the method signature for ${method}.`);
}

export function aNumber(value: unknown, method: string): number {
  if (typeof value === 'number' && Number.isFinite(value)) return value;
  throw new HostException(`The parameters (${kindOf(value)}) don't match the method signature for ${method}.`);
}

export function aText(value: unknown, method: string): string {
  if (typeof value === 'string') return value;
  if (typeof value === 'number' || typeof value === 'boolean') return String(value);
  throw new HostException(`The parameters (${kindOf(value)}) don't match the method signature for ${method}.`);
}

const kindOf = (value: unknown): string => {
  if (value === null || value === undefined) return 'null';
  if (Array.isArray(value)) return 'number[]';
  if (typeof value === 'object') return value instanceof HostObject ? value.kind_ : 'Object';
  return typeof value === 'string' ? 'String' : typeof value;
};
