import { HostException } from './hostError.ts';
import { isDateObject } from './scriptContext.ts';

/**
 * A value as it passes between the page and the script: numbers, logical values, texts, null, plain records and
 * arrays of these, copied. Anything else fails the whole call; undefined inside an array becomes null.
 */
export function passed(value: unknown, place = 'value', parents: readonly unknown[] = []): unknown {
  if (value === undefined || value === null) return null;
  if (typeof value === 'string' || typeof value === 'boolean') return value;
  if (typeof value === 'number') {
    if (!Number.isFinite(value)) throw illegal(place, String(value));
    return value;
  }
  if (typeof value !== 'object') throw illegal(place, typeof value);
  if (isDateObject(value)) throw illegal(place, 'Date');
  if (parents.includes(value)) throw illegal(place, 'a circular reference');
  const inside = [...parents, value];
  if (Array.isArray(value)) return Array.from(value, (item, index) => passed(item, `${place}[${index}]`, inside));
  const prototype: unknown = Object.getPrototypeOf(value);
  const isPlain = prototype === null || Object.getPrototypeOf(prototype as object) === null;
  if (!isPlain || Object.prototype.toString.call(value) !== '[object Object]') {
    throw illegal(place, (prototype as { constructor?: { name?: string } }).constructor?.name ?? 'object');
  }
  const entries = Object.entries(value).filter(([, item]) => item !== undefined);
  return Object.fromEntries(entries.map(([name, item]) => [name, passed(item, `${place}.${name}`, inside)]));
}

const illegal = (place: string, what: string): HostException =>
  new HostException(`Failed due to illegal value in property: ${place} (${what}).`);
