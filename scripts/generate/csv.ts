import { readFileSync } from 'node:fs';

const cell = /(?:"((?:[^"]|"")*)"|([^,"]*))(?:,|$)/g;

/** Rows of a published table as records by column name; cells in double quotes may hold commas. */
export function readCsv(path: string): readonly Readonly<Record<string, string>>[] {
  const rows = readFileSync(path, 'utf8')
    .split(/\r?\n/)
    .filter((line) => line !== '')
    .map((line) => Array.from(line.matchAll(cell), ([, quoted, plain]) => quoted?.replace(/""/g, '"') ?? plain ?? ''));
  const [heading = [], ...body] = rows;
  return body.map((cells) => Object.fromEntries(heading.map((name, place) => [name, cells[place] ?? ''])));
}
