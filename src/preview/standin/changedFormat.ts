import type { Format } from './sheetState.ts';

export type FormatChange = Partial<Record<keyof Format, unknown>>;

const unformatted = {};
const known = new WeakMap<object, Map<string, Format | undefined>>();
/** Under the change itself, since one change goes to hundreds of cells that look alike. */
const knownAtOnce = new WeakMap<FormatChange, Map<Format | undefined, Format | undefined>>();

/**
 * A format with some of its parts changed; `null` takes a part away. Cells that look alike share one format, and one that
 * changes nothing is the same: sheets have thousands of cells and a dozen looks.
 */
export function changedFormat(format: Format | undefined, change: FormatChange): Format | undefined {
  let atOnce = knownAtOnce.get(change);
  if (atOnce === undefined) {
    atOnce = new Map();
    knownAtOnce.set(change, atOnce);
  }
  if (atOnce.has(format)) return atOnce.get(format);
  const after = byParts(format, change);
  atOnce.set(format, after);
  return after;
}

function byParts(format: Format | undefined, change: FormatChange): Format | undefined {
  const from = format ?? unformatted;
  const after = known.get(from) ?? new Map<string, Format | undefined>();
  known.set(from, after);
  const name = JSON.stringify(change, (_, value: unknown) => (value === undefined ? null : value));
  if (after.has(name)) return after.get(name);
  const parts = Object.entries({ ...format, ...change }).filter(([, value]) => value !== undefined && value !== null);
  const isSame =
    format !== undefined &&
    parts.length === Object.keys(format).length &&
    parts.every(([part, value]) => format[part as keyof Format] === value);
  const made = isSame ? format : parts.length > 0 ? (Object.fromEntries(parts) as Format) : undefined;
  after.set(name, made);
  return made;
}
