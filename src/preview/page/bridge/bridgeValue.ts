/**
 * What may cross between a panel and the script: text, numbers, Booleans, null, and lists and plain objects of these.
 * Returns a copy, or throws naming the place of the first thing that may not cross. As on the host, `undefined` in a
 * list becomes null and in an object is left out.
 */
export function bridgeValue(value: unknown, place = 'the value', above: readonly object[] = []): unknown {
  if (value === null || typeof value === 'string' || typeof value === 'boolean' || typeof value === 'number')
    return value;
  if (value === undefined) return null;
  const refuse = (what: string): never => {
    throw new Error(
      `Expected text, numbers, Booleans, null, or lists and plain objects of these to cross between panel and script, received ${what} at ${place}.`,
    );
  };
  if (typeof value !== 'object') return refuse(`a ${typeof value}`);
  if (above.includes(value)) return refuse('an object that contains itself');
  const within = [...above, value];
  if (Array.isArray(value)) return value.map((item, index) => bridgeValue(item, `${place}[${index}]`, within));
  const kind = Object.prototype.toString.call(value).slice(8, -1);
  const parent = Object.getPrototypeOf(value) as object | null;
  // Objects of another context have that context's Object as their parent: plain is what has no parent beyond it.
  const plain = kind === 'Object' && (parent === null || Object.getPrototypeOf(parent) === null);
  if (!plain) return refuse(`a ${kind === 'Object' ? (value.constructor?.name ?? 'object') : kind}`);
  return Object.fromEntries(
    Object.entries(value)
      .filter(([, item]) => item !== undefined)
      .map(([name, item]) => [name, bridgeValue(item, `${place}.${name}`, within)]),
  );
}
