import type { StandIn } from '../../src/preview/standin/openStandIn.ts';

export const sheetState = (host: StandIn, name: string) => {
  const sheet = host.book.sheets.find((candidate) => candidate.name === name);
  if (sheet === undefined) {
    throw new Error(`Expected a sheet called ${name}, received ${host.book.sheets.map((one) => one.name).join(', ')}.`);
  }
  return sheet;
};

export interface At {
  readonly sheet: string;
  readonly row: number;
  readonly column: number;
}

/** The value of a cell as text; a date is its serial number. */
export function valueAt(host: StandIn, { sheet, row, column }: At): string {
  const value = host.book.value(sheetState(host, sheet), row, column);
  return typeof value === 'symbol' ? 'Loading...' : String(value);
}

/**
 * The whole workbook as it would be kept in a file, for comparing two builds: contents, looks, rules, protections and
 * metadata, without the script's own notes on how far it has come and without which cell somebody looks at.
 */
export function workbookText(host: StandIn): string {
  const { properties: _, active: __, sheets, formats, ...rest } = JSON.parse(host.save()) as SavedFile;
  const looks = formats.map(stable);
  const lines = sheets.map(({ cells, metadata, protections, rules, columnWidths, ...shape }) => {
    const placed = cells.sort(([one, first], [other, second]) => one - other || first - second);
    return [
      stable(shape),
      stable([...columnWidths].sort()),
      ...metadata.map(({ key, value }) => `${key} ${value}`),
      ...protections.map(({ id: ___, ...protection }) => stable(protection)),
      ...rules.map(stable),
      ...placed.map(([row, column, cell, look = -1]) => `${row},${column} ${stable(cell)} ${looks[look] ?? ''}`),
    ].join('\n');
  });
  return [stable(rest), ...lines].join('\n\n');
}

interface SavedFile {
  readonly properties: object;
  readonly active: object;
  readonly sheets: readonly SavedSheet[];
  readonly formats: readonly object[];
}
interface SavedSheet {
  readonly cells: [row: number, column: number, cell: object, format?: number][];
  readonly metadata: readonly { readonly key: string; readonly value: string }[];
  readonly protections: readonly { readonly id: number }[];
  readonly rules: readonly object[];
  readonly columnWidths: readonly (readonly [number, number])[];
}

const inOrder = new Map<string, string>();

/** JSON with the names of each object in one order. Most cells of a workbook are like others, so each is ordered once. */
function stable(value: unknown): string {
  const text = JSON.stringify(value);
  const known = inOrder.get(text);
  if (known !== undefined) return known;
  const ordered = JSON.stringify(value, (_, part) =>
    typeof part === 'object' && part !== null && !Array.isArray(part)
      ? Object.fromEntries(Object.entries(part).sort(([one], [other]) => (one < other ? -1 : 1)))
      : part,
  );
  if (inOrder.size > 20_000) inOrder.clear();
  inOrder.set(text, ordered);
  return ordered;
}

/** Types into a cell as the teacher, and hands back what it then holds. */
export function typedInto(host: StandIn, { text, ...at }: At & { readonly text: string }): string {
  const { sheet, row, column } = at;
  host.type('teacher', [{ sheet: sheetState(host, sheet).id, row, column, text }]);
  return valueAt(host, at);
}
