import { HostException } from './hostError.ts';
import { isDateObject } from './scriptContext.ts';

/**
 * A value as it passes between the page and the script: numbers, logical values, texts, null, plain records and
 * arrays of these, copied. Anything else fails the whole call; undefined inside an array becomes null.
 */
export function passed(value: unknown, place = 'value'): unknown {
  // Kept as steps, and written out only where something is refused: a read of a workbook passes many thousand values.
  const path: (string | number)[] = [];
  const parents: object[] = [];
  const illegal = (what: string): HostException => {
    const steps = path.map((step) => (typeof step === 'number' ? `[${step}]` : `.${step}`));
    return new HostException(`Failed due to illegal value in property: ${place}${steps.join('')} (${what}).`);
  };
  const part = (step: string | number, item: unknown): unknown => {
    path.push(step);
    const copy = copied(item);
    path.pop();
    return copy;
  };
  const copied = (item: unknown): unknown => {
    if (item === undefined || item === null) return null;
    if (typeof item === 'string' || typeof item === 'boolean') return item;
    if (typeof item === 'number') {
      if (!Number.isFinite(item)) throw illegal(String(item));
      return item;
    }
    if (typeof item !== 'object') throw illegal(typeof item);
    if (isDateObject(item)) throw illegal('Date');
    if (parents.includes(item)) throw illegal('a circular reference');
    parents.push(item);
    const copy = Array.isArray(item) ? copiedArray(item) : copiedRecord(item);
    parents.pop();
    return copy;
  };
  const copiedArray = (items: readonly unknown[]): unknown[] => {
    const copy: unknown[] = [];
    for (let index = 0; index < items.length; index += 1) copy.push(part(index, items[index]));
    return copy;
  };
  const copiedRecord = (record: object): object => {
    const prototype: unknown = Object.getPrototypeOf(record);
    const isPlain = prototype === null || Object.getPrototypeOf(prototype as object) === null;
    if (!isPlain || Object.prototype.toString.call(record) !== '[object Object]') {
      throw illegal((prototype as { constructor?: { name?: string } }).constructor?.name ?? 'object');
    }
    const entries = Object.entries(record).filter(([, item]) => item !== undefined);
    return Object.fromEntries(entries.map(([name, item]) => [name, part(name, item)]));
  };
  return copied(value);
}
