import { type CellArgument, type CellResult, groups, type PublicFunction } from '../../src/functions/entry.ts';
import { argumentHelp } from './declarations.ts';

/** The reference of all public functions in Markdown, by group; every result and message is computed here and now. */
export function referenceMarkdown(catalogue: readonly PublicFunction[]): string {
  return groups
    .map((group) => ({ group, entries: catalogue.filter((entry) => entry.group === group) }))
    .filter(({ entries }) => entries.length > 0)
    .map(({ group, entries }) => [`### ${group}`, ...entries.map(section)].join('\n\n'))
    .join('\n\n');
}

function section(entry: PublicFunction): string {
  const refused = entry.refuses.map(({ call }) => refusedLine(entry, call));
  return [
    `#### \`${signature(entry)}\``,
    entry.summary,
    entry.arguments.map((argument) => `- \`${argument.name}\`: ${escaped(argumentHelp(argument))}`).join('\n'),
    `Gives ${escaped(entry.returns)}.`,
    ...entry.examples.map(({ call }) => example(entry, call)),
    ...(refused.length > 0 ? [`Refuses, for example:\n\n${refused.join('\n')}`] : []),
    ...entry.notes.map(escaped),
    `Source: ${escaped(entry.source)}.`,
  ].join('\n\n');
}

/** `MOLARITY(formula, grams, volume, [purity_percent])` */
export const signature = ({ name, arguments: taken }: PublicFunction): string =>
  `${name}(${taken.map((argument) => (argument.optional ? `[${argument.name}]` : argument.name)).join(', ')})`;

function example(entry: PublicFunction, call: readonly CellArgument[]): string {
  const { formula, tables } = written(entry, call);
  const result = entry.call(call);
  const given = tables.map(({ place, grid }) => `With ${place}:\n\n${table(grid)}\n\n`).join('');
  return Array.isArray(result)
    ? `${given}\`${formula}\` gives\n\n${table(result, entry.columns)}`
    : `${given}\`${formula}\` gives ${cellText(result)}`;
}

function refusedLine(entry: PublicFunction, call: readonly CellArgument[]): string {
  const { formula } = written(entry, call);
  try {
    entry.call(call);
  } catch (error) {
    return `- \`${formula}\`: ${escaped((error as Error).message)}`;
  }
  throw new Error(`${formula} was to be refused and was not.`);
}

interface Written {
  readonly formula: string;
  /** Ranges of the call, with the places they are said to stand in. */
  readonly tables: readonly { readonly place: string; readonly grid: CellResult }[];
}

/** A call as it is typed into a cell; ranges stand side by side from column A on. */
function written({ name }: PublicFunction, call: readonly CellArgument[]): Written {
  const tables: { place: string; grid: CellResult }[] = [];
  let column = 0;
  const cells = call.map((argument) => {
    if (!Array.isArray(argument)) return literal(argument as CellResult);
    const grid = argument as Exclude<CellResult, string | number | boolean | Date | null | undefined>;
    const width = grid[0]?.length ?? 1;
    const place = `${letter(column)}1:${letter(column + width - 1)}${grid.length}`;
    column += width;
    tables.push({ place, grid });
    return place;
  });
  return { formula: `=${name}(${cells.join(', ')})`, tables };
}

const letter = (column: number): string => String.fromCharCode(65 + column);

const literal = (cell: CellResult): string => {
  if (typeof cell === 'string') return `"${cell.replace(/"/g, '""')}"`;
  if (typeof cell === 'boolean') return cell ? 'TRUE' : 'FALSE';
  return String(cell ?? '');
};

/** A number as a cell with room for ten figures shows it. */
function cellText(cell: CellResult): string {
  if (typeof cell !== 'number') return escaped(String(cell ?? ''));
  const rounded = Number(cell.toPrecision(10));
  return String(rounded).replace(/e\+?(-?\d+)$/, ' × 10^$1');
}

function table(grid: CellResult, columns: readonly string[] = []): string {
  const rows = Array.isArray(grid) ? grid : [[grid]];
  const [first = [], ...others] = rows;
  const isHeading = first.every((cell, place) => String(cell).toLowerCase() === columns[place]?.toLowerCase());
  // Markdown takes the first line for the heading; where the cells have none, an empty one stands above.
  const [heading, body] = isHeading ? [first, others] : [first.map(() => ''), rows];
  const line = (cells: readonly string[]) => `| ${cells.join(' | ')} |`;
  return [heading.map(cellText), heading.map(() => '---'), ...body.map((row) => row.map(cellText))]
    .map(line)
    .join('\n');
}

const escaped = (text: string): string => text.replace(/([*_|<>[\]])/g, '\\$1');
