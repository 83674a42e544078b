import type { StandIn } from '../../scripts/preview/standin/openStandIn.ts';

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
  const { properties: _, active: __, sheets, ...rest } = JSON.parse(host.save());
  const lines = sheets.map(
    ({ cells, metadata, protections, rules, columnWidths, ...sheet }: Record<string, never[]>) => {
      const placed = cells.map(([row, column, cell]: [number, number, object]) => ({ row, column, cell }));
      placed.sort((one: Placed, other: Placed) => one.row - other.row || one.column - other.column);
      return [
        JSON.stringify(sheet),
        JSON.stringify([...columnWidths].sort()),
        ...metadata.map(({ key, value }: { key: string; value: string }) => `${key} ${value}`),
        ...protections.map(({ id: ___, ...protection }: { id: number }) => JSON.stringify(protection)),
        ...rules.map((rule: object) => JSON.stringify(rule)),
        ...placed.map(
          ({ row, column, cell }: Placed) =>
            `${row},${column} ${JSON.stringify(cell, Object.keys(cell).sort())} ${JSON.stringify(cell)}`,
        ),
      ].join('\n');
    },
  );
  return [JSON.stringify(rest), ...lines].join('\n\n');
}

interface Placed {
  readonly row: number;
  readonly column: number;
  readonly cell: object;
}
